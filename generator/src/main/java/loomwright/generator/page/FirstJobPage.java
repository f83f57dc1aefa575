package loomwright.generator.page;

import java.util.List;
import loomwright.generator.markdown.PlainText;
import loomwright.markup.Links;
import loomwright.plan.JobTexts;
import loomwright.plan.Plan;
import loomwright.plan.page.LessonFact;
import loomwright.plan.page.PlanSheet;

/** Writes the page First job, with a sample job worked out for readers without scripts. A site whose content has no such page goes without. */
final class FirstJobPage {
    static final String KEY = "first-job";
    static final String ADDRESS = KEY + ".html";

    /** Two USB outlets and a light in a trailer, as a beginner would say it; the route of the light was not measured. */
    private static final String SAMPLE = "0.kind=usb&0.how-many=2&0.draws=36%20W&0.hours=3%20h&0.most-device=10%20A&0.route=3%20m&0.place=inside&0.beside=few&0.sheath=single"
            + "&1.kind=lights&1.draws=12%20W&1.hours=4%20h&1.place=inside&1.beside=alone&1.sheath=single"
            + "&craft=trailer&feed=battery&box-route=1%20m&chemistry=lead-acid&capacity=100%20Ah&days-wanted=2%20d&switched=no";

    /** The record of first-job.mustache. */
    record Page(Frame frame, String title, String intro, String sample, String body, List<LessonFact> lessons) {}

    private FirstJobPage() {}

    static void write(Site site, Frames frames, Templates templates, SearchData search, PageSink sink) {
        if (!site.content().fronts().containsKey(KEY)) {
            return;
        }
        Intro intro = Intro.of(site, KEY, "First job");
        int section = intro.html().indexOf("<h2");
        int split = section < 0 ? intro.html().length() : section;
        List<LessonFact> lessons = site.content().lessons().stream()
                .filter(each -> !site.content().isOfClub(each))
                .map(each -> new LessonFact(each.key(), each.article().title(), LessonTime.minutes(each, site.book())))
                .toList();
        Page page = new Page(
                frames.of(intro.title(), intro.summary(), ADDRESS), intro.title(), intro.html().substring(0, split), sample(lessons),
                intro.html().substring(split), lessons);
        sink.page(ADDRESS, templates.fill(KEY, page), intro.places());
        search.add(intro.title(), ADDRESS, "page", intro.summary(), PlainText.of(intro.html()));
    }

    private static String sample(List<LessonFact> lessons) {
        Plan plan = Plan.of(JobTexts.read(SAMPLE).answers().answers());
        return PlanSheet.of(new Links(""), plan, lessons, SAMPLE);
    }
}
