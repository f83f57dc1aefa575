package loomwright.markup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Entries written into the part of an address after {@code #}, and read back. A damaged fragment gives fewer entries, never a fault. */
public final class Fragment {
    private static final String PLAIN = "-._~";
    private static final String HEX = "0123456789ABCDEF";

    private Fragment() {}

    /** The entries as {@code route-length=4.2%20m&size=14%20AWG}, by name, so that the same entries always give the same text. */
    public static String write(Map<String, String> entries) {
        StringBuilder out = new StringBuilder();
        for (String name : sorted(entries)) {
            if (out.length() > 0) {
                out.append('&');
            }
            encode(name, out);
            out.append('=');
            encode(entries.get(name), out);
        }
        return out.toString();
    }

    /** A handful of names: putting each in its place is enough, and keeps the library's sorting out of the page program. */
    private static List<String> sorted(Map<String, String> entries) {
        List<String> names = new ArrayList<>();
        for (String name : entries.keySet()) {
            int at = 0;
            while (at < names.size() && names.get(at).compareTo(name) < 0) {
                at++;
            }
            names.add(at, name);
        }
        return names;
    }

    /** The entries of a fragment, with or without its {@code #}; of two with the same name the later one counts. */
    public static Map<String, String> read(String fragment) {
        Map<String, String> entries = new HashMap<>();
        String text = fragment.startsWith("#") ? fragment.substring(1) : fragment;
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('&', start);
            end = end < 0 ? text.length() : end;
            int equals = text.indexOf('=', start);
            if (equals > start && equals < end) {
                entries.put(Percent.decode(text.substring(start, equals)), Percent.decode(text.substring(equals + 1, end)));
            }
            start = end + 1;
        }
        return entries;
    }

    private static void encode(String text, StringBuilder out) {
        int at = 0;
        while (at < text.length()) {
            int point = text.codePointAt(at);
            at += point > 0xFFFF ? 2 : 1;
            encode(point, out);
        }
    }

    private static void encode(int point, StringBuilder out) {
        boolean letter = point >= 'a' && point <= 'z' || point >= 'A' && point <= 'Z';
        if (letter || point >= '0' && point <= '9' || PLAIN.indexOf(point) >= 0) {
            out.append((char) point);
        } else if (point < 0x80) {
            octet(point, out);
        } else if (point < 0x800) {
            octet(0xC0 | point >> 6, out);
            octet(0x80 | point & 0x3F, out);
        } else if (point < 0x10000) {
            octet(0xE0 | point >> 12, out);
            octet(0x80 | point >> 6 & 0x3F, out);
            octet(0x80 | point & 0x3F, out);
        } else {
            octet(0xF0 | point >> 18, out);
            octet(0x80 | point >> 12 & 0x3F, out);
            octet(0x80 | point >> 6 & 0x3F, out);
            octet(0x80 | point & 0x3F, out);
        }
    }

    private static void octet(int octet, StringBuilder out) {
        out.append('%').append(HEX.charAt(octet >> 4)).append(HEX.charAt(octet & 15));
    }
}
