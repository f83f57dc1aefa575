package loomwright.generator.example;

import java.util.List;
import java.util.Map;
import loomwright.generator.content.Article;
import loomwright.worked.Calculator;

/**
 * A computed question whose answer is held against figures from elsewhere.
 *
 * @param key its name in the site
 * @param article the page it stands on
 * @param calculator what works it out
 * @param given the entries, by field
 * @param pins what the results are held against
 */
public record CheckedQuestion(String key, Article article, Calculator calculator, Map<String, String> given, List<Pin> pins) {
    /** Where it stands, from the root of the site. */
    public String address() {
        return article.address() + "#" + key;
    }
}
