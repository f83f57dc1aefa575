package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.content.Front;
import loomwright.generator.content.Lesson;
import loomwright.generator.markdown.Surroundings;

/** Writes the first page. */
final class StartPage {
    private static final String ADDRESS = "index.html";

    /** The record of start.mustache. */
    record Page(Frame frame, String title, String intro, List<Way> ways, ClubOnStart club, String body) {}

    /** A way in. */
    record Way(String title, String href, String words, String facts) {}

    private final Site site;

    private StartPage(Site site) {
        this.site = site;
    }

    static void write(Site site, Frames frames, Templates templates, PageSink sink) {
        Intro intro = Intro.of(site, "index", "Loomwright");
        int firstSection = intro.html().indexOf("<h2");
        int split = firstSection < 0 ? intro.html().length() : firstSection;
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS),
                intro.title(),
                intro.html().substring(0, split),
                new StartPage(site).ways(),
                ClubOnStart.of(site, ADDRESS),
                intro.html().substring(split));
        sink.page(ADDRESS, templates.fill("start", page), intro.places());
    }

    private List<Way> ways() {
        Front front = site.content().fronts().get("index");
        List<Way> ways = new ArrayList<>();
        for (Front.Way way : front == null ? List.<Front.Way>of() : front.ways()) {
            Surroundings.Target target =
                    new LinkAddresses(site, new Place("", ADDRESS)).find(way.to().text(), way.to().at());
            if (target != null) {
                ways.add(new Way(way.title(), target.href(), way.words(), facts(target.href())));
            }
        }
        return ways;
    }

    /** How long a path of lessons takes, or null if the way leads elsewhere. */
    private String facts(String href) {
        Front lessons = site.content().fronts().get("lessons");
        for (Front.LessonPath path : lessons == null ? List.<Front.LessonPath>of() : lessons.paths()) {
            if (href.equals("lessons.html#" + path.key())) {
                List<Lesson> taken = site.content().lessons().stream()
                        .filter(each -> !site.content().isOfClub(each))
                        .filter(each -> path.lessons().isEmpty()
                                || path.lessons().stream().anyMatch(key -> key.text().equals(each.key())))
                        .toList();
                int minutes = taken.stream().mapToInt(lesson -> LessonTime.minutes(lesson, site.book())).sum();
                return taken.size() + (taken.size() == 1 ? " lesson, about " : " lessons, about ") + time(minutes);
            }
        }
        return null;
    }

    private static String time(int minutes) {
        int halves = Math.round(minutes / 30f);
        if (halves < 3) {
            return minutes + " minutes";
        }
        return halves % 2 == 0 ? halves / 2 + " hours" : halves / 2 + "½ hours";
    }
}
