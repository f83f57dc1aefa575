package loomwright.circuit.sheet;

import loomwright.proving.Readings;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * What a meter may be wrong by.
 *
 * @param accuracy a share of the reading
 * @param digits a fixed part
 */
public record Meter(Quantity accuracy, Quantity digits) {
    /** 0.5 % and two digits of 10 mV, as usual. */
    public static final Meter USUAL = new Meter(Quantity.of(0.5, Units.PERCENT), Quantity.of(0.02, Units.VOLT));

    /** What it may be wrong by at a reading. */
    public Quantity uncertainty(Quantity reading) {
        return Readings.uncertainty(reading, accuracy, digits);
    }
}
