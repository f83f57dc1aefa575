package loomwright.generator.content;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Whether a JPEG photo tells where it was taken, as those of telephones do. */
final class PhotoPlace {
    private static final int DETAILS = 0xFFE1;
    private static final long EXIF = 0x457869660000L;
    /** The entry of the Exif standard that leads to the position. */
    private static final int POSITION = 0x8825;

    private PhotoPlace() {}

    static boolean isTold(byte[] jpeg) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(jpeg).position(2);
            while (bytes.remaining() > 4) {
                int marker = bytes.getShort() & 0xFFFF;
                int next = bytes.position() + (bytes.getShort() & 0xFFFF);
                if (marker < 0xFFE0 || marker > 0xFFEF) {
                    return false;
                }
                if (marker == DETAILS && bytes.getLong() >>> 16 == EXIF && hasPosition(bytes.position(bytes.position() - 2).slice())) {
                    return true;
                }
                bytes.position(next);
            }
        } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException cutShort) {
            return false;
        }
        return false;
    }

    /** Looks through the first list of entries, twelve bytes each. */
    private static boolean hasPosition(ByteBuffer exif) {
        exif.order(exif.getShort() == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int from = exif.getInt(4);
        for (int i = exif.getShort(from) & 0xFFFF; i > 0; i--) {
            if ((exif.getShort(from + 2 + 12 * (i - 1)) & 0xFFFF) == POSITION) {
                return true;
            }
        }
        return false;
    }
}
