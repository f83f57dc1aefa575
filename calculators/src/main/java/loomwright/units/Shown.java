package loomwright.units;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.worked.Result;
import loomwright.worked.Working;

/** A working with its results in the units of a reader. Steps and checks stay as they were worked out. */
public final class Shown {
    private Shown() {}

    /** The same working if its results are in these units already. A chosen size stays what it is sold as. */
    public static Working in(UnitSystem system, Working working) {
        List<Result> results = new ArrayList<>();
        boolean same = true;
        for (Result result : working.results()) {
            Quantity quantity = result.quantity();
            boolean size = quantity.dimension().equals(Dimension.AREA);
            Quantity shown = size ? quantity : quantity.in(system.inPlaceOf(quantity.unit()));
            same &= shown == quantity;
            results.add(new Result(result.output(), shown));
        }
        return same ? working : new Working(
                working.description(), working.entries(), working.steps(), List.copyOf(results), working.findings(), working.slips(),
                working.nextQuestions());
    }
}
