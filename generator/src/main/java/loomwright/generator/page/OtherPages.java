package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import loomwright.generator.problem.Places;

/**
 * Pages beside the lessons as an earlier run of the same program wrote them, with what they add to the search and to the lists of
 * sources. They are taken again if everything they show is as it was.
 */
final class OtherPages {
    /** A page as it was handed on. */
    private record Kept(String address, String html, Places places) {}

    private Object shown;
    private List<Kept> pages;
    private SearchData search;
    private Reliance reliance;

    /**
     * Hands the pages on.
     *
     * @param now everything that they show
     * @param writing writes them, if that must be
     */
    void write(Object now, Site site, SearchData all, PageSink sink, BiConsumer<SearchData, PageSink> writing) {
        if (!now.equals(shown)) {
            anew(site, writing);
            shown = now;
        }
        pages.forEach(page -> sink.page(page.address(), page.html(), page.places()));
        all.takeOver(search);
        site.reliance().add(reliance);
    }

    /** What has a problem is not kept: it must be reported by each run. */
    void forgetIf(boolean faulty) {
        shown = faulty ? null : shown;
    }

    private void anew(Site site, BiConsumer<SearchData, PageSink> writing) {
        pages = new ArrayList<>();
        search = new SearchData();
        writing.accept(search, new PageSink() {
            @Override
            public void page(String address, String html, Places places) {
                pages.add(new Kept(address, html, places));
            }

            @Override
            public void file(String address, byte[] bytes) {
                throw new IllegalStateException("only pages are kept, not " + address);
            }
        });
        reliance = new Reliance();
        reliance.add(site.reliance());
    }
}
