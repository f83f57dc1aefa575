package loomwright.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Parts in the order a reader follows them: down each branch to its end, then the next. */
final class TreeOrder {
    private TreeOrder() {}

    /** The same parts in that order; branches of one part keep their order. */
    static List<Part> of(List<Part> parts) {
        Map<String, List<Part>> fed = new HashMap<>();
        for (Part part : parts) {
            List<Part> siblings = fed.get(part.fedBy());
            if (siblings == null) {
                siblings = new ArrayList<>();
                fed.put(part.fedBy(), siblings);
            }
            siblings.add(part);
        }
        List<Part> ordered = new ArrayList<>();
        List<Part> waiting = new ArrayList<>(fed.get(""));
        while (!waiting.isEmpty()) {
            Part part = waiting.remove(waiting.size() - 1);
            ordered.add(part);
            List<Part> behind = fed.get(part.id());
            for (int i = behind == null ? -1 : behind.size() - 1; i >= 0; i--) {
                waiting.add(behind.get(i));
            }
        }
        return ordered;
    }
}
