/**
 * A working, a form and a reply as HTML. The generator and the page program call the same methods, so the printed example and the live
 * one cannot differ. The HTML is described in {@code site/src/main/style/MARKUP.md}.
 */
package loomwright.markup;
