package loomwright.generator.page;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import loomwright.generator.example.RowUse;
import loomwright.generator.example.Uses;

/** Which places of the site rely on which documents, tables and calculators. Filled while pages are written. */
final class Reliance {
    private final Map<String, Set<Place>> documents = new TreeMap<>();
    private final Map<String, Set<Place>> tables = new TreeMap<>();
    private final Map<String, Set<Place>> calculators = new TreeMap<>();
    private final Map<String, Set<String>> rows = new TreeMap<>();

    void onDocument(String key, Place place) {
        documents.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(place);
    }

    void onTable(String key, Place place) {
        tables.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(place);
    }

    void onCalculator(String key, Place place) {
        calculators.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(place);
    }

    /** Everything a working relies on. */
    void on(Uses uses, Place place) {
        uses.rows().forEach(row -> onRow(row, place));
        uses.documents().forEach(document -> onDocument(document, place));
    }

    void onRow(RowUse use, Place place) {
        rows.computeIfAbsent(use.table(), any -> new LinkedHashSet<>()).add(use.row());
        onTable(use.table(), place);
    }

    Collection<Place> ofDocument(String key) {
        return documents.getOrDefault(key, Set.of());
    }

    Collection<Place> ofTable(String key) {
        return tables.getOrDefault(key, Set.of());
    }

    Collection<Place> ofCalculator(String key) {
        return calculators.getOrDefault(key, Set.of());
    }

    /** The names of the rows that something relies on. */
    Set<String> rows(String table) {
        return rows.getOrDefault(table, Set.of());
    }

    /** All of it, to be compared with that of another run. */
    Object state() {
        Reliance copy = new Reliance();
        copy.add(this);
        return List.of(copy.documents, copy.tables, copy.calculators, copy.rows);
    }

    /** Takes over what another part of the site relies on. */
    void add(Reliance other) {
        other.documents.forEach((key, places) -> places.forEach(place -> onDocument(key, place)));
        other.tables.forEach((key, places) -> places.forEach(place -> onTable(key, place)));
        other.calculators.forEach((key, places) -> places.forEach(place -> onCalculator(key, place)));
        other.rows.forEach((table, names) -> rows.computeIfAbsent(table, any -> new LinkedHashSet<>()).addAll(names));
    }
}
