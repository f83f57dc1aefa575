package loomwright.catalogue;

import java.util.ArrayList;
import java.util.List;
import loomwright.conductor.Ampacity;
import loomwright.conductor.ConductorResistance;
import loomwright.conductor.GaugeConvert;
import loomwright.conductor.SizeForRun;
import loomwright.conductor.VoltageDrop;
import loomwright.joint.JointHeat;
import loomwright.joint.PullForce;
import loomwright.joint.ShrinkSize;
import loomwright.load.DeviceCurrent;
import loomwright.load.OhmAndPower;
import loomwright.load.OutletLoad;
import loomwright.load.UsbPowerBudget;
import loomwright.placing.CutOutLayout;
import loomwright.protection.BreakingCapacity;
import loomwright.protection.FaultCurrent;
import loomwright.protection.FuseChoice;
import loomwright.protection.FusePlace;
import loomwright.protection.FusingCurrent;
import loomwright.protection.Selectivity;
import loomwright.protection.ShortCircuitHeating;
import loomwright.protection.TimeCurrent;
import loomwright.proving.ExpectedReading;
import loomwright.proving.HiddenResistance;
import loomwright.supply.BatterySize;
import loomwright.supply.DayEnergy;
import loomwright.supply.PanelHeadroom;
import loomwright.supply.PanelYield;
import loomwright.supply.Peukert;
import loomwright.supply.RunTime;
import loomwright.supply.StateOfCharge;
import loomwright.supply.TwoRoutes;
import loomwright.switching.CoilDay;
import loomwright.switching.CoilSuppression;
import loomwright.switching.JunctionTemperature;
import loomwright.switching.SwitchCompare;
import loomwright.switching.TriggerLoop;
import loomwright.worked.Calculator;

/**
 * Every calculator, by subject, in the order of the job.
 *
 * <p>One method a subject: a page program that asks for one subject holds no calculator of another.
 */
public final class Catalogue {
    private Catalogue() {}

    /** What the loads draw, now and over a day. */
    public static Subject loads() {
        return new Subject(
                "loads",
                List.of(
                        new OhmAndPower(),
                        new DeviceCurrent(),
                        new UsbPowerBudget(),
                        new DayEnergy(),
                        new TwoRoutes()));
    }

    /** The battery. */
    public static Subject supply() {
        return new Subject(
                "supply",
                List.of(
                        new RunTime(),
                        new Peukert(),
                        new StateOfCharge(),
                        new BatterySize()));
    }

    /** The solar panel and the fuse panel. */
    public static Subject panels() {
        return new Subject(
                "panels",
                List.of(
                        new PanelYield(),
                        new PanelHeadroom()));
    }

    /** Conductors: their resistance and their sizes. */
    public static Subject conductors() {
        return new Subject(
                "conductors",
                List.of(
                        new ConductorResistance(),
                        new GaugeConvert()));
    }

    /** Runs of conductor and what they lose. */
    public static Subject runs() {
        return new Subject(
                "runs",
                List.of(
                        new VoltageDrop()));
    }

    /** The size that a run needs, all things considered. */
    public static Subject sizing() {
        return new Subject(
                "sizing",
                List.of(
                        new SizeForRun()));
    }

    /** What a conductor carries, and what melts it. */
    public static Subject carrying() {
        return new Subject(
                "carrying",
                List.of(
                        new Ampacity(),
                        new FusingCurrent()));
    }

    /** Fuse-links and breakers. */
    public static Subject protection() {
        return new Subject(
                "protection",
                List.of(
                        new FuseChoice(),
                        new FusePlace()));
    }

    /** When fuse-links and breakers open, and which of two opens first. */
    public static Subject timing() {
        return new Subject(
                "timing",
                List.of(
                        new TimeCurrent(),
                        new Selectivity()));
    }

    /** Short circuits and what stands up to them. */
    public static Subject faults() {
        return new Subject(
                "faults",
                List.of(
                        new FaultCurrent(),
                        new BreakingCapacity(),
                        new ShortCircuitHeating()));
    }

    /** Relay or solid-state switch, and how warm that gets. */
    public static Subject switching() {
        return new Subject("switching", List.of(new SwitchCompare(), new JunctionTemperature()));
    }

    /** Coils and triggers. */
    public static Subject coils() {
        return new Subject("coils", List.of(new CoilDay(), new CoilSuppression(), new TriggerLoop()));
    }

    /** Outlets. */
    public static Subject outlets() {
        return new Subject("outlets", List.of(new OutletLoad()));
    }

    /** Cut-outs, joints and proving. */
    public static Subject making() {
        return new Subject(
                "making",
                List.of(
                        new CutOutLayout(),
                        new JointHeat(),
                        new PullForce(),
                        new ShrinkSize(),
                        new ExpectedReading(),
                        new HiddenResistance()));
    }

    public static List<Subject> subjects() {
        return List.of(
                loads(), supply(), panels(), conductors(), runs(), sizing(), carrying(), protection(), timing(), faults(), switching(),
                coils(), outlets(), making());
    }

    /** All calculators. */
    public static List<Calculator> all() {
        List<Calculator> all = new ArrayList<>();
        for (Subject subject : subjects()) {
            all.addAll(subject.calculators());
        }
        return List.copyOf(all);
    }

    /** The calculator of that key, or null. */
    public static Calculator find(String key) {
        for (Subject subject : subjects()) {
            if (subject.find(key) != null) {
                return subject.find(key);
            }
        }
        return null;
    }
}
