package loomwright.generator.offline;

/** What a phone is told when the site is installed on it. */
final class Manifest {
    static final String TEXT = """
            {
              "name": "Loomwright: 12 V wiring, step by step",
              "short_name": "Loomwright",
              "description": "Lessons with worked examples for adding outlets, lights and pumps to a 12 V system.",
              "lang": "en",
              "id": "index.html",
              "start_url": "index.html",
              "scope": "./",
              "display": "standalone",
              "display_override": ["minimal-ui", "standalone"],
              "background_color": "%s",
              "theme_color": "%s",
              "icons": [
                {"src": "icon.svg", "sizes": "any", "type": "image/svg+xml"},
                {"src": "icon-192.png", "sizes": "192x192", "type": "image/png", "purpose": "any"},
                {"src": "icon-512.png", "sizes": "512x512", "type": "image/png", "purpose": "any"},
                {"src": "icon-512.png", "sizes": "512x512", "type": "image/png", "purpose": "maskable"}
              ]
            }
            """.formatted(Icon.GROUND, Icon.GROUND);

    private Manifest() {}
}
