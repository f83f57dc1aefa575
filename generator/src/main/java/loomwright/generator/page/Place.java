package loomwright.generator.page;

/**
 * A place in the site that something points to.
 *
 * @param title what it is called
 * @param address where it is, from the root of the site
 */
record Place(String title, String address) {}
