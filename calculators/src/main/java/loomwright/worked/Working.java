package loomwright.worked;

import java.util.List;

/** A finished working. */
public record Working(
        Description description,
        Entries entries,
        List<Step> steps,
        List<Result> results,
        List<Finding> findings,
        List<Slip> slips,
        List<NextQuestion> nextQuestions) {

    /** The result of that key, or null. */
    public Result result(String key) {
        for (Result result : results) {
            if (result.output().key().equals(key)) {
                return result;
            }
        }
        return null;
    }

    /** The result of that key, or the one that stands in its place; null if there is neither. */
    public Result answer(String key) {
        Result own = result(key);
        for (Result result : results) {
            own = own == null && result.output().insteadOf().equals(key) ? result : own;
        }
        return own;
    }
}
