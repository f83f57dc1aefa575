package loomwright.quantity;

/** How numbers of one unit become numbers of the base unit and back. */
interface Scale {
    double toBase(double value);

    double fromBase(double base);
}
