package loomwright.circuit.check;

import loomwright.worked.Verdict;

/** Findings by what the reader does about them, in the order in which they are told. */
public enum FindingGroup {
    CHANGE("Change this", Verdict.STOP),
    DECIDE("Decide this", Verdict.CAUTION),
    /** What several parts lack alike is one {@link FigureToGet}. */
    FIGURES("Figures to get", Verdict.NOT_KNOWN),
    PASSED("Checks that passed", Verdict.PASSED);

    private final String title;
    private final Verdict verdict;

    FindingGroup(String title, Verdict verdict) {
        this.title = title;
        this.verdict = verdict;
    }

    public String title() {
        return title;
    }

    public Verdict verdict() {
        return verdict;
    }

    /** How many of each an examination has, in words. */
    public static String counted(Examination examination) {
        return counted(examination.count(Verdict.STOP), "thing") + " to change, " + counted(examination.count(Verdict.CAUTION), "thing") + " to decide, "
                + counted(FigureToGet.of(examination).size(), "figure") + " to get; " + counted(examination.count(Verdict.PASSED), "check") + " passed";
    }

    /** A count with its word, {@code no} for nought. */
    public static String counted(int count, String what) {
        return (count == 0 ? "no" : Integer.toString(count)) + " " + what + (count == 1 ? "" : "s");
    }
}
