package loomwright.catalogue;

import java.util.List;
import loomwright.conductor.Ampacity;
import loomwright.conductor.ConductorResistance;
import loomwright.conductor.GaugeConvert;
import loomwright.conductor.VoltageDrop;
import loomwright.joint.JointHeat;
import loomwright.joint.PullForce;
import loomwright.joint.ShrinkSize;
import loomwright.load.DeviceCurrent;
import loomwright.load.OhmAndPower;
import loomwright.load.UsbPowerBudget;
import loomwright.placing.CutOutLayout;
import loomwright.proving.ExpectedReading;
import loomwright.proving.HiddenResistance;
import loomwright.protection.BreakingCapacity;
import loomwright.protection.FaultCurrent;
import loomwright.protection.FuseChoice;
import loomwright.protection.FusePlace;
import loomwright.protection.FusingCurrent;
import loomwright.protection.Selectivity;
import loomwright.protection.ShortCircuitHeating;
import loomwright.protection.TimeCurrent;
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
            new OhmAndPower(),
            new DeviceCurrent(),
            new UsbPowerBudget(),
            new DayEnergy(),
            new TwoRoutes(),
            new RunTime(),
            new Peukert(),
            new StateOfCharge(),
            new BatterySize(),
            new PanelYield(),
            new PanelHeadroom(),
            new ConductorResistance(),
            new GaugeConvert(),
            new VoltageDrop(),
            new Ampacity(),
            new FuseChoice(),
            new FaultCurrent(),
            new BreakingCapacity(),
            new FusePlace(),
            new TimeCurrent(),
            new Selectivity(),
            new ShortCircuitHeating(),
            new FusingCurrent(),
            new CoilDay(),
            new SwitchCompare(),
            new JunctionTemperature(),
            new CoilSuppression(),
            new TriggerLoop(),
            new CutOutLayout(),
            new JointHeat(),
            new PullForce(),
            new ShrinkSize(),
            new ExpectedReading(),
            new HiddenResistance());

    private Catalogue() {}

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
