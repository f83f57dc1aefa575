package loomwright.circuit.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loomwright.circuit.Circuit;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** Every kind of mistake, planted at every place of every right circuit, is named at its part. Writes {@code target/hazards.csv}. */
class PlantedHazardsTest {
    @Test
    void everyPlantedMistakeIsNamedAtItsPart() throws IOException {
        Map<String, Integer> missed = new LinkedHashMap<>();
        StringBuilder csv = new StringBuilder("kind,words,planted,caught\n");
        System.out.printf("%-28s %8s %7s %7s%n", "kind", "planted", "caught", "missed");
        long plantedInAll = 0;
        long missedInAll = 0;
        for (Hazard hazard : Hazards.ALL) {
            long planted = Tally.planted(hazard);
            List<Tally.Outcome> left = Tally.missed(hazard);
            missed.put(hazard.key(), left.size());
            plantedInAll += planted;
            missedInAll += left.size();
            System.out.println(String.format(
                    Locale.ROOT, "%-28s %8d %7d %7d%s", hazard.key(), planted, planted - left.size(), left.size(),
                    hazard.isExpressible() ? places(left) : "  not expressible yet: " + hazard.needs()));
            csv.append(String.format(
                    Locale.ROOT, "%s,\"%s\",%d,%d%n", hazard.key(), hazard.words().replace("\"", "\"\""), planted, planted - left.size()));
        }
        System.out.println("in all: planted " + plantedInAll + ", caught " + (plantedInAll - missedInAll) + ", missed " + missedInAll);
        Files.writeString(Path.of("target", "hazards.csv"), csv, StandardCharsets.UTF_8);
        Expected.hold("MISSED", Expected.MISSED, missed);
    }

    @Test
    void everyKindCanBePlantedSomewhere() {
        for (Hazard hazard : Hazards.ALL) {
            assertTrue(hazard.isExpressible() ? Tally.planted(hazard) > 0 : !Expected.ALL_EXPRESSIBLE, hazard.key() + " " + hazard.needs());
        }
    }

    @Test
    void whatWasNotPlantedIsNotCaught() {
        for (String name : RightCircuits.NAMES) {
            Circuit right = RightCircuits.of(name);
            Plot.Planted nothing = new Plot.Planted("", right, Bench.ids(right));
            assertFalse(Tally.isCaught(Tally.counted(Bench.findings(right)), nothing, Verdict.CAUTION), name);
        }
    }

    @Test
    void thereAreManyKindsEachWithAKeyAndWordsOfItsOwn() {
        assertTrue(Hazards.ALL.size() >= 36, "kinds: " + Hazards.ALL.size());
        assertEquals(Hazards.ALL.size(), Hazards.ALL.stream().map(Hazard::key).distinct().count());
        assertEquals(Hazards.ALL.size(), Hazards.ALL.stream().map(Hazard::words).distinct().count());
    }

    private static String places(List<Tally.Outcome> outcomes) {
        return outcomes.isEmpty()
                ? ""
                : outcomes.stream()
                        .map(outcome -> outcome.circuitName() + ":" + outcome.planted().place())
                        .limit(6)
                        .collect(Collectors.joining(", ", "  at ", outcomes.size() > 6 ? " ..." : ""));
    }
}
