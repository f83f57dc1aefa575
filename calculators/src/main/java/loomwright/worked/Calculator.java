package loomwright.worked;

/** A calculation of the job. Implementations hold no state. */
public interface Calculator {
    Description description();

    /**
     * Works the answer out, writing each step into {@code working}.
     *
     * @param entries what was entered; every field that must be filled is, and every quantity lies within its limits
     * @throws Refusal if these entries have no answer; names the field and the remedy
     */
    void work(Entries entries, WorkingBuilder working);
}
