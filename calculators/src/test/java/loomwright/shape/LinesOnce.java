package loomwright.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lists of lines, with each line written once and named by its number from then on. */
public final class LinesOnce {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final StringBuilder lists = new StringBuilder();

    public void add(String name, List<String> lines) {
        lists.append("> ").append(name).append(" >");
        for (String line : lines) {
            numbers.putIfAbsent(line, numbers.size());
            lists.append(' ').append(numbers.get(line));
        }
        lists.append('\n');
    }

    public boolean hasAll(List<String> lines) {
        return numbers.keySet().containsAll(lines);
    }

    public String text() {
        StringBuilder text = new StringBuilder("# Lines, then lists of the numbers of lines. Figures are masked.\n");
        numbers.forEach((line, number) -> text.append(number).append(' ').append(line).append('\n'));
        return text.append(lists).toString();
    }
}
