package loomwright.generator.offline;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/**
 * Lists the files of a site with the hash of each, for the service worker. It fetches what has changed and nothing else, and refuses a file
 * that is not of its build.
 */
public final class OfflineFiles {
    /** The service worker. */
    public static final String WORKER = "worker.js";

    /** So many bytes of SHA-256 tell two files apart. */
    private static final int BYTES_OF_HASH = 16;

    private final Map<String, ForkJoinTask<String>> hashes = new TreeMap<>();
    private long bytes;

    /** The files that are the same in every site: manifest and icons. */
    public static Map<String, byte[]> fixed() {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("icon.svg", Icon.svg().getBytes(StandardCharsets.UTF_8));
        files.put("icon-192.png", Icon.png(192));
        files.put("icon-512.png", Icon.png(512));
        files.put("loomwright.webmanifest", Manifest.TEXT.getBytes(StandardCharsets.UTF_8));
        return files;
    }

    /** Takes note of a file of the site. The hash is worked out beside the writing of the next files. */
    public void add(String address, byte[] file) {
        hashes.put(address, ForkJoinPool.commonPool().submit(() -> hash(file)));
        bytes += file.length;
    }

    /** The service worker for the files noted so far. */
    public byte[] worker(String program) {
        StringBuilder out = new StringBuilder("var BYTES = ").append(bytes).append(";\nvar FILES = {\n");
        hashes.forEach((address, hash) -> out.append('"').append(address).append("\": \"").append(hash.join()).append("\",\n"));
        return out.append("};\n").append(program).toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String hash(byte[] file) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(file);
            StringBuilder hex = new StringBuilder();
            for (int i = 0; i < BYTES_OF_HASH; i++) {
                hex.append(Character.forDigit(digest[i] >> 4 & 15, 16)).append(Character.forDigit(digest[i] & 15, 16));
            }
            return hex.toString();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
