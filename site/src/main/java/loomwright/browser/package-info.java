/**
 * The page program: takes over the worked examples of a page. The only package that touches the browser.
 */
package loomwright.browser;
