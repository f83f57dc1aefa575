package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.Edition;
import loomwright.generator.content.Settings;
import loomwright.generator.markdown.Surroundings;

/** Makes the frame of each page. */
final class Frames {
    /** The page each entry of the navigation leads to. */
    private enum Section {
        FIRST_JOB("First job", "first-job"),
        LESSONS("Lessons", "lessons"),
        CALCULATORS("Calculators", "calculators"),
        CIRCUIT("Your circuit", "your-circuit"),
        WORKSHOP("Workshop", "workshop"),
        TABLES("Tables", "tables"),
        WORDS("Words", "glossary"),
        SOURCES("Sources", "numbers"),
        SEARCH("Search", "search");

        private final String title;
        private final String page;

        Section(String title, String page) {
            this.title = title;
            this.page = page;
        }

        boolean holds(String address) {
            return address.equals(page + ".html") || address.startsWith(page + "/");
        }
    }

    private final Settings settings;
    private final Site site;
    private final Scripts scripts;

    Frames(Site site, Scripts scripts) {
        this.site = site;
        this.settings = site.content().settings();
        this.scripts = scripts;
    }

    Frame of(String title, String summary, String address) {
        List<Frame.NavEntry> nav = new ArrayList<>();
        for (Section section : Section.values()) {
            boolean mayLack = section == Section.CIRCUIT || section == Section.FIRST_JOB || section == Section.WORKSHOP;
            if (mayLack && !site.content().fronts().containsKey(section.page)) {
                continue;
            }
            nav.add(new Frame.NavEntry(section.title, Address.from(address, section.page + ".html"), section.holds(address)));
        }
        return new Frame(
                title,
                summary,
                Address.root(address),
                scripts.of(address),
                scripts.programOf(address),
                site.content().units().key(),
                nav,
                safety(address),
                Address.from(address, "numbers.html"),
                settings.revised(),
                Edition.VERSION,
                Edition.DATE,
                settings.licence(),
                site.content().owner().isEmpty() ? null : site.content().owner());
    }

    private String safety(String address) {
        if (settings.safety() == null) {
            return Address.from(address, "index.html");
        }
        Surroundings.Target target =
                new LinkAddresses(site, new Place("", address)).find(settings.safety().text(), settings.safety().at());
        return target == null ? "" : target.href();
    }
}
