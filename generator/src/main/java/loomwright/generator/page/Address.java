package loomwright.generator.page;

import loomwright.generator.content.Content;

/** Addresses inside the site. Every link is relative, so that the folder opens from a disk as well as from a server. */
final class Address {
    private Address() {}

    /** What leads from a page to the folder of the start page. */
    static String root(String page) {
        return page.indexOf('/') < 0 ? "" : "../";
    }

    /**
     * The address of a place as a page writes it.
     *
     * @param page the page the link stands in
     * @param target the place, from the root of the site
     */
    static String from(String page, String target) {
        return target.startsWith(page + "#") ? target.substring(page.length()) : root(page) + target;
    }

    static String lesson(String key) {
        return "lessons/" + key + ".html";
    }

    /** The projector view of a lesson. */
    static String projector(String key) {
        return "projector/" + key + ".html";
    }

    static String schema(String key) {
        return key + Content.SCHEMA;
    }

    static String calculator(String key) {
        return "calculators/" + key + ".html";
    }

    static String table(String key) {
        return "tables/" + key + ".html";
    }

    /** A photo. */
    static String picture(String name) {
        return "pictures/" + name;
    }

    static String term(String key) {
        return "glossary.html#" + key;
    }

    static String source(String key) {
        return "numbers.html#" + sourceId(key);
    }

    static String sourceId(String key) {
        return "source-" + key;
    }
}
