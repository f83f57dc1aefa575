package loomwright.generator.offline;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Writes a square picture as PNG: eight bits a colour, no alpha. Source of the format: W3C, Portable Network Graphics, 2003. */
final class Png {
    private static final byte[] SIGNATURE = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};
    private static final int EIGHT_BITS_RGB = 0x0802;

    private Png() {}

    static byte[] of(int width, int[] pixels) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(width));
            chunk(out, "IDAT", rows(width, pixels));
            chunk(out, "IEND", new byte[0]);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] header(int width) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(width);
        out.writeInt(width);
        out.writeShort(EIGHT_BITS_RGB);
        out.write(new byte[3]);
        return bytes.toByteArray();
    }

    /** Each row begins with the number of its filter: none. */
    private static byte[] rows(int width, int[] pixels) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, new Deflater(Deflater.BEST_COMPRESSION))) {
            for (int y = 0; y < width; y++) {
                byte[] row = new byte[1 + 3 * width];
                for (int x = 0; x < width; x++) {
                    int colour = pixels[y * width + x];
                    row[1 + 3 * x] = (byte) (colour >> 16);
                    row[2 + 3 * x] = (byte) (colour >> 8);
                    row[3 + 3 * x] = (byte) colour;
                }
                out.write(row);
            }
        }
        return bytes.toByteArray();
    }

    private static void chunk(DataOutputStream out, String name, byte[] data) throws IOException {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(type);
        check.update(data);
        out.writeInt(data.length);
        out.write(type);
        out.write(data);
        out.writeInt((int) check.getValue());
    }
}
