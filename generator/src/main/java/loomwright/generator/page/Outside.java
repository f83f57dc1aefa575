package loomwright.generator.page;

import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.generator.content.Fact;
import loomwright.generator.content.Settings;
import loomwright.source.Document;

/** Everything outside a lesson that its page can show. Two runs that agree in it write the same page of the same lesson. */
record Outside(
        Map<String, Document> documents,
        List<String> tables,
        Set<String> terms,
        Map<String, Fact> scenario,
        List<String> circuits,
        List<String> drawings,
        List<String> pictures,
        List<List<Object>> lessons,
        List<String> pages,
        List<String> settings,
        List<List<Object>> examples,
        Map<String, String> templates,
        Scripts scripts) {

    static Outside of(Site site, Templates templates, Scripts scripts) {
        Settings settings = site.content().settings();
        return new Outside(
                site.content().documents(),
                site.content().tables().values().stream().map(each -> each.file().text()).toList(),
                Set.copyOf(site.content().terms().keySet()),
                site.content().scenario(),
                site.content().circuits().values().stream().map(each -> each.key() + each.file().text()).toList(),
                site.content().drawings().values().stream().map(each -> each.name() + each.text()).toList(),
                site.content().pictures().values().stream().map(each -> each.name() + " " + each.width() + " " + each.height()).toList(),
                site.content().lessons().stream().<List<Object>>map(each -> List.of(each.key(), each.title())).toList(),
                site.content().pages().stream().map(each -> each.key()).toList(),
                List.of(
                        site.content().house(),
                        settings.revised(),
                        settings.licence(),
                        settings.safety() == null ? "" : settings.safety().text()),
                site.book().all().stream()
                        .<List<Object>>map(each -> List.of(
                                each.address(),
                                each.calculator().description().key(),
                                each.given(),
                                each.results()))
                        .toList(),
                templates.texts(),
                scripts);
    }
}
