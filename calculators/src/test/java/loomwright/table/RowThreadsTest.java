package loomwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import loomwright.source.Document;
import loomwright.source.Standing;
import org.junit.jupiter.api.Test;

/** Pages are written side by side, so one row may be asked by two threads before it has its figures. */
class RowThreadsTest {
    private static final int TABLES = 20;
    private static final int ROWS = 1500;
    private static final Document BOOK = new Document("book", "", "The Book", "", Standing.PUBLISHED, "", "");

    @Test
    void aFreshRowAnswersBothThreadsThatAskFirst() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            for (int i = 0; i < TABLES; i++) {
                Table fresh = table();
                AtomicInteger arrived = new AtomicInteger();
                Callable<Double> asking = () -> {
                    try {
                        return sum(fresh, arrived);
                    } finally {
                        arrived.set(Integer.MAX_VALUE / 2);
                    }
                };
                for (Future<Double> sum : threads.invokeAll(List.of(asking, asking))) {
                    assertEquals(ROWS * (ROWS + 1) / 2.0, sum.get());
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** The threads wait for each other before each row, so that both ask it at once. */
    private static double sum(Table table, AtomicInteger arrived) {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            arrived.incrementAndGet();
            for (int spin = 0; arrived.get() < 2 * (i + 1); spin++) {
                if (spin > 1000) {
                    Thread.yield();
                }
            }
            Row row = table.rows().get(i);
            sum += row.quantity("current").value();
            assertEquals("The Book", row.source().document().title());
        }
        return sum;
    }

    private static Table table() {
        StringBuilder text = new StringBuilder("# title: Demo\n# source: book\nname,current (A)\n");
        for (int i = 1; i <= ROWS; i++) {
            text.append("row-").append(i).append(',').append(i).append('\n');
        }
        return TableReader.read("demo", text.toString(), List.of(BOOK));
    }
}
