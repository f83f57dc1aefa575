package loomwright.markup;

/** Reads {@code %C2%B2} back as the letter it stands for. What makes no sense is left as it stands. */
final class Percent {
    private final String text;
    private final StringBuilder out = new StringBuilder();
    private int at;

    private Percent(String text) {
        this.text = text;
    }

    static String decode(String text) {
        Percent percent = new Percent(text);
        while (percent.at < text.length()) {
            percent.next();
        }
        return percent.out.toString();
    }

    private void next() {
        int first = octetAt(at);
        int more = followers(first);
        int point = first & (more == 0 ? 0x7F : 0x3F >> more);
        boolean sound = first >= 0 && more >= 0;
        for (int i = 1; sound && i <= more; i++) {
            int octet = octetAt(at + 3 * i);
            sound = octet >= 0x80 && octet < 0xC0;
            point = point << 6 | octet & 0x3F;
        }
        if (sound && point <= 0x10FFFF) {
            out.appendCodePoint(point);
            at += 3 + 3 * more;
        } else {
            out.append(text.charAt(at));
            at++;
        }
    }

    private static int followers(int first) {
        if (first < 0x80) {
            return 0;
        }
        if (first < 0xC0 || first > 0xF7) {
            return -1;
        }
        return first < 0xE0 ? 1 : first < 0xF0 ? 2 : 3;
    }

    /** The octet written as {@code %XX} at a place, or -1 if there is none. */
    private int octetAt(int place) {
        if (place + 2 >= text.length() || text.charAt(place) != '%') {
            return -1;
        }
        int high = hex(text.charAt(place + 1));
        int low = hex(text.charAt(place + 2));
        return high < 0 || low < 0 ? -1 : high << 4 | low;
    }

    private static int hex(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        if (c >= 'A' && c <= 'F') {
            return c - 'A' + 10;
        }
        return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    }
}
