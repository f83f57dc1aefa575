package loomwright.circuit.file;

import java.util.List;

/** One value of a JSON text, with its place. */
sealed interface Json {
    /** The line it begins on, from 1. */
    int line();

    /** The column it begins in, from 1. */
    int column();

    /** What it is, in words. */
    String words();

    /** A list of members in the order of the text; no key twice. */
    record Members(int line, int column, List<Member> all) implements Json {
        @Override
        public String words() {
            return "an object";
        }

        /** The value of a key, or null. */
        Json get(String key) {
            for (Member member : all) {
                if (member.key().equals(key)) {
                    return member.value();
                }
            }
            return null;
        }
    }

    /** A key and its value. */
    record Member(String key, int line, int column, Json value) {}

    /** A list of values. */
    record Items(int line, int column, List<Json> all) implements Json {
        @Override
        public String words() {
            return "a list";
        }
    }

    /** A text. */
    record Text(int line, int column, String text) implements Json {
        @Override
        public String words() {
            return "a text";
        }
    }

    /** A number, as it is written. */
    record Digits(int line, int column, String text) implements Json {
        @Override
        public String words() {
            return "a number";
        }
    }

    /** {@code true}, {@code false} or {@code null}. */
    record Word(int line, int column, String text) implements Json {
        @Override
        public String words() {
            return text;
        }
    }
}
