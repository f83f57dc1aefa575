package loomwright.circuit.file;

/** Thrown where a text is no JSON that we take; never leaves the package. */
final class JsonFault extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient FileFault fault;

    JsonFault(FileFault fault) {
        super(fault.message());
        this.fault = fault;
    }

    FileFault fault() {
        return fault;
    }
}
