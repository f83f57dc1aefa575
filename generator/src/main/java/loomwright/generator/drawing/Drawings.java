package loomwright.generator.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.picture.Picture;

/** Every drawing that a lesson can name. */
public final class Drawings {
    private static final List<Drawing> WORKED_OUT = List.of(
            new ShortCircuitAgainstKnownCurrents(),
            new EnergyIsArea(),
            new LoadsOfTheTrailersDay(),
            new TwoRoutesIntoALaptop(),
            new SupplyWindow(),
            new ResistorPowerAgainstVoltage(),
            new LampColdAndHot(),
            new LabelToAmperesChain(),
            new UsbPowerLevels(),
            new LoadKindsCurrentAgainstVoltage(),
            new MotorStartCurrent(),
            new CrossSectionsSideBySide(),
            new OneSizeFourTables(),
            new ResistanceAgainstTemperature(),
            new OutAndBackRun(),
            new DropAgainstRouteLength(),
            new ConstantsOnAThermometer(),
            new RelayAgainstSolidState(),
            new HeatStaircase(),
            new TwoOutletFaces(),
            new ContactHeat(),
            new SupportsAlongARoute(),
            new OneGaugeByRuleSet(),
            new InsulationAndEngineSpace(),
            new UsableAmpereHours(),
            new PeukertTwoForms(),
            new RestingVoltageTables(),
            new MillivoltsAcrossAJoint(),
            new JointHeatAgainstCurrent(),
            new VoltsLostInEachPart(),
            new TwoReadingsSlope(),
            new TimeCurrentWindow(),
            new FuseDistanceByRuleSet(),
            new ChecksInOrder(),
            new FeedAgainstItsLimits(),
            new ReturnCurrentsAddUp(),
            new FaultCurrentAlongARun(),
            new PanelCutThrough(),
            new CutOutsAndFrame(),
            new DrillingSheet());

    private final Map<String, Drawing> byName = new LinkedHashMap<>();

    private Drawings() {
        WORKED_OUT.forEach(drawing -> byName.put(drawing.name(), drawing));
    }

    /** Those that are worked out, and those of the content; mistakes in a file are reported. */
    public static Drawings with(Map<String, SourceFile> files, Problems problems) {
        Drawings drawings = new Drawings();
        files.entrySet().parallelStream().forEach(each -> drawings.add(SvgDrawing.read(each.getKey(), each.getValue(), problems), each.getValue(), problems));
        return drawings;
    }

    /** Adds a drawing that could be read, one at a time: they are read side by side. */
    private synchronized void add(Drawing drawing, SourceFile file, Problems problems) {
        if (drawing != null && byName.putIfAbsent(drawing.name(), drawing) != null) {
            problems.add(file.lineSpan(1).problem("a drawing is called \"" + drawing.name() + "\" already", "Give the file another name."));
        }
    }

    /** Their names in the order of the alphabet. */
    public List<String> names() {
        return byName.keySet().stream().sorted().toList();
    }

    /** The names of the values a drawing takes; all are needed. */
    public List<String> takes(String name) {
        return byName.get(name).takes();
    }

    public boolean has(String name) {
        return byName.containsKey(name);
    }

    /**
     * Draws a drawing. Its title and description are the drawing's own; a lesson puts its words over them with {@link Picture#named}.
     *
     * @param values what the lesson gives, text by name
     * @throws IllegalArgumentException if there is no such drawing, or a value is unknown, missing or will not do; the message is a
     *     sentence for the author
     */
    public Picture draw(String name, Map<String, String> values) {
        Drawing drawing = byName.get(name);
        if (drawing == null) {
            throw new IllegalArgumentException("There is no drawing called \u201c" + name + "\u201d.");
        }
        return drawing.draw(new Given(drawing, values));
    }
}
