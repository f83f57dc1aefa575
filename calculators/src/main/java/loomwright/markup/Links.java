package loomwright.markup;

import java.util.Map;
import loomwright.source.Source;

/**
 * Addresses of other pages of the site.
 *
 * @param root what leads from the page to the root of the site: an empty text, or {@code ../}; null on paper that lies outside the site
 */
public record Links(String root) {
    /** For paper: sources are named and lead nowhere. */
    public static final Links NONE = new Links(null);

    /** The place on the page of sources that describes the document of {@code source}. */
    public String source(Source source) {
        return root + "numbers.html#source-" + source.document().key();
    }

    /** The page of a lesson. */
    public String lesson(String key) {
        return root + "lessons/" + key + ".html";
    }

    /** The page of a calculator, with its fields filled. */
    public String calculator(String key, Map<String, String> carried) {
        String page = root + "calculators/" + key + ".html";
        return carried.isEmpty() ? page : page + "#" + Fragment.write(carried);
    }
}
