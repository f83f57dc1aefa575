package loomwright.worked;

import loomwright.quantity.Quantity;

/** One step of a working. */
public sealed interface Step permits FormulaStep, TableStep, ConversionStep, ChoiceStep {
    /** What the step does, as the start of a sentence without a full stop: {@code Add up the way out and the way back}. */
    String words();

    /** What the step gives; null if a choice found nothing that fits. */
    Quantity result();

    /** Why the step is taken; answers the question a learner should ask. */
    String why();
}
