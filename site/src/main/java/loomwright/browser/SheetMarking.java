package loomwright.browser;

import java.util.List;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Sheet;
import loomwright.handout.SheetCode;
import loomwright.handout.Task;
import loomwright.handout.TaskMarkup;
import loomwright.markup.FieldMarkup;
import loomwright.markup.Place;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** Brings a sheet back by its code, and marks the answers of the one who has it. */
final class SheetMarking {
    private final HTMLDocument document;
    private final HTMLElement made;
    private final HTMLInputElement box;
    private final List<LessonQuestions> lessons;

    SheetMarking(HTMLDocument document, List<LessonQuestions> lessons) {
        this.document = document;
        this.lessons = lessons;
        this.made = document.querySelector("#mark-made");
        this.box = (HTMLInputElement) document.querySelector("#mark-code");
        HTMLElement form = document.querySelector("#mark");
        form.setHidden(false);
        form.addEventListener("submit", event -> {
            event.preventDefault();
            bring();
        });
    }

    private void bring() {
        SheetCode.Reading reading = SheetCode.read(box.getValue(), lessons);
        boolean fault = reading.fault() != null;
        HTMLElement error = document.querySelector("#mark-error");
        error.setInnerHTML(fault ? FieldMarkup.error("mark-code", reading.fault()) : "");
        if (fault) {
            box.setAttribute("aria-invalid", "true");
            box.setAttribute("aria-describedby", "mark-code-error");
            say(reading.fault());
            return;
        }
        box.removeAttribute("aria-invalid");
        box.removeAttribute("aria-describedby");
        show(new Handout(reading.selection(), reading.seed()).sheet(reading.person()));
    }

    private void show(Sheet sheet) {
        made.setInnerHTML(TaskMarkup.head(sheet));
        for (int i = 0; i < sheet.tasks().size(); i++) {
            Task task = sheet.tasks().get(i);
            Dom.append(made, TaskMarkup.marked(task, i + 1));
            for (int box = 0; box < task.question().asked().size(); box++) {
                Place place = TaskMarkup.place(i + 1, box);
                HTMLElement form = made.querySelector("[data-box='" + place.key() + "'] form");
                new AnswerForm(form, place, task.question().asked().get(box)).show(task::working);
                form.addEventListener("submit", event -> tellMore(form));
            }
        }
        say("Sheet " + sheet.person() + ": " + sheet.tasks().size() + " questions stand below.");
        Dom.goTo(made.querySelector("h3"));
    }

    /** Whoever has answered is told what the lesson says of it, and every check that stops. */
    private static void tellMore(HTMLElement form) {
        HTMLElement more = Dom.closest(form, ".marked").querySelector(".more");
        if (more != null) {
            more.setHidden(false);
        }
    }

    private void say(String words) {
        document.querySelector("#mark-said").setTextContent(words);
    }
}
