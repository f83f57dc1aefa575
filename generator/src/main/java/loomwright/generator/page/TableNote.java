package loomwright.generator.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loomwright.generator.content.TableFile;
import loomwright.markup.Html;
import loomwright.source.Document;

/** A note of a table as HTML: where it names a document or another table by its key, a reader gets the title and the way there. */
final class TableNote {
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)+");

    private TableNote() {}

    static String html(Site site, String address, String note) {
        Matcher matcher = KEY.matcher(note);
        StringBuilder html = new StringBuilder();
        int from = 0;
        while (matcher.find()) {
            String link = link(site, Address.root(address), matcher.group());
            if (link != null) {
                html.append(Html.escape(note.substring(from, matcher.start()))).append(link);
                from = matcher.end();
            }
        }
        return html.append(Html.escape(note.substring(from))).toString();
    }

    private static String link(Site site, String root, String key) {
        TableFile table = site.content().tables().get(key);
        Document document = site.content().documents().get(key);
        if (table != null) {
            return link(root + Address.table(key), table.table().title());
        }
        return document == null ? null : link(root + "numbers.html#source-" + key, document.title());
    }

    private static String link(String href, String title) {
        return "<a href=\"" + href + "\">" + Html.escape(title) + "</a>";
    }
}
