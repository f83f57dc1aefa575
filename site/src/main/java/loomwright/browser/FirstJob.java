package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Html;
import loomwright.plan.Answers;
import loomwright.plan.JobTexts;
import loomwright.plan.Plan;
import loomwright.plan.page.Difference;
import loomwright.plan.page.LessonFact;
import loomwright.plan.page.ObstacleMarkup;
import loomwright.plan.page.PlanSheet;
import loomwright.plan.page.QuestionMarkup;
import loomwright.plan.page.Screen;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import org.teavm.jso.JSBody;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** The page First job: one screen of questions at a time, and the plan that comes of the answers. */
final class FirstJob {
    private final HTMLDocument document;
    private final HTMLElement root;
    private final HTMLElement said;
    private final TypedFields fields;
    private final Pause pause = new Pause();
    private JobTexts texts;
    private int at;
    private FaultNotes notes;
    /** The questions that stand on the page. */
    private List<Field> asked = List.of();
    private Plan shown;

    FirstJob(HTMLDocument document) {
        this.document = document;
        this.root = document.getElementById("first-job");
        this.said = document.getElementById("job-said");
        this.fields = new TypedFields(document, QuestionMarkup.PLACE);
    }

    void start() {
        texts = JobStore.open();
        at = JobStore.isAnswered(texts) ? JobStore.screen(Screen.of(texts).size()) : 0;
        root.addEventListener("input", event -> entered((HTMLElement) event.getTarget(), false));
        root.addEventListener("change", event -> entered((HTMLElement) event.getTarget(), true));
        root.addEventListener("submit", event -> event.preventDefault());
        root.addEventListener("click", event -> clicked((HTMLElement) event.getTarget()));
        Dom.onEnter(root, () -> move(1));
        Window.current().addEventListener("hashchange", event -> linked());
        document.addEventListener(UnitChoice.EVENT, event -> {
            texts.sold(UnitChoice.now());
            show(false);
        });
        show(false);
    }

    /** Another job came by a link. */
    private void linked() {
        JobTexts carried = JobStore.carried();
        if (carried != null) {
            texts = carried;
            at = Screen.of(texts).size() - 1;
            show(true);
        }
    }

    private Screen screen() {
        return Screen.of(texts).get(at);
    }

    private void show(boolean focus) {
        JobStore.keep(texts, at);
        if (screen().kind() == Screen.Kind.PLAN) {
            showPlan();
        } else {
            said.setTextContent("");
            ask();
        }
        if (focus) {
            Focus.go(document.getElementById("job-title"));
        }
    }

    private void showPlan() {
        Answers.Read read = texts.answers();
        StringBuilder markup = new StringBuilder("<h2 id=\"job-title\" tabindex=\"-1\">Your plan</h2>");
        Plan plan = read.answers() == null ? null : Plan.of(read.answers());
        workedOut();
        if (plan == null) {
            markup.append(ObstacleMarkup.of(read.faults()));
        } else {
            List<String> different = shown == null ? List.of() : Difference.between(shown, plan);
            markup.append(different(different));
            markup.append(plan.circuit() == null ? ObstacleMarkup.of(plan.obstacle()) : "");
            shown = plan;
        }
        markup.append(ObstacleMarkup.changes(texts, plan == null || plan.circuit() == null));
        if (plan != null && plan.circuit() != null) {
            markup.append(PlanSheet.of(PageProgram.links(document), plan, lessons(), texts.written()));
        }
        root.setInnerHTML(markup.toString());
        said.setTextContent(plan == null ? "Some answers need another look." : plan.circuit() == null ? "No circuit for these answers." : "The plan is ready.");
    }

    /** Leaves the time for whoever measures the page. */
    @JSBody(script = "performance.mark('plan-worked-out');")
    private static native void workedOut();

    private static String different(List<String> words) {
        if (words.isEmpty()) {
            return "";
        }
        StringBuilder list = new StringBuilder("<div class=\"different\" id=\"job-different\"><p><strong>What became different:</strong></p><ul>");
        for (String each : words) {
            list.append("<li>").append(Html.escape(each)).append("</li>");
        }
        return list.append("</ul></div>").toString();
    }

