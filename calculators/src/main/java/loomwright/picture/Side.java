package loomwright.picture;

/** Where a label stands beside its symbol. */
public enum Side {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT
}
