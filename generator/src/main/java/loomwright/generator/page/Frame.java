package loomwright.generator.page;

import java.util.List;

/** What stands around every page; see VARIABLES.md. */
record Frame(
        String title,
        String summary,
        String root,
        List<Script> scripts,
        String program,
        String units,
        List<NavEntry> nav,
        String safetyHref,
        String sourcesHref,
        String revised,
        String version,
        String released,
        String licence,
        String club) {

    /** A script file, from the root of the site. */
    record Script(String file) {}

    /** One entry of the navigation. */
    record NavEntry(String title, String href, boolean current) {}
}
