/** Joints: how warm a joint gets, how hard a crimp must hold, and which heat-shrink tube fits over it. */
package loomwright.joint;
