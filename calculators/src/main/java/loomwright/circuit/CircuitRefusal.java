package loomwright.circuit;

/** Thrown where parts make no circuit: names the part, what is wrong and what to do. */
public final class CircuitRefusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient PartFault fault;

    public CircuitRefusal(String partId, String message) {
        this(new PartFault(partId, "", message));
    }

    CircuitRefusal(PartFault fault) {
        super(fault.message());
        this.fault = fault;
    }

    public PartFault fault() {
        return fault;
    }
}
