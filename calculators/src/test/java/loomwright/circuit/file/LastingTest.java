package loomwright.circuit.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.WorkedCircuits;
import org.junit.jupiter.api.Test;

/** Links and files that were handed on years ago still open, and mean what they meant. They stand here as they were made and are never made anew. */
class LastingTest {
    private static final String TRAILER_VERSION_1 = "c76e1~.Reedmere_field_trailer~.0~.battery~.Battery~.~.~.4~.100_A~.7~.lifepo4-100-ah~.13~.120_W~.16~.12.7~.~.2~.main-fuse"
            + "~.Main_fuse_on_the_battery~.0~.~.0~.class-t~.1~.80_A~.~.3~.isolator-1~.Hauptschalter_~u201cAus~u201d_~ud83d~ude80~.1~.~."
            + "~.5~.main-lead~.Main_lead~.2~.~.1~.16_mm~b2~.2~.0.4_m~.5~.t105~.~.2~.feed-breaker~.Breaker_of_the_panel_feed~.3~.~.0~.ma"
            + "rine-breaker~.1~.20_A~.2~.5_kA~.3~.32_V~.~.5~.feed~.Panel_feed~.4~.~.1~.6_mm~b2~.2~.2_m~.5~.t105~.~.1~.fuse-panel~.Fuse_"
            + "panel~2c_six_ways~.5~.~.~.2~.way-1~.Fuse-link~2c_way_1~.6~.~.1~.5_A~.~.5~.strip-run~.Run_to_the_LED_strip~.7~.~.1~.1.5_m"
            + "m~b2~.2~.3_m~.5~.t105~.~.7~.strip~.LED_strip~.8~.~.1~.12_W~.5~.4_h~.8~.abyc-other~.~.2~.way-2~.Fuse-link~2c_way_2~.6~.~."
            + "1~.3_A~.~.5~.fan-run~.Run_to_the_roof_fan~.10~.~.1~.1.5_mm~b2~.2~.2.5_m~.5~.t105~.~.7~.fan~.Roof_fan~.11~.~.1~.6_W~.5~.8"
            + "_h~.8~.abyc-other~.~.2~.way-3~.Fuse-link~2c_way_3~.6~.~.1~.7.5_A~.~.5~.pump-run~.Run_to_the_water_pump~.13~.~.2~.3.5_m~."
            + "5~.t105~.~.7~.pump~.Water_pump~.14~.~.0~.constant-current~.2~.4_A~.5~.0.5_h~.6~.50_~25~.8~.abyc-other~.9~.15_A~.10~.0.3_"
            + "s~.~.2~.way-4~.Fuse-link~2c_way_4~.6~.~.1~.2_A~.~.5~.camera-run~.Run_to_the_trail-camera_charger~.16~.~.1~.1.5_mm~b2~.2~"
            + ".2_m~.5~.t105~.~.7~.camera~.Trail-camera_charger~.17~.~.1~.10_W~.5~.3_h~.8~.abyc-other~.~.4~.on-switch~.~u201cOn~u201d_s"
            + "witch_of_the_trailer~.6~.~.1~.10_A~.~.2~.breaker~.Breaker_of_the_bench_circuit~.3~.~.0~.marine-breaker~.1~.30_A~.2~.5_kA"
            + "~.3~.32_V~.~.4~.outlet-switch~.Solid-state_switch_of_the_outlets~.20~.19~.0~.solid-state~.1~.40_A~.2~.3_m~u03a9~.7~.6_h~"
            + ".11~.1.5_m~.12~.12_K~2fW~.~.5~.bench-run~.Run_to_the_bench~.21~.~.1~.6_mm~b2~.2~.4.2_m~.5~.t105~.~.6~.bench-joints~.Join"
            + "ts_at_the_bench~.22~.~.1~.4~.2~.12~2c41_V~.~.2~.usb-fuse~.In-line_fuse-link_of_the_outlet_pair~.23~.~.~.5~.usb-run~.Tail"
            + "_to_the_outlet_pair~.24~.~.2~.0.3_m~.5~.t105~.~.7~.outlet-pair~.Outlet_pair~2c_USB~.25~.~.1~.72_W~.5~.2_h~.6~.60_~25~.8~"
            + ".abyc-other~.12~.5_mA~.~.2~.accessory-fuse~.In-line_fuse-link_of_the_accessory_outlet~.23~.~.1~.15_A~.~.5~.accessory-run"
            + "~.Tail_to_the_accessory_outlet~.27~.~.2~.0.3_m~.5~.t105~.~.7~.accessory-outlet~.Accessory_outlet~2c_laptop_charger~.28~."
            + "~.1~.100_W~.5~.2_h~.6~.50_~25~.8~.abyc-other~.~.p~.0~.200_mm~.2~.3~.6~.45_mm~.~.";

