package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.WorkedCircuits;
import loomwright.markup.Balance;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** Markup as a browser reads it, and the two circuits it is written for. */
final class Written {
    static final Circuit PUNT = WorkedCircuits.punt();
    static final Circuit TRAILER = WorkedCircuits.trailer();

    private Written() {}

    static Element read(String html) {
        return Jsoup.parseBodyFragment(Balance.held(html)).body();
    }

    /** The rows of the body of a table, each its cells with a bar between. */
    static List<String> rows(Element within, String label) {
        return within.select("table[aria-label=" + label + "] > tbody > tr").stream().map(row -> String.join(" | ", row.children().stream().map(Element::text).toList()).strip()).toList();
    }

    static List<String> heads(Element within, String label) {
        return within.select("table[aria-label=" + label + "] > thead th").eachText();
    }
}
