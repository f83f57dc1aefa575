package loomwright.circuit;

/**
 * A part with its figures worked out.
 *
 * @param figures its record: {@link Supply}, {@link Conductor}, {@link Load} and so on
 * @param ohms its resistance, out and back, as it works
 * @param leastOhms the least resistance to be reckoned with in a short circuit: joints, contacts and switches perfect, copper cold
 * @param triggerOhms the resistance of its trigger wire, out and back
 */
record Understood(Record figures, double ohms, double leastOhms, double triggerOhms) {
    static Understood of(Part part) {
        return switch (part.kind()) {
            case SUPPLY -> of(Supply.of(part), 0, 0);
            case PANEL -> of(Panel.of(part), 0, 0);
            case LOAD -> of(Load.of(part), 0, 0);
            case PROTECTION -> {
                Protection protection = Protection.of(part);
                double cold = protection.coldResistance().base();
                yield of(protection, cold, cold);
            }
            case ISOLATOR -> {
                Isolator isolator = Isolator.of(part);
                yield of(isolator, isolator.resistance().base(), 0);
            }
            case JOINT -> {
                Joint joint = Joint.of(part);
                yield of(joint, joint.resistance().base(), 0);
            }
            case CONDUCTOR -> {
                Conductor conductor = Conductor.of(part);
                yield of(conductor, conductor.resistance().base(), conductor.leastResistance().base());
            }
            case SWITCH -> {
                Switching switching = Switching.of(part);
                double trigger = switching.isTriggered() ? switching.triggerResistance().base() : 0;
                yield new Understood(switching, switching.resistance().base(), 0, trigger);
            }
        };
    }

    private static Understood of(Record figures, double ohms, double leastOhms) {
        return new Understood(figures, ohms, leastOhms, 0);
    }

    /** Not by its figures: printing a number the library's way costs the page more than all of this. */
    @Override
    public String toString() {
        return figures.toString();
    }
}
