/**
 * The graphs of calculators: each runs its calculator again at other entries, so that a graph and the answer above it cannot differ.
 *
 * <p>{@link loomwright.graph.Graphs} finds them.
 */
package loomwright.graph;
