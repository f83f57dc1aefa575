package loomwright.circuit.check;

/** What is checked, in the order in which it matters. */
public enum Check {
    OPERATING_POINT("Whether it works at all"),
    UNPROTECTED_LENGTH("Distance from the battery to the first device"),
    AMPACITY("What the conductor may carry"),
    CONDUCTOR_PROTECTED("Device against conductor"),
    GUARDED("Device against what it guards"),
    BREAKING_CAPACITY("Breaking capacity"),
    SHORT_CIRCUIT_HEAT("Heat of a short circuit"),
    TRIGGER("Trigger"),
    SYSTEM_VOLTAGE("Voltage of battery and load"),
    CHARGING("What charges the battery"),
    JOINT_HEAT("Heat of the joints"),
    CONTINUOUS_CURRENT("What switch, panel and battery may carry"),
    DEVICE_LOADING("Load on the device"),
    SWITCH_DUTY("What the switch makes and breaks"),
    SWITCH_HEAT("Heat of the switch"),
    VOLTAGE_DROP("Voltage at the load"),
    START("Start of a motor"),
    SELECTIVITY("Which device opens first"),
    ISOLATOR("Isolating by hand"),
    PORTS("USB ports"),
    STANDING_DRAW("Standing draw"),
    DAY("A day's energy");

    private final String label;

    Check(String label) {
        this.label = label;
    }

    /** Its name on the page. */
    public String label() {
        return label;
    }
}
