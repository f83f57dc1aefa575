package loomwright.worked;

import loomwright.quantity.Unit;

/**
 * One thing a calculator answers.
 *
 * @param key its name in content files
 * @param label its name on the page
 * @param unit the unit it is shown in
 * @param insteadOf the key of the answer in whose place it stands, where that is given in another way; empty if it stands for itself
 */
public record Output(String key, String label, Unit unit, String insteadOf) {
    public Output(String key, String label, Unit unit) {
        this(key, label, unit, "");
    }
}
