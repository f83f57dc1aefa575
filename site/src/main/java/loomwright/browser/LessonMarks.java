package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Marks lessons as read: a button at the end of a lesson, a word in the list of lessons. */
final class LessonMarks {
    private LessonMarks() {}

    static void mount(HTMLDocument document) {
        NodeList<? extends HTMLElement> entries = document.querySelectorAll(".course > li");
        for (int i = 0; i < entries.getLength(); i++) {
            mark(entries.get(i));
        }
        HTMLElement end = document.querySelector(".onward");
        if (end != null) {
            Dom.insertBefore(end, "<p class=\"readmark\"><button type=\"button\" class=\"quiet\"></button></p>");
            button(document.querySelector(".readmark button"), lesson(Window.current().getLocation().getFullURL()));
        }
    }

    private static void mark(HTMLElement entry) {
        if (Progress.has(lesson(entry.querySelector("a.go").getAttribute("href")))) {
            Dom.append(entry.querySelector(".facts"), " <span class=\"read\">You have read it.</span>");
        }
    }

    private static void button(HTMLElement button, String lesson) {
        paint(button, lesson);
        button.addEventListener("click", event -> {
            if (Progress.has(lesson)) {
                Progress.remove(lesson);
            } else {
                Progress.add(lesson);
            }
            paint(button, lesson);
        });
    }

    private static void paint(HTMLElement button, String lesson) {
        button.setTextContent("I have read this lesson");
        button.setAttribute("aria-pressed", Progress.has(lesson) ? "true" : "false");
    }

    /** The name of a lesson in what is remembered, from an address that ends in {@code NAME.html} and perhaps a fragment. */
    private static String lesson(String address) {
        int hash = address.indexOf('#');
        String file = hash < 0 ? address : address.substring(0, hash);
        int end = file.lastIndexOf('.');
        return "lesson:" + file.substring(file.lastIndexOf('/') + 1, end < 0 ? file.length() : end);
    }
}
