package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

/** Shares of a rating: 0.8 for hours, 34 A of 40 A in the warm (the next hotter row, 65 °C), 0.95 to keep away from it. Ratings of ISO 8820-3: 5, 7.5, 10 ... 30, 40 A. */
class DeviceChoiceTest {
    private static void is(DeviceChoice device, DeviceKind kind, double rating) {
        assertEquals(kind, device.kind());
        assertEquals(rating, device.rating().base(), 1e-9);
    }

    /** 4 A ÷ (0.8 · 0.85) = 5.882 A; kept cool 4 A ÷ 0.8 = 5 A. */
    @Test
    void aLoadForHoursTakesMoreInTheWarm() {
        DeviceChoice device = new DeviceChoice(4, true, false);
        assertEquals(4 / 0.68, device.leastAmperes(), 1e-9);
        is(device, DeviceKind.BLADE, 7.5);
        assertFalse(device.isCool());
        device.keepCool();
        assertTrue(device.isCool());
        assertEquals(5, device.leastAmperes(), 1e-9);
        is(device, DeviceKind.BLADE, 5);
    }

    /** 4.7 A ÷ 0.85 = 5.529 A; kept cool 4.7 A ÷ 0.95 = 4.947 A, and 4.8 A ÷ 0.95 = 5.053 A. */
    @Test
    void aShortLoadKeepsSomeWayFromTheRating() {
        DeviceChoice device = new DeviceChoice(4.7, false, false);
        assertEquals(4.7 / 0.85, device.leastAmperes(), 1e-9);
        is(device, DeviceKind.BLADE, 7.5);
        device.keepCool();
        is(device, DeviceKind.BLADE, 5);
        DeviceChoice more = new DeviceChoice(4.8, false, false);
        more.keepCool();
        is(more, DeviceKind.BLADE, 7.5);
    }

    @Test
    void aRatingThatIsSettledStays() {
        DeviceChoice device = DeviceChoice.of(Quantity.of(2, Units.AMPERE));
        is(device, DeviceKind.BLADE, 2);
        assertEquals(2, device.leastAmperes(), 1e-9);
    }

    @Test
    void theNextRatingIsAboveTheOther() {
        DeviceChoice device = new DeviceChoice(4, true, false);
        assertTrue(device.goAbove(Quantity.of(5, Units.AMPERE)));
        is(device, DeviceKind.BLADE, 7.5);
        assertTrue(device.goAbove(Quantity.of(7.5, Units.AMPERE)));
        is(device, DeviceKind.BLADE, 10);
        assertTrue(device.goAbove(Quantity.of(1, Units.AMPERE)), "never smaller again");
        is(device, DeviceKind.BLADE, 10);
    }

    /** 31 A ÷ 0.68 = 45.6 A is more than any blade fuse-link here; class T is sold with 50 A, and up to 60 A. */
    @Test
    void whereNoBladeIsLargeEnoughItIsClassT() {
        is(new DeviceChoice(31, true, false), DeviceKind.CLASS_T, 50);
        assertNull(new DeviceChoice(31, true, true).rating(), "a panel takes blades only");
        assertNull(new DeviceChoice(41, true, false).rating(), "41 A ÷ 0.68 = 60.3 A");
        assertFalse(new DeviceChoice(40, true, false).goAbove(Quantity.of(60, Units.AMPERE)));
    }

    /** A rating of 7.5 A is not sold as class T: the next is 10 A. */
    @Test
    void whatBreaksMoreHasRatingsOfItsOwn() {
        DeviceChoice device = new DeviceChoice(4, true, false);
        device.breakMore();
        is(device, DeviceKind.CLASS_T, 6);
        assertTrue(device.goAbove(Quantity.of(6, Units.AMPERE)));
        is(device, DeviceKind.CLASS_T, 10);
    }
}
