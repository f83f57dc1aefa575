package loomwright.markup;

import loomwright.worked.Working;

/** What a worked example computes on the way to its upshot: the inside of {@code div.outcome}. */
public final class OutcomeMarkup {
    private OutcomeMarkup() {}

    /** The printed example. */
    public static String printed(Place place, Working working) {
        return of(place, working, null);
    }

    /** The reader's own figures; further results have those of the printed example beside them. */
    public static String own(Place place, Working own, Working printed) {
        return of(place, own, printed);
    }

    /** The steps alone, each with its source. */
    public static String steps(Links links, Working working) {
        return StepsMarkup.of(links, working);
    }

    private static String of(Place place, Working working, Working printed) {
        return StepsMarkup.withoutSources(place.links(), working)
                + FindingsMarkup.folded(place.links(), working)
                + ResultsMarkup.others(place, working, printed)
                + StepsMarkup.sources(place.links(), working)
                + OnwardMarkup.assumptions(working)
                + SlipsMarkup.of(working)
                + OnwardMarkup.nextQuestions(place.links(), working);
    }
}
