package loomwright.generator.page;

/**
 * A place to jump to in the projector view.
 *
 * @param title its name
 * @param id its screen
 * @param deep whether it lies within a section
 * @param further whether it is passed over unless somebody asks
 */
record Jump(String title, String id, boolean deep, boolean further) {}
