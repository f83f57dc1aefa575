package loomwright.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Insulation;
import loomwright.conductor.RunSize;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The conductor of a run: the thinnest that is sold, is allowed, carries its device, and loses little enough. */
final class RunChoice {
    private final String name;
    private final Quantity route;
    private final Situated place;
    private final int together;
    private final ConductorKind kind;
    private final Cables cables;
    private final List<RunSize> sizes;
    private Insulation insulation;
    private int at;

    RunChoice(String name, Quantity route, Situated place, int together, boolean sheathed, Cables cables) {
        this(name, route, place, together, cables.kind(), cables.sold(sheathed, place.warmth()), cables);
    }

    private RunChoice(String name, Quantity route, Situated place, int together, ConductorKind kind, List<RunSize> sizes, Cables cables) {
        this.name = name;
        this.route = route;
        this.place = place;
        this.together = together;
        this.kind = kind;
        this.cables = cables;
        this.insulation = place.insulation();
        this.sizes = sizes;
    }

    /** A run that is there already, of one size only; null if no table has that size. */
    static RunChoice existing(String name, Quantity route, Quantity size, Cables cables) {
        ConductorKind kind = Cables.kind(size.unit() == Units.AWG);
        for (RunSize each : RunSize.series(kind, Plain.quantity(Situated.INSIDE.warmth()))) {
            if (Math.abs(each.size().base() - size.base()) <= 1e-6 * size.base()) {
                return new RunChoice(name, route, Situated.INSIDE, 2, kind, List.of(each), cables);
            }
        }
        return null;
    }

    String name() {
        return name;
    }

    Quantity route() {
        return route;
    }

    Situated place() {
        return place;
    }

    Insulation insulation() {
        return insulation;
    }

    ConductorKind kind() {
        return kind;
    }

    Quantity size() {
        return sizes.get(at).size();
    }

    Quantity thickest() {
        return sizes.get(sizes.size() - 1).size();
    }

    /** Goes up to the thinnest that carries a device, with better insulation if no size does with what is there; false if none does at all. */
    boolean carry(Quantity rating) {
        for (Insulation each : sizes.size() == 1 ? List.of(insulation) : List.of(insulation, Insulation.T105)) {
            for (int i = at; i < sizes.size(); i++) {
                CarryingCapacity capacity = capacity(i, each);
                if (capacity.isRated() && capacity.value().base() >= rating.base() * (1 - 1e-9)) {
                    at = i;
                    insulation = each;
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Goes up to the thinnest that loses no more than so many volts; to the thickest if none does.
     *
     * @param loop the way to a switch and back, which is of the same size and loses too; null if there is none
     * @return false, and nothing is changed, if the way to the switch would be thicker than the tabs of a switch take
     */
    boolean lose(double amperes, double volts, RunChoice loop) {
        int before = at;
        follow(this, loop);
        while (!isThickest() && amperes * (ohms() + (loop == null ? 0 : loop.ohms())) > volts * (1 + 1e-9)) {
            at++;
            follow(this, loop);
        }
        boolean fits = loop == null || Cables.fitsTabs(loop.size());
        at = fits ? at : before;
        return fits;
    }

    private static void follow(RunChoice run, RunChoice loop) {
        if (loop != null) {
            loop.follow(run);
        }
    }

    /** Its resistance out and back, as warm as it works, in Ω. */
    double ohms() {
        return 2 * route.base() * sizes.get(at).perMetre().base();
    }

    boolean isThickest() {
        return at == sizes.size() - 1;
    }

    /** Takes the next size; false if it is the last. */
    boolean thicken() {
        if (isThickest()) {
            return false;
        }
        at++;
        return true;
    }

    /** At least as thick as another, with the same insulation. */
    void follow(RunChoice other) {
        insulation = other.insulation;
        while (!isThickest() && sizes.get(at).size().base() < other.size().base() * (1 - 1e-9)) {
            at++;
        }
    }

    CarryingCapacity capacity() {
        return capacity(at, insulation);
    }

    private CarryingCapacity capacity(int size, Insulation taken) {
        return cables.capacity(part("run", "", size, taken));
    }

    /** It as a part of a circuit. */
    Part part(String id, String fedBy) {
        return part(id, fedBy, at, insulation);
    }

    private Part part(String id, String fedBy, int size, Insulation taken) {
        String key = name + " " + id + " " + fedBy + " " + sizes.get(size).name() + taken.key();
        Part known = cables.known(key);
        return known != null ? known : cables.keep(key, Part.read(id, PartKind.CONDUCTOR, name, fedBy, "", "", texts(size, taken)).partOrRefuse());
    }

    /** What is entered for it, by the keys of a conductor run. */
    Map<String, String> texts() {
        return texts(at, insulation);
    }

    private Map<String, String> texts(int size, Insulation taken) {
        Map<String, String> texts = new HashMap<>();
        texts.put("conductor", kind.key());
        texts.put("size", Plain.text(sizes.get(size).size()));
        texts.put("route-length", Plain.text(route));
        texts.put("temperature", place.warmth());
        texts.put("insulation-temperature", taken.key());
        texts.put("engine-space", place.isEngineSpace() ? "yes" : "no");
        texts.put("ambient", place.warmth());
        texts.put("conductors-together", Integer.toString(together));
        return texts;
    }
}
