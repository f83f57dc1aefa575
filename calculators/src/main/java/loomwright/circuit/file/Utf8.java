package loomwright.circuit.file;

/** Sizes and digits of text, without the library's coders, which cost the page's program more than this. */
final class Utf8 {
    private Utf8() {}

    /** How many bytes a text takes in a file. */
    static int length(String text) {
        int bytes = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean half = c >= '\ud800' && c <= '\udfff';
            bytes += c < 0x80 ? 1 : c < 0x800 || half ? 2 : 3;
        }
        return bytes;
    }

    /** The value of a hexadecimal digit; −1 if it is none. */
    static int hexDigit(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        if (c >= 'a' && c <= 'f') {
            return c - 'a' + 10;
        }
        return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
    }

    /** A number as so many hexadecimal digits. */
    static String hex(int number, int digits) {
        StringBuilder text = new StringBuilder();
        for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4) {
            text.append("0123456789abcdef".charAt(number >> shift & 15));
        }
        return text.toString();
    }
}
