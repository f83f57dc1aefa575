package loomwright.plan;

import loomwright.conductor.Insulation;
import loomwright.worked.Choice;
import loomwright.worked.Choices;

/** Where a run lies, in words of the house; each stands for a warmth and for the insulation to begin with. */
enum Situated implements Choice {
    NOT_KNOWN("not-known", "I don\u2019t know", "55 °C", Insulation.T105),
    INSIDE("inside", "inside, along walls or floor", "40 °C", Insulation.T60),
    ROOF("roof", "under a roof in the sun", "55 °C", Insulation.T105),
    ENGINE("engine", "through an engine space", "50 °C", Insulation.T105);

    static final Choices<Situated> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String warmth;
    private final Insulation insulation;

    Situated(String key, String label, String warmth, Insulation insulation) {
        this.key = key;
        this.label = label;
        this.warmth = warmth;
        this.insulation = insulation;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** How warm it is there, and so the conductor. 50 °C is that of 33 CFR; the others are a careful guess. */
    String warmth() {
        return warmth;
    }

    /** The least insulation to be bought for it. */
    Insulation insulation() {
        return insulation;
    }

    boolean isEngineSpace() {
        return this == ENGINE;
    }

    /** In the middle of a sentence. */
    String words() {
        return this == NOT_KNOWN ? "as warm as under a roof in the sun" : label;
    }
}
