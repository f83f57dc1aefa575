package loomwright.worked;

/** Thrown by a calculator that cannot answer: names the field, what is wrong and what to do. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient EntryFault fault;

    public Refusal(String fieldKey, String message) {
        super(message);
        this.fault = new EntryFault(fieldKey, message);
    }

    public EntryFault fault() {
        return fault;
    }
}
