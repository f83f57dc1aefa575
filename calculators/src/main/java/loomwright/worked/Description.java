package loomwright.worked;

import java.util.List;

/**
 * What a calculator is for and what it asks.
 *
 * @param key its name in content files and links, such as {@code voltage-drop}
 * @param title its name on the page
 * @param question the question it answers, as a reader would ask it
 * @param assumptions what it takes for granted, one sentence each
 * @param fields what it asks for, in order
 * @param outputs what it answers, in order
 * @param formulas its formulas by name
 */
public record Description(
        String key,
        String title,
        String question,
        List<String> assumptions,
        List<Field> fields,
        List<Output> outputs,
        List<NamedFormula> formulas) {

    /** The field of that key, or null. */
    public Field field(String fieldKey) {
        for (Field field : fields) {
            if (field.key().equals(fieldKey)) {
                return field;
            }
        }
        return null;
    }

    /** The output of that key, or null. */
    public Output output(String outputKey) {
        for (Output output : outputs) {
            if (output.key().equals(outputKey)) {
                return output;
            }
        }
        return null;
    }

    /** The formula of that key, or null. */
    public NamedFormula formula(String formulaKey) {
        for (NamedFormula formula : formulas) {
            if (formula.key().equals(formulaKey)) {
                return formula;
            }
        }
        return null;
    }
}