    private static final String PUNT_VERSION_1 = "50351~.Reedmere_punt~.0~.battery~.Battery~.~.~.0~.lead-acid~.1~.60_Ah~.7~.given~.10~.8_m~u03a9~.11~.25_m~u03a9~.~.2~.mai"
            + "n-fuse~.Fuse_at_the_battery~.0~.~.0~.large-strip~.1~.30_A~.~.5~.lead~.Lead_to_the_fuse_panel~.1~.~.1~.4_mm~b2~.2~.1.2_m~"
            + ".5~.t105~.~.1~.fuse-panel~.Fuse_panel~2c_two_ways~.2~.~.0~.15_A~.~.2~.pump-fuse~.Fuse-link_of_the_bilge_pump~.3~.~.1~.7."
            + "5_A~.~.5~.pump-run~.Run_to_the_bilge_pump~.4~.~.1~.4_mm~b2~.2~.2.6_m~.5~.t105~.~.7~.bilge-pump~.Bilge_pump~.5~.~.0~.cons"
            + "tant-current~.2~.4_A~.5~.0.5_h~.9~.10_A~.10~.0.3_s~.~.2~.lamp-fuse~.Fuse-link_of_the_stern_lamp~.3~.~.1~.3_A~.~.5~.lamp-"
            + "run~.Run_to_the_stern_lamp~.7~.~.1~.1.5_mm~b2~.2~.4.5_m~.5~.t105~.10~.12.2_V~.~.7~.stern-lamp~.Stern_lamp~.8~.~.0~.resis"
            + "tive~.1~.10_W~.5~.4_h~.~.";

    private static final String PUNT_VERSION_2 = "2c822~.Reedmere_punt~.supply~.battery~.Battery~.~.~.chemistry~.lead-acid~.capacity~.60_Ah~.battery~.given~.battery-resis"
            + "tance-low~.8_m~u03a9~.battery-resistance-high~.25_m~u03a9~.~.protection~.main-fuse~.Fuse_at_the_battery~.0~.~.device~.la"
            + "rge-strip~.rating~.30_A~.~.conductor~.lead~.Lead_to_the_fuse_panel~.1~.~.size~.4_mm~b2~.route-length~.1.2_m~.insulation-"
            + "temperature~.t105~.~.panel~.fuse-panel~.Fuse_panel~2c_two_ways~.2~.~.panel-limit~.15_A~.~.protection~.pump-fuse~.Fuse-li"
            + "nk_of_the_bilge_pump~.3~.~.rating~.7.5_A~.~.conductor~.pump-run~.Run_to_the_bilge_pump~.4~.~.size~.4_mm~b2~.route-length"
            + "~.2.6_m~.insulation-temperature~.t105~.~.load~.bilge-pump~.Bilge_pump~.5~.~.load-kind~.constant-current~.current~.4_A~.h"
            + "ours~.0.5_h~.start-current~.10_A~.start-time~.0.3_s~.~.protection~.lamp-fuse~.Fuse-link_of_the_stern_lamp~.3~.~.rating~."
            + "3_A~.~.conductor~.lamp-run~.Run_to_the_stern_lamp~.7~.~.size~.1.5_mm~b2~.route-length~.4.5_m~.insulation-temperature~.t1"
            + "05~.reading~.12.2_V~.~.load~.stern-lamp~.Stern_lamp~.8~.~.load-kind~.resistive~.power~.10_W~.hours~.4_h~.~.";

