package loomwright.generator.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The types of RFC 9239 (JavaScript), RFC 8081 (fonts), SVG 2, PNG and the Web App Manifest. */
class MediaTypeTest {
    @ParameterizedTest
    @CsvSource({
        "index.html, text/html; charset=utf-8", "loomwright.css, text/css; charset=utf-8", "lunr.js, text/javascript; charset=utf-8",
        "icon.svg, image/svg+xml", "icon-192.png, image/png", "site.webmanifest, application/manifest+json", "a.json, application/json",
        "a.woff2, font/woff2", "a.bin, application/octet-stream"
    })
    void byEnding(String name, String type) {
        assertEquals(type, MediaType.of(name));
    }
}
