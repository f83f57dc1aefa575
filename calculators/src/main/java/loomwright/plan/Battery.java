package loomwright.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.quantity.Quantity;
import loomwright.worked.Entries;

/**
 * The battery as answered. What was left open is taken as what makes it hardest: lead-acid for what may be taken out, LiFePO4 for what a short
 * circuit drives.
 *
 * @param texts what is entered for it as a part of a circuit
 * @param isKnown whether its kind and size, or its short-circuit current, were said
 */
record Battery(Map<String, String> texts, boolean isKnown) {
    static Battery of(Entries job, List<Taken> taken) {
        Map<String, String> texts = new HashMap<>();
        boolean kindKnown = !job.choice("chemistry").equals(PlanFields.NOT_KNOWN);
        boolean lead = job.choice("chemistry").equals("lead-acid");
        texts.put("chemistry", job.choice("chemistry").equals("lifepo4") ? "lifepo4" : "lead-acid");
        texts.put("battery", lead ? "lead-acid-100-ah" : "lifepo4-100-ah");
        if (!kindKnown) {
            taken.add(new Taken(
                    Answers.JOB, "chemistry", "Nobody said which battery: half of its capacity is planned with, as of lead-acid, and the short-circuit current of "
                            + "LiFePO4, which is the larger.", "from memory"));
        }
        Quantity capacity = job.quantity("capacity");
        if (capacity == null) {
            taken.add(new Taken(
                    Answers.JOB, "capacity", "Nobody said how large the battery is: " + Careful.capacity().text() + " stands in the drawing, and every device is of the kind that "
                            + "breaks most.", "invented"));
        }
        texts.put("capacity", Plain.text(capacity == null ? Careful.capacity() : capacity));
        if (job.has("short-circuit-current")) {
            texts.put("battery", "short-circuit-current");
            texts.put("short-circuit-current", Plain.text(job.quantity("short-circuit-current")));
        }
        put(job, "battery-limit", texts);
        put(job, "panel-power", texts);
        put(job, "days-wanted", texts);
        if (job.has("panel-power")) {
            boolean said = job.has("peak-sun-hours");
            texts.put("peak-sun-hours", Plain.text(said ? job.quantity("peak-sun-hours") : Careful.sunHours()));
            if (!said) {
                taken.add(new Taken(Answers.JOB, "peak-sun-hours", "Nobody said how much sun there is: " + Careful.sunHours().text() + " a day are taken.", "invented"));
            }
        }
        return new Battery(texts, job.has("short-circuit-current") || kindKnown && capacity != null);
    }

    private static void put(Entries job, String key, Map<String, String> texts) {
        if (job.has(key)) {
            texts.put(key, Plain.text(job.quantity(key)));
        }
    }

    Part part() {
        return Part.read("battery", PartKind.SUPPLY, "Battery", "", "", "", texts).partOrRefuse();
    }
}
