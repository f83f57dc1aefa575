package loomwright.generator.preview;

/** What a browser is told that a file is. */
final class MediaType {
    static final String HTML = "text/html; charset=utf-8";

    private MediaType() {}

    /** By the ending of the name. */
    static String of(String address) {
        return switch (address.substring(address.lastIndexOf('.') + 1)) {
            case "html" -> HTML;
            case "css" -> "text/css; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "json" -> "application/json";
            case "webmanifest" -> "application/manifest+json";
            case "svg" -> "image/svg+xml";
            case "png" -> "image/png";
            case "jpg" -> "image/jpeg";
            case "webp" -> "image/webp";
            case "woff2" -> "font/woff2";
            default -> "application/octet-stream";
        };
    }
}
