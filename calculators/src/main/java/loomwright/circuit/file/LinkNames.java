package loomwright.circuit.file;

/** How a link names kinds and fields. */
interface LinkNames {
    /** As files do. */
    LinkNames BY_KEY = new LinkNames() {
        @Override
        public String kind(String cell) {
            return cell;
        }

        @Override
        public String field(String kind, String cell) {
            return cell;
        }
    };

    /** The key of a kind of part, or of the panel; null if there is none of that name. */
    String kind(String cell);

    /** The key of a field of a kind; null if there is none of that name. */
    String field(String kind, String cell);
}
