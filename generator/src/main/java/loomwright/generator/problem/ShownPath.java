package loomwright.generator.problem;

import java.nio.file.Path;

/** How messages call a file: from the working folder if the file is below it, as the author would type it. */
public final class ShownPath {
    private ShownPath() {}

    public static String of(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        Path here = Path.of("").toAbsolutePath();
        Path shown = whole.startsWith(here) && !whole.equals(here) ? here.relativize(whole) : whole;
        return shown.toString().replace('\\', '/');
    }
}
