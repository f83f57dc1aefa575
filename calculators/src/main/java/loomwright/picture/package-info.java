/**
 * Pictures as SVG text: a canvas, graphs, bars and circuit drawings. Knows nothing of any calculator, so that the page's program can
 * draw as well as the build.
 *
 * <p>Colours and widths come from the class names of the style sheet; text is placed by an estimate of its width, on the wide side, so
 * that it fits in whatever typeface the reader has.
 */
package loomwright.picture;
