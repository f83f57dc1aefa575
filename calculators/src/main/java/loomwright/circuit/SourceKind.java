package loomwright.circuit;

import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;

/** The kinds of source that charge the battery. */
public enum SourceKind implements Choice {
    SOLAR_CONTROLLER("solar-controller", "Solar controller", true),
    MAINS_CHARGER("mains-charger", "Charger on mains", true),
    DC_DC_CHARGER("dc-dc-charger", "D.c.-d.c. charger on the vehicle", true),
    TOWING_SOCKET("towing-socket", "Contact of a towing socket", false),
    SECOND_BATTERY("second-battery", "A second battery, or the vehicle by a bare link", false);

    static final Choices<SourceKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final boolean limitsItself;

    SourceKind(String key, String label, boolean limitsItself) {
        this.key = key;
        this.label = label;
        this.limitsItself = limitsItself;
    }

    static ChoiceField field() {
        return CHOICES.field(
                "source-kind", "Kind of source",
                "A controller or charger gives no more than its own largest current. Behind a towing socket or a bare link stands a battery: into a short "
                        + "circuit it gives hundreds of amperes.");
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** Whether its electronics hold its current down, even into a short circuit. */
    public boolean limitsItself() {
        return limitsItself;
    }
}
