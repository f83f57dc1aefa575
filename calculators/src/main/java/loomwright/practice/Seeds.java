package loomwright.practice;

/** Numbers that look like chance and are the same for the same seed, on every machine: shifts and exclusive-ors of 32 bits. */
final class Seeds {
    private int state;

    Seeds(int seed) {
        // The generator stands still at zero; neighbouring seeds should not give neighbouring numbers.
        state = seed * 0x9E3779B1 ^ 0x5DEECE66;
        state = state == 0 ? 1 : state;
        for (int i = 0; i < 8; i++) {
            next();
        }
    }

    /** A whole number from zero up to but not including {@code bound}. */
    int below(int bound) {
        return (next() >>> 1) % bound;
    }

    private int next() {
        state ^= state << 13;
        state ^= state >>> 17;
        state ^= state << 5;
        return state;
    }
}
