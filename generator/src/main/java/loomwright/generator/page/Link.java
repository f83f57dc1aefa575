package loomwright.generator.page;

/**
 * A link in a list.
 *
 * @param title its words
 * @param href its address from the page it stands in
 * @param last whether it is the last of its list
 */
record Link(String title, String href, boolean last) {}