    /** Another panel, an isolating switch, two readings and a name that is no plain text were in it. */
    @Test
    void opensALinkOfVersion1() {
        Circuit trailer = CircuitEdits.insertedBefore(WorkedCircuits.trailer(), PartKind.ISOLATOR, "main-lead");
        trailer = CircuitEdits.read(trailer, "bench-joints", "12,41 V").circuit();
        trailer = CircuitEdits.read(trailer, "battery", "12.7").circuit();
        trailer = CircuitEdits.named(trailer, "isolator-1", "Hauptschalter \u201cAus\u201d \ud83d\ude80").circuit();
        trailer = trailer.in(trailer.panel().with("count", "3").with("panel-width", "200 mm").with("row-height", "45"));
        opens(trailer, TRAILER_VERSION_1);
        opens(punt(), PUNT_VERSION_1);
    }

    @Test
    void opensALinkOfVersion2() {
        opens(punt(), PUNT_VERSION_2);
    }

    private static Circuit punt() {
        return CircuitEdits.read(WorkedCircuits.punt(), "lamp-run", "12.2 V").circuit();
    }

    private static void opens(Circuit expected, String link) {
        FileRead read = CircuitLink.read(link);
        assertEquals(List.of(), read.faults());
        assertEquals(expected, read.circuit());
    }

    /** What a link leaves out is as usual; what was usual when these were made is written here. A change of it changes what they mean. */
    @Test
    void findsTheUsualFiguresOfOldLinks() {
        Circuit punt = CircuitLink.read(PUNT_VERSION_1).circuit();
        says(punt.part("battery"), "state-of-charge", "100 %", "lowest-voltage", "10.5 V", "highest-voltage", "14.6 V");
        says(punt.part("lamp-run"), "conductor", "iso-6722-1", "temperature", "40 °C", "short-circuit-insulation", "thermoplastic-90");
        says(punt.part("pump-fuse"), "device", "blade");
        says(punt.part("bilge-pump"), "rated-voltage", "12 V", "duty", "100 %", "use", "together", "allowance", "abyc-main", "standing-current", "0 mA");
        says(punt.part("fuse-panel"), "present-load", "0 A");
        Circuit trailer = CircuitLink.read(TRAILER_VERSION_1).circuit();
        says(trailer.part("isolator-1"), "continuous-current", "100 A", "contact-resistance", "0 mΩ");
        says(trailer.part("on-switch"), "on-resistance", "0 mΩ");
        says(trailer.part("battery"), "panel-power", "120 W", "peak-sun-hours", "3 h", "fuse-rule", "conductor-ampacity");
    }

    private static void says(Part part, String... fieldsAndTexts) {
        for (int i = 0; i < fieldsAndTexts.length; i += 2) {
            assertEquals(fieldsAndTexts[i + 1], part.text(fieldsAndTexts[i]), part.id() + " " + fieldsAndTexts[i]);
        }
    }

    @Test
    void opensAFileWithAKeyOfBefore() {
        FileRead read = CircuitFile.read("{\"format\": \"loomwright-circuit\", \"version\": 1, \"parts\": [{\"id\": \"b\", \"kind\": \"supply\","
                + " \"solar-power\": \"120 W\"}]}");
        assertEquals(List.of(), read.faults());
        assertEquals("120 W", read.circuit().part("b").text("panel-power"));
        assertTrue(CircuitFile.write(read.circuit()).contains("\"panel-power\": \"120 W\""));
    }

    @Test
    void writesNothingThatIsAsUsual() {
        Circuit usual = CircuitEdits.changed(StartingCircuits.empty(), "battery", "capacity", "100 Ah").circuit();
        assertTrue(CircuitFile.write(usual).length() < 200, CircuitFile.write(usual));
        assertEquals(usual, CircuitFile.read(CircuitFile.write(usual)).circuit());
    }
}
