package loomwright.catalogue;

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

/** Every calculator, in the order of the job. */
public final class Catalogue {
    private static final List<Calculator> ALL = List.of(
            // What the loads draw, now and over a day.
            new OhmAndPower(),
            new DeviceCurrent(),
            new UsbPowerBudget(),
            new DayEnergy(),
            new TwoRoutes(),
            // The battery.
            new RunTime(),
            new Peukert(),
            new StateOfCharge(),
            new BatterySize(),
            // The solar panel and the fuse panel.
            new PanelYield(),
            new PanelHeadroom(),
            // Conductors: their resistance and their sizes.
            new ConductorResistance(),
            new GaugeConvert(),
            // Runs of conductor and what they lose.
            new VoltageDrop(),
            // The size that a run needs, all things considered.
            new SizeForRun(),
            // What a conductor carries, and what melts it.
            new Ampacity(),
            new FusingCurrent(),
            // Fuse-links and breakers.
            new FuseChoice(),
            new FusePlace(),
            // When fuse-links and breakers open, and which of two opens first.
            new TimeCurrent(),
            new Selectivity(),
            // Short circuits and what stands up to them.
            new FaultCurrent(),
            new BreakingCapacity(),
            new ShortCircuitHeating(),
            // Relay or solid-state switch, and how warm that gets.
            new SwitchCompare(),
            new JunctionTemperature(),
            // Coils and triggers.
            new CoilDay(),
            new CoilSuppression(),
            new TriggerLoop(),
            // Outlets.
            new OutletLoad(),
            // Cut-outs, joints and proving.
            new CutOutLayout(),
            new JointHeat(),
            new PullForce(),
            new ShrinkSize(),
            new ExpectedReading(),
            new HiddenResistance());

    private Catalogue() {}

    /** All calculators. */
    public static List<Calculator> all() {
        return ALL;
    }

    /** The calculator of that key, or null. */
    public static Calculator find(String key) {
        for (Calculator calculator : ALL) {
            if (calculator.description().key().equals(key)) {
                return calculator;
            }
        }
        return null;
    }
}
