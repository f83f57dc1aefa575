package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

/** What is typed from the data sheet of one device, and what it says of another of its kind. */
class ProtectionTest {
    private static final String[] CURVE = {"opening-current=50 A", "opening-time=0.1 s", "holding-current=15 A", "holding-time=2 s"};

    @Test
    void holdsUpToThePointOfItsCurve() {
        Protection device = device(CURVE);
        assertTrue(device.holds(amperes(15), seconds(2)));
        assertTrue(device.holds(amperes(14), seconds(1)));
        assertFalse(device.holds(amperes(15.1), seconds(2)));
        assertFalse(device.holds(amperes(15), seconds(2.1)));
        assertFalse(device().holds(amperes(0.1), seconds(0.1)), "nothing is known of its curve");
    }

    @Test
    void hasOpenedFromThePointOfItsCurveOn() {
        Protection device = device(CURVE);
        assertEquals(0.1, device.openedBy(amperes(50)).base(), 1e-12);
        assertEquals(0.1, device.openedBy(amperes(60)).base(), 1e-12);
        assertNull(device.openedBy(amperes(49.9)));
        assertNull(device().openedBy(amperes(1000)));
    }

    @Test
    void takesWhatTheSheetOfAnotherSaysAndKeepsItsOwn() {
        Protection filled = device("clearing-i2t=80 A²s").filledFrom(device(CURVE));
        assertEquals("80 A²s", plain(filled.clearingIntegral()));
        assertTrue(filled.holds(amperes(15), seconds(2)));
        assertEquals(0.1, filled.openedBy(amperes(50)).base(), 1e-12);
        Protection both = device("clearing-i2t=80 A²s", "holder-rating=20 A").filledFrom(device("clearing-i2t=90 A²s", "holder-rating=30 A"));
        assertEquals("80 A²s", plain(both.clearingIntegral()));
        assertEquals("20 A", plain(both.holderRating()));
        assertEquals("30 A", plain(device().filledFrom(device("holder-rating=30 A")).holderRating()));
        assertEquals("90 A²s", plain(device().filledFrom(device("clearing-i2t=90 A²s")).clearingIntegral()));
    }

    @Test
    void aPointOfACurveIsNotMixedWithAnother() {
        Protection own = device("opening-current=40 A", "opening-time=0.2 s", "holding-current=12 A", "holding-time=3 s").filledFrom(device(CURVE));
        assertEquals(0.2, own.openedBy(amperes(40)).base(), 1e-12);
        assertTrue(own.holds(amperes(12), seconds(3)));
        assertFalse(own.holds(amperes(15), seconds(2)));
    }

    @Test
    void takesWhatAnotherBreaksIfItsSheetSaysSo() {
        Protection typed = device("breaking-capacity=2000 A", "rated-voltage=58 V");
        Protection filled = device().filledFrom(typed);
        assertEquals("2000 A", plain(filled.breakingCapacity()));
        assertEquals("58 V", plain(filled.voltage()));
        Protection own = device("breaking-capacity=1500 A", "rated-voltage=32 V").filledFrom(typed);
        assertEquals("1500 A", plain(own.breakingCapacity()));
    }

    @Test
    void takesNothingOfAnotherKindOrRating() {
        Protection device = device();
        assertSame(device, device.filledFrom(device("rating=15 A", "clearing-i2t=80 A²s")));
        assertSame(device, device.filledFrom(device("device=class-t", "clearing-i2t=80 A²s")));
    }

    @Test
    void aGuessAndASheetAreNotMixed() {
        Protection sheet = device("clearing-i2t=80 A²s");
        Protection guess = device("clearing-i2t=60 A²s", "from=guess");
        assertSame(sheet, sheet.filledFrom(guess));
        assertSame(sheet, guess.filledFrom(sheet), "a sheet counts before a guess");
        Protection silent = device();
        assertSame(guess, guess.filledFrom(silent), "a sheet that says nothing does not");
        for (String said : List.of("opening-current=50 A;opening-time=0.1 s", "holding-current=15 A;holding-time=2 s", "breaking-capacity=2000 A;rated-voltage=58 V")) {
            Protection says = device(said.split(";"));
            assertSame(says, guess.filledFrom(says), said);
        }
        Protection two = guess.filledFrom(device("holder-rating=30 A", "from=guess"));
        assertEquals("30 A", plain(two.holderRating()), "guesses go together");
    }

    /** A blade fuse-link of 10 A, unless the entries say otherwise. */
    private static Protection device(String... entries) {
        List<String> all = new ArrayList<>(Arrays.asList(entries));
        for (String usual : List.of("device=blade", "rating=10 A")) {
            if (all.stream().noneMatch(each -> each.startsWith(usual.substring(0, usual.indexOf('=') + 1)))) {
                all.add(usual);
            }
        }
        return (Protection) new Circuit("", List.of(
                        Part.of("battery", PartKind.SUPPLY, "", "", "chemistry=lifepo4", "capacity=100 Ah"),
                        Part.of("device", PartKind.PROTECTION, "", "battery", all.toArray(String[]::new))))
                .node("device").figures();
    }

    private static String plain(Quantity quantity) {
        return quantity.text().replace('\u00a0', ' ');
    }

    private static Quantity amperes(double value) {
        return Quantity.of(value, Units.AMPERE);
    }

    private static Quantity seconds(double value) {
        return Quantity.of(value, Units.SECOND);
    }
}
