package loomwright.markup;

import loomwright.worked.Working;

/** Everything a worked example computes: the inside of {@code div.outcome}. */
public final class OutcomeMarkup {
    private OutcomeMarkup() {}

    /**
     * The printed example.
     *
     * @param figure markup of a picture to put first, or an empty text
     */
    public static String printed(Place place, Working working, String figure) {
        return figure + ResultsMarkup.of(place, working) + below(place, working);
    }

    /** The reader's own figures beside those of the printed example; working and checks are of the reader's own. */
    public static String own(Place place, Working own, Working printed, String figure) {
        return figure + ResultsMarkup.of(place, own, printed) + below(place, own);
    }

    /** The steps alone. */
    public static String steps(Links links, Working working) {
        return StepsMarkup.of(links, working);
    }

    private static String below(Place place, Working working) {
        return StepsMarkup.of(place.links(), working)
                + FindingsMarkup.of(place.links(), working)
                + OnwardMarkup.assumptions(working)
                + SlipsMarkup.of(working)
                + OnwardMarkup.nextQuestions(place.links(), working);
    }
}
