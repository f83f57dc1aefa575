package loomwright.circuit;

/** Fields that had another key in earlier files and links, which still open. */
public final class FormerKeys {
    private FormerKeys() {}

    /** The key that a field has now. */
    public static String now(PartKind kind, String key) {
        if (kind == PartKind.SUPPLY && key.equals("solar-power")) {
            return "panel-power";
        }
        if (kind == PartKind.PROTECTION && key.equals("device-voltage")) {
            return "rated-voltage";
        }
        return key;
    }
}
