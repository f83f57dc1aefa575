package loomwright.generator.pack;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import loomwright.generator.Edition;
import loomwright.generator.build.Output;

/**
 * A site as one zip. The same files give the same bytes: entries stand in the order of their names, and all bear one date, the earliest that
 * every zip program reads alike.
 */
public final class Stick implements Output {
    /** The folder of the site inside the zip. */
    static final String FOLDER = "loomwright/";

    private static final LocalDateTime DATE = LocalDateTime.of(1980, 2, 1, 0, 0);
    private static final String MARK = "A Loomwright site to run from a stick";

    private final Map<String, byte[]> files = new TreeMap<>();

    /** Whether there is a file that is not one of our zips and must not be written over. */
    public static boolean isOther(Path zip) {
        if (!Files.exists(zip)) {
            return false;
        }
        try (ZipFile file = new ZipFile(zip.toFile())) {
            return !MARK.equals(file.getComment());
        } catch (IOException e) {
            return true;
        }
    }

    @Override
    public void put(String address, byte[] bytes) {
        files.put(FOLDER + address, bytes);
    }

    /** How many bytes there are when it is unpacked. */
    public long size() {
        return files.values().stream().mapToLong(bytes -> bytes.length).sum();
    }

    /**
     * Writes the zip beside its place and puts it there in one step.
     *
     * @param owner whose copy it is, or an empty text
     */
    public void write(Path zip, String owner) {
        Map<String, byte[]> all = new TreeMap<>(files);
        all.put("READ ME FIRST.txt", text("readme.txt", owner));
        all.put("START.html", text("start.html", ""));
        Path target = zip.toAbsolutePath();
        Path beside = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid());
        try {
            Files.createDirectories(target.getParent());
            try (OutputStream out = Files.newOutputStream(beside); ZipOutputStream zipped = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
                zipped.setLevel(Deflater.BEST_COMPRESSION);
                zipped.setComment(MARK);
                for (Map.Entry<String, byte[]> file : all.entrySet()) {
                    ZipEntry entry = new ZipEntry(file.getKey());
                    entry.setTimeLocal(DATE);
                    zipped.putNextEntry(entry);
                    zipped.write(file.getValue());
                    zipped.closeEntry();
                }
            }
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            beside.toFile().delete();
            throw new UncheckedIOException(e);
        }
    }

    /** A text that comes with the program. Lines end as the oldest editors want them, so that any machine shows them. */
    private static byte[] text(String name, String owner) {
        try (var in = Stick.class.getResourceAsStream(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String whose = owner.isEmpty() ? "" : "This copy is kept by " + owner + ".\n\n";
            return text.replace("{version}", Edition.VERSION).replace("{date}", Edition.DATE).replace("{owner}\n", whose).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
