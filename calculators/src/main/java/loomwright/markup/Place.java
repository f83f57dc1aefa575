package loomwright.markup;

import java.util.List;

/**
 * The worked example that markup is written for.
 *
 * @param key its key; every id begins with it
 * @param links addresses of other pages
 * @param show the results to put first
 */
public record Place(String key, Links links, List<String> show) {
    public String id(String part) {
        return key + "-" + part;
    }
}
