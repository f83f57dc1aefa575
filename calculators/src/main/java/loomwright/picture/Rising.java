package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Numbers in rising order, each once. A sorted set of the library would cost the page's program more than the few numbers of an axis are worth. */
final class Rising {
    private final List<Double> numbers = new ArrayList<>();

    void add(double number) {
        int at = numbers.size();
        while (at > 0 && numbers.get(at - 1) > number) {
            at--;
        }
        if (at == 0 || numbers.get(at - 1) != number) {
            numbers.add(at, number);
        }
    }

    List<Double> list() {
        return numbers;
    }
}
