package loomwright.generator.example;

import java.util.List;
import java.util.Map;
import loomwright.generator.content.Article;
import loomwright.generator.content.Scalar;
import loomwright.quantity.Quantity;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

/**
 * A worked example. The working is not kept: it is cheap to do again, and thousands of them would fill the memory.
 *
 * @param key its name in the site
 * @param article the page it stands on
 * @param title its title
 * @param story what it is about, in Markdown
 * @param calculator what works it out
 * @param given the entries, by field
 * @param keep the inputs that keep their text when the numbers change
 * @param sheet what a question sheet tells of it
 * @param show the results to put first
 * @param check the result the reader is asked for
 * @param results the results, by key
 * @param pins what the results are held against
 * @param misprint a wrong figure to find, or null
 * @param uses what its working relies on
 * @param further whether a reader can pass it over: it is left out of the time of its lesson
 * @param words how many words its story and the steps of its working have
 */
public record Example(
        String key,
        Article article,
        String title,
        Scalar story,
        Calculator calculator,
        Map<String, String> given,
        List<String> keep,
        SheetStory sheet,
        List<String> show,
        String check,
        Map<String, Quantity> results,
        List<Pin> pins,
        Misprint misprint,
        Uses uses,
        boolean further,
        int words) {

    /** The whole working. */
    public Working working() {
        return Outcome.of(calculator, given).working();
    }

    /** Whether figures made up for the story stand among those it is worked out from. */
    public boolean madeUp() {
        return story.text().contains("invented")
                || pins.stream().anyMatch(pin -> pin.kind() == PinKind.INVENTED || pin.source().locus().contains("invented"));
    }

    /** Where it stands, from the root of the site. */
    public String address() {
        return article.address() + "#" + key;
    }
}
