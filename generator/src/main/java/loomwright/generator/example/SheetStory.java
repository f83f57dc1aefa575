package loomwright.generator.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.worked.Output;

/**
 * What a question sheet tells of a block whose own story cannot be told with other numbers.
 *
 * @param story the story, the name of an input in braces in the place of each number; empty if the block has none
 * @param boxes what the sheet asks for, a box each; empty if that is the result of the block
 */
public record SheetStory(String story, List<Output> boxes) {
    /** Reads {@code sheet} and {@code boxes}. */
    public static SheetStory of(YamlMap block, Trial trial, Problems problems) {
        Scalar sheet = block.text("sheet");
        List<Output> boxes = new ArrayList<>();
        for (Scalar name : block.texts("boxes")) {
            Output output = trial == null ? null : trial.output(name, problems);
            if (output != null) {
                boxes.add(output);
            }
        }
        if (sheet != null && trial != null) {
            check(sheet, trial.given().keySet(), problems);
        }
        return new SheetStory(sheet == null ? "" : sheet.text().replaceAll("\\s+", " ").strip(), List.copyOf(boxes));
    }

    /** A number that is no input would stay when the others change, and the sheet would tell what is not so. */
    private static void check(Scalar sheet, Set<String> inputs, Problems problems) {
        String text = sheet.text();
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            if (close < 0) {
                problems.add(sheet.problem("\"sheet\" opens a brace and does not close it", "Write the name of an input in braces, such as {current}."));
                return;
            }
            String name = text.substring(open + 1, close);
            if (!inputs.contains(name)) {
                problems.add(sheet.problem("\"sheet\" names \"" + name + "\", which is not in \"given\"", Nearest.remedy(name, inputs)));
            }
            from = close + 1;
        }
        if (text.replaceAll("\\{[^}]*}", "").chars().anyMatch(Character::isDigit)) {
            problems.add(sheet.problem(
                    "\"sheet\" holds a number that would stay when the others change", "Write the name of the input in braces in its place, or leave the number out."));
        }
    }
}
