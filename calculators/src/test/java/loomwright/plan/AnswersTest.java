package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be used is said with the question it belongs to. */
class AnswersTest {
    private static List<String> faults(Asked asked) {
        return asked.read().faults().stream().map(each -> each.item() + " " + each.fieldKey()).toList();
    }

    @Test
    void eachFaultNamesItsThingAndItsQuestion() {
        assertEquals(List.of(), faults(Asked.job().item("kind=radio")));
        assertEquals(List.of("-1 capacity"), faults(Asked.job("capacity=much").item("kind=radio")));
        assertEquals(List.of("1 route"), faults(Asked.job().item("kind=radio").item("kind=fan", "route=far")));
        assertEquals(List.of("-1 capacity", "0 draws", "1 route"), faults(Asked.job("capacity=much").item("kind=radio", "draws=lots").item("kind=fan", "route=far")));
        assertNull(Asked.job("capacity=much").item("kind=radio").read().answers());
    }

    @Test
    void aJobHasAtLeastOneThingAndAtMostTwelveLines() {
        assertEquals(List.of("-1 kind"), faults(Asked.job()));
        Asked twelve = Asked.job();
        for (int i = 0; i < 12; i++) {
            twelve.item("kind=radio");
        }
        assertEquals(List.of(), faults(twelve));
        assertEquals(List.of("-1 kind"), faults(twelve.item("kind=radio")));
    }

    /** At a USB port 3 A are 3 A at 5 V or more, never those in the cable. */
    @Test
    void amperesOfAUsbPortAreNotTaken() {
        assertEquals(List.of("0 draws"), faults(Asked.job().item("kind=usb", "draws=3 A")));
        assertTrue(Asked.job().item("kind=usb", "draws=3 A").read().faults().get(0).message().contains("enter the watts"));
        assertEquals(List.of(), faults(Asked.job().item("kind=usb", "draws=36 W")));
        assertEquals(List.of(), faults(Asked.job().item("kind=outlet", "draws=3 A")));
    }
}
