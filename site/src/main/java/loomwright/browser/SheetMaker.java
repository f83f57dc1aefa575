package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Paper;
import loomwright.handout.Printout;
import loomwright.handout.Selection;
import loomwright.handout.SheetCode;
import loomwright.handout.SheetMarkup;
import loomwright.markup.FieldMarkup;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;
import org.teavm.jso.dom.xml.NodeList;

/** Makes the sheets of a day in the page, and prints them part by part. */
final class SheetMaker {
    private static final String EACH = "kit-each";
    private static final String SEED = "kit-seed";

    private final HTMLDocument document;
    private final HTMLElement form;
    private final HTMLElement error;
    private final HTMLElement made;
    private final HTMLElement moves;
    private final List<LessonQuestions> lessons;
    private final DayForm day;
    private boolean fine;
    private Paper paper = Paper.A4;

    SheetMaker(HTMLDocument document, HTMLElement form, List<LessonQuestions> lessons, DayForm day) {
        this.document = document;
        this.form = form;
        this.lessons = lessons;
        this.day = day;
        this.error = document.querySelector("#kit-error");
        this.made = document.querySelector("#kit-made");
        this.moves = document.querySelector("#kit-moves");
        form.setHidden(false);
        form.addEventListener("submit", event -> {
            event.preventDefault();
            make();
        });
        Dom.onEnter(form, this::make);
        moves.addEventListener("click", event -> {
            HTMLElement button = Dom.closest((HTMLElement) event.getTarget(), "[data-prints]");
            if (button != null) {
                print("prints-" + button.getAttribute("data-prints"));
            }
        });
    }

    private void make() {
        error.setInnerHTML("");
        fine = true;
        HTMLElement group = form.querySelector(".kit-lessons");
        group.removeAttribute("aria-describedby");
        int seed = number(SEED, SheetCode.LARGEST_SEED, "The set number");
        document.querySelector("#day-error").setInnerHTML("");
        int people = day.people();
        if (people == 0) {
            gone("The number of people must be a whole number from 1 to " + SheetCode.MOST_PEOPLE + ".");
        }
        int each = number(EACH, Selection.ALL, "The number of questions");
        List<Integer> places = chosen();
        if (places.isEmpty()) {
            group.setAttribute("aria-describedby", "kit-lessons-error");
            fault("kit-lessons", "No lesson with a question is chosen: tick at least one.");
        }
        if (fine) {
            boolean alike = ((HTMLInputElement) document.getElementById("kit-alike")).isChecked();
            show(new Handout(Selection.ofLessons(lessons, places, each, alike), seed), people, seed);
        }
        HTMLElement wrong = document.querySelector("#day [aria-invalid], #kit [aria-invalid]");
        if (wrong != null) {
            wrong.focus();
        }
    }

    private void show(Handout handout, int people, int seed) {
        if (handout.asked().isEmpty()) {
            fault("kit-lessons", "These questions have too few other round numbers with another answer: choose more of each lesson, or another lesson.");
            return;
        }
        paper = Paper.CHOICES.named(((HTMLSelectElement) document.getElementById("kit-paper")).getValue());
        Printout printout = new Printout(handout, people, seed, form.getAttribute("data-house"), paper);
        StringBuilder html = new StringBuilder();
        for (Printout.Part part : printout.parts()) {
            html.append("<div data-part=\"").append(part.key()).append("\">").append(part.html()).append("</div>");
            HTMLElement button = moves.querySelector("[data-prints=" + part.key() + "]");
            button.setTextContent("Print the " + part.name() + " (" + part.pages().size() + ")");
            button.setHidden(part.pages().isEmpty());
        }
        moves.querySelector("[data-prints=all]").setTextContent("Print everything (" + printout.pages() + " pages)");
        made.setInnerHTML(html.toString());
        int ofSheets = printout.pagesOf("sheets");
        int ofTables = printout.pagesOf("tables");
        day.printed(printout.pagesOfOne(), ofTables, printout.pages() - ofSheets - ofTables);
        moves.setHidden(false);
        String left = handout.leftOut().isEmpty() ? "" : " " + handout.leftOut().size() + " left out: see the register.";
        String much = printout.pagesOfOne() > SheetMarkup.PAGES ? " That is more than " + SheetMarkup.PAGES + " pages for a person: ask fewer questions or lessons." : "";
        document.querySelector("#kit-said").setTextContent(paper.label() + ": " + printout.said() + much + left);
        Dom.goTo(moves.querySelector("button"));
    }

    private List<Integer> chosen() {
        List<Integer> places = new ArrayList<>();
        NodeList<? extends HTMLElement> boxes = form.querySelectorAll("[data-lesson] input");
        for (int i = 0; i < boxes.getLength(); i++) {
            if (((HTMLInputElement) boxes.get(i)).isChecked() && !lessons.get(i).questions().isEmpty()) {
                places.add(i);
            }
        }
        return places;
    }

    private int number(String id, int most, String name) {
        int number = WholeNumber.read(document, "#kit-error", id, 1, most, name);
        if (number == 0) {
            gone(name + " must be a whole number from 1 to " + most + ".");
        }
        return number;
    }

    /** What is typed stays; what was made before goes, so that nobody prints it for the new entries. */
    private void fault(String id, String message) {
        Dom.append(error, FieldMarkup.error(id, message));
        gone(message);
    }

    private void gone(String message) {
        fine = false;
        made.setInnerHTML("");
        moves.setHidden(true);
        document.querySelector("#kit-said").setTextContent(message);
    }

    private void print(String part) {
        HTMLElement page = document.getDocumentElement();
        Dom.mark(page, "kit-only", true);
        Dom.mark(page, "paper-" + paper.key(), true);
        made.setClassName(part);
        Dom.once(Window.current(), "afterprint", () -> {
            Dom.mark(page, "kit-only", false);
            Dom.mark(page, "paper-" + paper.key(), false);
            made.setClassName("");
        });
        Dom.print();
    }
}
