package loomwright.plan;

import loomwright.worked.Choice;
import loomwright.worked.Choices;

/** What lies beside a run: the number of loaded conductors that warm each other. */
enum Beside implements Choice {
    NOT_KNOWN("not-known", "I don\u2019t know", 24),
    ALONE("alone", "nothing: it lies by itself", 2),
    FEW("few", "one or two other cables", 6),
    MANY("many", "a bundle, or a conduit with more", 24);

    static final Choices<Beside> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final int together;

    Beside(String key, String label, int together) {
        this.key = key;
        this.label = label;
        this.together = together;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** As many conductors as its row of 33 CFR 183.425, note 2, goes up to. */
    int together() {
        return together;
    }
}
