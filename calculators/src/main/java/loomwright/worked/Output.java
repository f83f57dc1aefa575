package loomwright.worked;

import loomwright.quantity.Unit;

/**
 * One thing a calculator answers.
 *
 * @param key its name in content files
 * @param label its name on the page
 * @param unit the unit it is shown in
 */
public record Output(String key, String label, Unit unit) {}
