package loomwright.generator.problem;

/** What was asked for cannot be done; the message says why and what to do. */
public final class UserMistake extends RuntimeException {
    private static final long serialVersionUID = 1;

    public UserMistake(String message) {
        super(message);
    }

    /** Refuses with {@code message} unless something holds. */
    public static void unless(boolean holds, String message) {
        if (!holds) {
            throw new UserMistake(message);
        }
    }
}