    /** What the page says of the lessons. */
    private List<LessonFact> lessons() {
        List<LessonFact> facts = new ArrayList<>();
        NodeList<? extends HTMLElement> listed = document.querySelectorAll("#job-lesson-facts [data-lesson]");
        for (int i = 0; i < listed.getLength(); i++) {
            HTMLElement lesson = listed.get(i);
            facts.add(new LessonFact(lesson.getAttribute("data-lesson"), lesson.getTextContent(), Integer.parseInt(lesson.getAttribute("data-minutes"))));
        }
        return facts;
    }

    private List<EntryFault> faults() {
        List<EntryFault> faults = new ArrayList<>();
        for (Answers.Fault fault : texts.answers().faults()) {
            if (fault.item() == screen().item() && root.querySelector("[data-input='" + fault.fieldKey() + "']") != null) {
                faults.add(new EntryFault(fault.fieldKey(), fault.message()));
            }
        }
        return faults;
    }

    private void entered(HTMLElement control, boolean left) {
        HTMLElement field = Dom.closest(control, "[data-input]");
        if (field == null) {
            return;
        }
        String key = field.getAttribute("data-input");
        fields.followUnits(key, control.getId().endsWith("-unit"));
        texts.put(screen().item(), key, fields.text(key));
        JobStore.keep(texts, at);
        if (!left) {
            pause.begin(() -> notes.show(faults(), false));
        } else if (!asked.equals(screen().fields(texts))) {
            again(control.getId());
        } else {
            pause.end();
            notes.show(faults(), true);
        }
    }

    /** An answer asks for more, or for less: the screen is written anew, and the focus stays. */
    private void again(String focused) {
        ask();
        Focus.to(focused);
    }

    private void ask() {
        asked = screen().fields(texts);
        root.setInnerHTML(QuestionMarkup.of(texts, screen(), UnitChoice.now()));
        notes = new FaultNotes(root.querySelector("form"), QuestionMarkup.PLACE);
        notes.show(faults(), true);
    }

    private void clicked(HTMLElement target) {
        HTMLElement button = Dom.closest(target, "button");
        if (button == null) {
            return;
        }
        String asks = button.getAttribute("data-asks");
        String open = button.getAttribute("data-open");
        String number = button.getAttribute("data-screen");
        if (asks != null) {
            at = Screen.of(texts).indexOf(Screen.asking(texts, Integer.parseInt(button.getAttribute("data-item")), asks));
            show(false);
            Focus.to(QuestionMarkup.PLACE.id(asks));
        } else if (open != null) {
            texts.put(screen().item(), open, "");
            fields.box(open).setValue("");
            JobStore.keep(texts, at);
            notes.show(faults(), true);
            said.setTextContent("Left open: the careful value is taken.");
        } else if (number != null) {
            at = Integer.parseInt(number);
            show(true);
        } else if (button.getAttribute("data-does") != null) {
            act(button.getAttribute("data-does"));
        }
    }

    private void act(String does) {
        switch (does) {
            case "next" -> move(1);
            case "back" -> move(-1);
            case "plan" -> goTo(Screen.of(texts).size() - 1);
            case "add" -> {
                texts.add();
                goTo(at + 1);
            }
            case "remove" -> {
                texts.remove(screen().item());
                goTo(Math.max(0, at - 3));
            }
            case "print" -> Dom.print();
            case "fresh" -> {
                texts = JobTexts.fresh(UnitChoice.now());
                shown = null;
                goTo(0);
            }
            default -> throw new IllegalArgumentException(does);
        }
    }

    /** On to the next screen, unless something on this one cannot be used; back always. */
    private void move(int by) {
        if (screen().kind() == Screen.Kind.PLAN) {
            return;
        }
        pause.end();
        List<EntryFault> faults = faults();
        if (by > 0 && !faults.isEmpty()) {
            notes.show(faults, true);
            notes.goToSummary();
        } else {
            goTo(at + by);
        }
    }

    private void goTo(int screen) {
        at = screen;
        show(true);
    }
}
