package loomwright.worked;

import java.util.List;

/**
 * What came of reading the texts of some fields, for parts that are no calculators.
 *
 * @param entries what was entered; of use only if there are no faults
 * @param faults why some texts cannot be used
 */
public record EntriesRead(Entries entries, List<EntryFault> faults) {

    /**
     * Reads and checks texts.
     *
     * @param fields the fields
     * @param texts what was typed into each, in the order of the fields; empty for nothing
     */
    public static EntriesRead of(List<Field> fields, List<String> texts) {
        EntryReader reader = new EntryReader();
        for (int i = 0; i < fields.size(); i++) {
            reader.read(fields.get(i), texts.get(i));
        }
        return new EntriesRead(reader.entries(), List.copyOf(reader.faults()));
    }
}
