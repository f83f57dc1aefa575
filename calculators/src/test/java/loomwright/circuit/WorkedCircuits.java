package loomwright.circuit;

import java.util.List;

/** Two circuits that the tests work by hand. They stand apart from the circuits of the lessons, so that a lesson can change without them. */
public final class WorkedCircuits {
    private WorkedCircuits() {}

    /** A trailer with a class T main fuse, a panel of four ways, and a bench fed through a solid-state switch. */
    public static Circuit trailer() {
        return new Circuit("Reedmere field trailer", List.of(
                Part.of(
                        "battery", PartKind.SUPPLY, "Battery", "", "chemistry=lifepo4", "capacity=100 Ah", "battery=lifepo4-100-ah",
                        "battery-limit=100 A", "panel-power=120 W", "peak-sun-hours=3 h"),
                Part.of(
                        "main-fuse", PartKind.PROTECTION, "Main fuse on the battery", "battery", "device=class-t", "rating=80 A"),
                run("main-lead", "Main lead", "main-fuse", "16 mm²", "0.4 m"),
                Part.of(
                        "feed-breaker", PartKind.PROTECTION, "Breaker of the panel feed", "main-lead", "device=marine-breaker", "rating=20 A",
                        "breaking-capacity=5 kA", "rated-voltage=32 V"),
                run("feed", "Panel feed", "feed-breaker", "6 mm²", "2 m"),
                Part.of("fuse-panel", PartKind.PANEL, "Fuse panel, six ways", "feed", "panel-limit=20 A"),
                way("way-1", "Fuse-link, way 1", "fuse-panel", "5 A"),
                run("strip-run", "Run to the LED strip", "way-1", "1.5 mm²", "3 m"),
                Part.of(
                        "strip", PartKind.LOAD, "LED strip", "strip-run", "power=12 W", "hours=4 h", "allowance=abyc-other"),
                way("way-2", "Fuse-link, way 2", "fuse-panel", "3 A"),
                run("fan-run", "Run to the roof fan", "way-2", "1.5 mm²", "2.5 m"),
                Part.of("fan", PartKind.LOAD, "Roof fan", "fan-run", "power=6 W", "hours=8 h", "allowance=abyc-other"),
                way("way-3", "Fuse-link, way 3", "fuse-panel", "7.5 A"),
                run("pump-run", "Run to the water pump", "way-3", "2.5 mm²", "3.5 m"),
                Part.of(
                        "pump", PartKind.LOAD, "Water pump", "pump-run", "load-kind=constant-current", "current=4 A", "hours=0.5 h", "duty=50 %",
                        "allowance=abyc-other", "start-current=15 A", "start-time=0.3 s"),
                way("way-4", "Fuse-link, way 4", "fuse-panel", "2 A"),
                run("camera-run", "Run to the trail-camera charger", "way-4", "1.5 mm²", "2 m"),
                Part.of(
                        "camera", PartKind.LOAD, "Trail-camera charger", "camera-run", "power=10 W", "hours=3 h", "allowance=abyc-other"),
                Part.of(
                        "on-switch", PartKind.SWITCH, "\u201cOn\u201d switch of the trailer", "fuse-panel", "switching=manual",
                        "continuous-current=10 A"),
                Part.of(
                        "breaker", PartKind.PROTECTION, "Breaker of the bench circuit", "main-lead", "device=marine-breaker", "rating=30 A",
                        "breaking-capacity=5 kA", "rated-voltage=32 V"),
                Part.of(
                                "outlet-switch", PartKind.SWITCH, "Solid-state switch of the outlets", "breaker", "switching=solid-state",
                                "continuous-current=40 A", "on-resistance=3 mΩ", "trigger-current=15 mA", "hours-on=6 h",
                                "trigger-size=0.75 mm²", "trigger-route-length=1.5 m", "junction-to-air=12 K/W")
                        .triggeredBy("on-switch"),
                run("bench-run", "Run to the bench", "outlet-switch", "6 mm²", "4.2 m"),
                Part.of("bench-joints", PartKind.JOINT, "Joints at the bench", "bench-run", "joint-resistance=0.5 mΩ", "joints=4"),
                way("usb-fuse", "In-line fuse-link of the outlet pair", "bench-joints", "10 A"),
                run("usb-run", "Tail to the outlet pair", "usb-fuse", "2.5 mm²", "0.3 m"),
                Part.of(
                        "outlet-pair", PartKind.LOAD, "Outlet pair, USB", "usb-run", "power=72 W", "hours=2 h", "duty=60 %", "allowance=abyc-other",
                        "standing-current=5 mA"),
                way("accessory-fuse", "In-line fuse-link of the accessory outlet", "bench-joints", "15 A"),
                run("accessory-run", "Tail to the accessory outlet", "accessory-fuse", "2.5 mm²", "0.3 m"),
                Part.of(
                        "accessory-outlet", PartKind.LOAD, "Accessory outlet, laptop charger", "accessory-run", "power=100 W", "hours=2 h",
                        "duty=50 %", "allowance=abyc-other")));
    }

    /** An open punt, with a bilge pump and a stern lamp. */
    public static Circuit punt() {
        return new Circuit("Reedmere punt", List.of(
                Part.of(
                        "battery", PartKind.SUPPLY, "Battery", "", "chemistry=lead-acid", "capacity=60 Ah", "battery=given",
                        "battery-resistance-low=8 mΩ", "battery-resistance-high=25 mΩ"),
                Part.of("main-fuse", PartKind.PROTECTION, "Fuse at the battery", "battery", "device=large-strip", "rating=30 A"),
                run("lead", "Lead to the fuse panel", "main-fuse", "4 mm²", "1.2 m"),
                Part.of("fuse-panel", PartKind.PANEL, "Fuse panel, two ways", "lead", "panel-limit=15 A"),
                way("pump-fuse", "Fuse-link of the bilge pump", "fuse-panel", "7.5 A"),
                run("pump-run", "Run to the bilge pump", "pump-fuse", "4 mm²", "2.6 m"),
                Part.of(
                        "bilge-pump", PartKind.LOAD, "Bilge pump", "pump-run", "load-kind=constant-current", "current=4 A", "hours=0.5 h",
                        "start-current=10 A", "start-time=0.3 s"),
                way("lamp-fuse", "Fuse-link of the stern lamp", "fuse-panel", "3 A"),
                run("lamp-run", "Run to the stern lamp", "lamp-fuse", "1.5 mm²", "4.5 m"),
                Part.of("stern-lamp", PartKind.LOAD, "Stern lamp", "lamp-run", "load-kind=resistive", "power=10 W", "hours=4 h")));
    }

    private static Part run(String id, String name, String fedBy, String size, String routeLength) {
        return Part.of(
                id, PartKind.CONDUCTOR, name, fedBy, "size=" + size, "route-length=" + routeLength, "insulation-temperature=t105");
    }

    private static Part way(String id, String name, String fedBy, String rating) {
        return Part.of(id, PartKind.PROTECTION, name, fedBy, "device=blade", "rating=" + rating);
    }
}
