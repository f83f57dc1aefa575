package loomwright.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {
    @ParameterizedTest
    @CsvSource({
        "Ohm's law,ohms-law",
        "Out and back,out-and-back",
        "'\"12 V\" is a name, not a reading',12-v-is-a-name-not-a-reading",
        "  USB Power Delivery  ,usb-power-delivery",
        "Größe (Ω),größe-ω",
        "???,''"
    })
    void makesAnAnchorOfAHeading(String heading, String anchor) {
        assertEquals(anchor, Slug.of(heading));
    }
}
