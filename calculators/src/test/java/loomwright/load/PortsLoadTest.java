package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

/** USB ports as a circuit sees them: 60 W of ports, 80 % of efficiency. */
class PortsLoadTest {
    private static PortsLoad ports(Double limit) {
        return PortsLoad.of(Quantity.of(60, Units.WATT), limit == null ? null : Quantity.of(limit, Units.WATT), Quantity.of(80, Units.PERCENT));
    }

    /** 60 W ÷ 0.8 = 75 W; limited to 48 W: 60 W. At 10.5 V 75 W are 7.143 A, 60 W 5.714 A. */
    @Test
    void theyGiveNoMoreThanTheirSharedLimit() {
        assertEquals(75, ports(null).input().base(), 1e-9);
        assertEquals(75, ports(60.0).input().base(), 1e-9);
        assertEquals(75, ports(80.0).input().base(), 1e-9);
        assertEquals(60, ports(48.0).input().base(), 1e-9);
        assertEquals(7.143, ports(null).current(Quantity.of(10.5, Units.VOLT)).base(), 0.0005);
        assertEquals(5.714, ports(48.0).current(Quantity.of(10.5, Units.VOLT)).base(), 0.0005);
        assertNull(ports(null).shared("the ports"));
    }
}
