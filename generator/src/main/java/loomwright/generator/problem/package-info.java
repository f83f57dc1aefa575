/** What is wrong in an author's file: where, in which words, and what to do. All problems of a run are collected, sorted and printed. */
package loomwright.generator.problem;
