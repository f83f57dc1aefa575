/** One run of the generator: reads, writes pages, checks them, and puts the finished site in place of the old one. */
package loomwright.generator.build;
