package loomwright.generator;

/** Which version this is, and of which day. A build of the same files says the same, whenever it is made; a test holds it against the build file. */
public final class Edition {
    public static final String VERSION = "1.0.0";
    /** The day of the release. */
    public static final String DATE = "2026-11-26";

    private Edition() {}
}
