package loomwright.circuit;

import java.util.List;

/**
 * What came of reading a part: the part, or the faults that stand in its way.
 *
 * @param part the part, or null if there are faults
 * @param faults the faults; empty if there is a part
 */
public record PartRead(Part part, List<PartFault> faults) {
    /**
     * The part.
     *
     * @throws CircuitRefusal with the first fault if there is none
     */
    public Part partOrRefuse() {
        if (part == null) {
            throw new CircuitRefusal(faults.get(0));
        }
        return part;
    }
}
