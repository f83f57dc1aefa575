package loomwright.generator.markdown;

import java.util.regex.Pattern;

/** A number and its unit stand on one line: "20" at the end of a line and "°C" at the start of the next is read as two things. */
public final class Together {
    private static final Pattern BEFORE_A_UNIT = Pattern.compile(
            "(?<=\\d) (?=(?:N m|[kmM\u03bc\u00b5]?(?:V|A|W|\u03a9|N|s|Ah|Wh|Hz)|mm\u00b2?|cm|m|ft|h|lb|kg|K|\u00b0C|\u00b0F|%|AWG|SAE)(?![\\p{L}\\p{N}]))");

    private Together() {}

    public static String kept(String text) {
        return BEFORE_A_UNIT.matcher(text).replaceAll("\u00a0").replace("\u00a0N m", "\u00a0N\u00a0m");
    }
}
