package loomwright.markup;

import java.util.HashMap;
import java.util.Map;

/** Links to a calculator whose fields had other keys in an earlier version: they still open, with the same meaning. */
public final class FormerEntries {
    private static final String AMBIENT = "ambient";
    private static final String FUSE_AMBIENT = "fuse-ambient";
    private static final String RULE_SET = "rule-set";
    private static final String FUSE_RULE = "fuse-rule";

    private FormerEntries() {}

    /**
     * The entries under the keys of today.
     *
     * <p>In the choice of a fuse-link {@code ambient} was the temperature around the fuse-link, and links that named it named the kind of the
     * fuse-link too; today it is that around the conductor. There and at the panel {@code rule-set} was the rule for the highest rating.
     */
    public static Map<String, String> now(String calculator, Map<String, String> entries) {
        Map<String, String> now = new HashMap<>(entries);
        boolean fuse = calculator.equals("fuse-choice");
        boolean former = fuse && entries.containsKey(AMBIENT) && entries.containsKey("fuse-type") && !entries.containsKey(FUSE_AMBIENT);
        if (former) {
            now.put(FUSE_AMBIENT, now.remove(AMBIENT));
        }
        boolean rule = calculator.equals("panel-headroom") || former || fuse && "conductor-ampacity".equals(entries.get(RULE_SET));
        if (rule && entries.containsKey(RULE_SET)) {
            now.put(FUSE_RULE, now.remove(RULE_SET));
        }
        return now;
    }
}
