package loomwright.worked;

/**
 * A figure that a check needs and nobody gave.
 *
 * @param key the field that takes it
 * @param name what it is, such as {@code breaking capacity of the blade fuse-link of 15 A}; parts that lack the same figure share the name
 * @param where where it is printed or how it is measured, such as {@code the fuse-link's data sheet, "breaking capacity" or "interrupting rating"}
 * @param instead what stands in its place and passes nothing, such as {@code a guess}; empty if nothing does
 */
public record MissingFigure(String key, String name, String where, String instead) {
    public MissingFigure(String key, String name, String where) {
        this(key, name, where, "");
    }
}
