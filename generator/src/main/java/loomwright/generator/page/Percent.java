package loomwright.generator.page;

import java.nio.charset.StandardCharsets;

/** Writes an address of the web with the signs alone that may stand in one. */
final class Percent {
    private static final String ALLOWED = "-._~:/?#[]@!$&'()*+,;=%";

    private Percent() {}

    /** Every other sign becomes a % and two digits, for each of its bytes. What is written so already stays. */
    static String encoded(String address) {
        StringBuilder out = new StringBuilder();
        for (byte b : address.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xff);
            boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
            out.append(letter || ALLOWED.indexOf(c) >= 0 ? String.valueOf(c) : String.format("%%%02X", (int) c));
        }
        return out.toString();
    }
}
