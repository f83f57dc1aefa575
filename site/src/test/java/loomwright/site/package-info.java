/**
 * Tests of the built site in a real browser, opened from the disk with the network off.
 *
 * <p>They need Chromium with ChromeDriver, and fail without; {@code -Dbrowser=none} leaves them out.
 */
package loomwright.site;
