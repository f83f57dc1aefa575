package loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;

/** Every drawing that a lesson can name. */
public final class Drawings {
    private static final List<Drawing> ALL = List.of(
            new ShortCircuitAgainstKnownCurrents(),
            new NegativeLeadFirst(),
            new YourPartOfTheTrailer(),
            new EnergyIsArea(),
            new LoadsOfTheTrailersDay(),
            new TwoRoutesIntoALaptop(),
            new OneLoopWithMeters(),
            new SupplyWindow(),
            new ResistorPowerAgainstVoltage(),
            new LampColdAndHot(),
            new LabelToAmperesChain(),
            new UsbPowerLevels(),
            new LoadKindsCurrentAgainstVoltage(),
            new MotorStartCurrent(),
            new CableAnatomy(),
            new CrossSectionsSideBySide(),
            new OneSizeFourTables(),
            new ResistanceAgainstTemperature(),
            new OutAndBackRun(),
            new DropAgainstRouteLength(),
            new ConstantsOnAThermometer(),
            new MeterAtBothEnds(),
            new RelayWithItsTerminals(),
            new RelayAgainstSolidState(),
            new HeatStaircase(),
            new TwoOutletFaces(),
            new ContactHeat(),
            new OutletFromTheSide(),
            new CircuitSymbols(),
            new TrailerSchematic(),
            new TrailerWiring(),
            new SupportsAlongARoute(),
            new HeatLeavesACable(),
            new OneGaugeByRuleSet(),
            new InsulationAndEngineSpace(),
            new UsableAmpereHours(),
            new PeukertTwoForms(),
            new RestingVoltageTables(),
            new CrimpAlongTheBarrel(),
            new CrimpAcrossTheBarrel(),
            new MillivoltsAcrossAJoint(),
            new JointHeatAgainstCurrent(),
            new MeterRightAndWrong(),
            new VoltsLostInEachPart(),
            new TwoReadingsSlope(),
            new WhatEachFuseGuards(),
            new TimeCurrentWindow(),
            new FuseDistanceByRuleSet(),
            new ChecksInOrder(),
            new FeedAgainstItsLimits(),
            new FeedOfItsOwn(),
            new ReturnCurrentsAddUp(),
            new FaultCurrentAlongARun(),
            new PanelCutThrough(),
            new CutOutsAndFrame(),
            new HoleInFourSteps(),
            new DrillingSheet());

    private Drawings() {}

    public static List<String> names() {
        List<String> names = new ArrayList<>();
        for (Drawing drawing : ALL) {
            names.add(drawing.name());
        }
        return names;
    }

    /** The names of the values a drawing takes; all are needed. */
    public static List<String> takes(String name) {
        return find(name).takes();
    }

    public static boolean has(String name) {
        return find(name) != null;
    }

    /**
     * Draws a drawing. Its title and description are the drawing's own; a lesson puts its words over them with {@link Picture#named}.
     *
     * @param values what the lesson gives, text by name
     * @throws IllegalArgumentException if there is no such drawing, or a value is unknown, missing or will not do; the message is a
     *     sentence for the author
     */
    public static Picture draw(String name, Map<String, String> values) {
        Drawing drawing = find(name);
        if (drawing == null) {
            throw new IllegalArgumentException("There is no drawing called \u201c" + name + "\u201d.");
        }
        return drawing.draw(new Given(drawing, values));
    }

    private static Drawing find(String name) {
        for (Drawing drawing : ALL) {
            if (drawing.name().equals(name)) {
                return drawing;
            }
        }
        return null;
    }
}
