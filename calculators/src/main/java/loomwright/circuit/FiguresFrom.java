package loomwright.circuit;

import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;

/** Where the figures come from that were typed for a part as those of its data sheet. A guess may stop a check and never passes one. */
public enum FiguresFrom implements Choice {
    SHEET("sheet", "its data sheet, or the print on it", Standing.COMPUTED),
    MEASURED("measured", "a measurement", Standing.COMPUTED),
    GUESS("guess", "a guess", Standing.GUESSED),
    INVENTED("invented", "invented for a story", Standing.INVENTED);

    private static final Choices<FiguresFrom> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final Standing standing;

    FiguresFrom(String key, String label, Standing standing) {
        this.key = key;
        this.label = label;
        this.standing = standing;
    }

    static ChoiceField field() {
        return CHOICES.field(
                "from", "Where its ratings and limits are from",
                "A guess or an invented figure can stop a check and never passes one: what it would pass is told as a figure to get.");
    }

    static FiguresFrom of(Part part) {
        return CHOICES.of(part.entries().option(field().key()));
    }

    Source source() {
        return new Source(Document.COMPUTED, standing.mayPass() ? "held against the figure you entered" : "the figure entered", standing);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }
}
