/**
 * The graphs of calculators: each runs its calculator again at other entries, so that a graph and the answer above it cannot differ.
 *
 * <p>{@link loomwright.graph.Graphs} finds them. They are compiled into a page program of their own, which is loaded when a reader first
 * changes an entry.
 */
package loomwright.graph;
