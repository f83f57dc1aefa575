package loomwright.handout;

import java.util.List;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.shape.Golden;
import org.junit.jupiter.api.Test;

/** How sheets, key and register are written, with every figure masked. */
class HandoutShapeTest {
    @Test
    void isAsAgreed() {
        Handout handout = new Handout(Selection.ofLessons(SomeQuestions.LESSONS, List.of(1, 2), Selection.ALL), 7);
        List<Sheet> sheets = handout.sheets(9);
        StringBuilder text = new StringBuilder(RegisterMarkup.of(handout, sheets, 7, "The club"));
        text.append(KeyMarkup.glance(sheets, "The club")).append(SheetMarkup.of(sheets.get(1), "The club"));
        text.append(KeyMarkup.of(sheets.get(1), "The club", new Links("../"))).append(TaskMarkup.head(sheets.get(2)));
        text.append(TaskMarkup.marked(new Place("task", new Links("../"), List.of()), sheets.get(2).tasks().get(0), 1));
        Golden.assertIs("handout.txt", Golden.maskedMarkup(text.toString()));
    }
}
