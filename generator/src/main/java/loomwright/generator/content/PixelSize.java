package loomwright.generator.content;

import java.nio.charset.StandardCharsets;

/**
 * The size that a photo says it has, read from its first bytes.
 *
 * @param kind the usual ending: {@code png}, {@code jpg} or {@code webp}
 */
record PixelSize(String kind, int width, int height) {
    /** The size, or null if the bytes are none of these kinds. */
    static PixelSize of(byte[] bytes) {
        try {
            if (holds(bytes, 1, "PNG") && holds(bytes, 12, "IHDR")) {
                return new PixelSize("png", number(bytes, 16, 4), number(bytes, 20, 4));
            }
            if (at(bytes, 0) == 0xFF && at(bytes, 1) == 0xD8) {
                return jpeg(bytes);
            }
            return holds(bytes, 0, "RIFF") && holds(bytes, 8, "WEBP") ? webp(bytes) : null;
        } catch (ArrayIndexOutOfBoundsException cutShort) {
            return null;
        }
    }

    /** Goes from segment to segment until the one that begins the picture. */
    private static PixelSize jpeg(byte[] bytes) {
        int from = 2;
        while (at(bytes, from) == 0xFF) {
            int marker = at(bytes, from + 1);
            boolean begins = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            if (begins) {
                return new PixelSize("jpg", number(bytes, from + 7, 2), number(bytes, from + 5, 2));
            }
            from += 2 + number(bytes, from + 2, 2);
        }
        return null;
    }

    /** Simple, lossless and extended files say it in three ways; their numbers begin with the lowest byte. */
    private static PixelSize webp(byte[] bytes) {
        if (holds(bytes, 12, "VP8 ")) {
            return new PixelSize("webp", low(bytes, 26, 2) & 0x3FFF, low(bytes, 28, 2) & 0x3FFF);
        }
        if (holds(bytes, 12, "VP8L")) {
            int both = low(bytes, 21, 4);
            return new PixelSize("webp", (both & 0x3FFF) + 1, (both >> 14 & 0x3FFF) + 1);
        }
        return holds(bytes, 12, "VP8X") ? new PixelSize("webp", low(bytes, 24, 3) + 1, low(bytes, 27, 3) + 1) : null;
    }

    private static boolean holds(byte[] bytes, int from, String letters) {
        return bytes.length >= from + letters.length()
                && new String(bytes, from, letters.length(), StandardCharsets.ISO_8859_1).equals(letters);
    }

    private static int at(byte[] bytes, int place) {
        return bytes[place] & 0xFF;
    }

    private static int number(byte[] bytes, int from, int count) {
        int number = 0;
        for (int i = 0; i < count; i++) {
            number = number << 8 | at(bytes, from + i);
        }
        return number;
    }

    private static int low(byte[] bytes, int from, int count) {
        int number = 0;
        for (int i = count - 1; i >= 0; i--) {
            number = number << 8 | at(bytes, from + i);
        }
        return number;
    }
}
