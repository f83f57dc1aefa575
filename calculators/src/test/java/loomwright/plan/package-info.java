/** Plans held against random answers, an independent way of choosing, and jobs worked by hand. */
package loomwright.plan;
