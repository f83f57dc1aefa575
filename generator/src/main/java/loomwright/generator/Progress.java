package loomwright.generator;

import java.io.PrintStream;
import loomwright.generator.build.Output;

/** Says how far long work has come, on one line that goes away at the end. Silent for a while, and always if no person is looking on. */
final class Progress implements AutoCloseable {
    private static final long FIRST_AFTER = 2_000_000_000L;
    private static final long AGAIN_AFTER = 500_000_000L;

    private final PrintStream out;
    private final String what;
    private final boolean watched;
    private long next = System.nanoTime() + FIRST_AFTER;
    private int count;
    private int widest;

    Progress(PrintStream out, String what, boolean watched) {
        this.out = out;
        this.what = what;
        this.watched = watched;
    }

    /** On the stream for messages, if it leads to a terminal. */
    static Progress of(String what) {
        return new Progress(System.err, what, isWatched(System.console()));
    }

    /** Later Javas give a console even where nobody sits at it, and one has to ask it. */
    static boolean isWatched(Object console) {
        try {
            return console != null && (boolean) console.getClass().getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException earlier) {
            return true;
        } catch (ReflectiveOperationException | RuntimeException unknown) {
            return false;
        }
    }

    /** Counts the pages on their way to {@code output}. */
    Output counting(Output output) {
        return (address, bytes) -> {
            output.put(address, bytes);
            if (address.endsWith(".html")) {
                count++;
                say(count + " " + what + " ...");
            }
        };
    }

    /** Says something, if it is time. */
    void say(String words) {
        long now = System.nanoTime();
        if (watched && now >= next) {
            next = now + AGAIN_AFTER;
            widest = Math.max(widest, words.length());
            out.print("\r" + words);
            out.flush();
        }
    }

    @Override
    public void close() {
        if (widest > 0) {
            out.print("\r" + " ".repeat(widest) + "\r");
            out.flush();
        }
    }
}
