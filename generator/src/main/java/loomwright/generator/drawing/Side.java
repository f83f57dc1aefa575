package loomwright.generator.drawing;

/** Where a label stands beside its symbol. */
public enum Side {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT
}
