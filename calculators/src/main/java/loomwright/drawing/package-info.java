/**
 * The drawings that lessons name, one class each. Their numbers come from the calculators, from published tables or from the lesson, never
 * from here. For the build only: the page's program does not reach them.
 */
package loomwright.drawing;
