package railtrim.window.help;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import railtrim.procedure.Words;

/** The small drawings beside the help: what the meter is set to, and where its two tips go. */
enum Sketch {
    VOLTS_OUT(pad -> {
        meter(pad, "V");
        capacitor(pad, "OUT");
        leads(pad, 200, 34, 200, 92);
    }),
    VOLTS_IN(pad -> {
        meter(pad, "V");
        capacitor(pad, "IN");
        leads(pad, 200, 34, 200, 92);
    }),
    OHMS_OUT(pad -> {
        meter(pad, "Ω");
        capacitor(pad, "OUT");
        leads(pad, 200, 34, 200, 92);
    }),
    CELL(pad -> {
        meter(pad, "V");
        pad.box(150, 50, 78, 30, 4, "sk-body");
        pad.box(228, 58, 7, 14, 2, "sk-metal");
        pad.write("+", 217, 65, "sk-text");
        pad.write("−", 161, 65, "sk-text");
        pad.lead(62, 100, 235, 64, true);
        pad.lead(28, 100, 150, 66, false);
    }),
    TIPS(pad -> {
        meter(pad, "Ω");
        pad.lead(62, 100, 196, 52, true);
        pad.lead(28, 100, 196, 56, false);
        pad.disc(197, 54, 12, "sk-ring");
    }),
    PAIR(pad -> {
        meter(pad, "Ω");
        resistor(pad, 70);
        leads(pad, 178, 34, 178, 100);
    }),
    SWAPPED(pad -> {
        meter(pad, "Ω");
        resistor(pad, 70);
        leads(pad, 178, 100, 178, 34);
        pad.path("M226 40 A30 30 0 0 1 226 96 M220 86 L226 96 L236 90 M236 46 L226 40 L220 50", "sk-arrow");
    }),
    CLIPS(pad -> {
        meter(pad, "V");
        part(pad);
        pad.lead(62, 100, 172, 84, true);
        pad.lead(28, 100, 196, 96, false);
        pad.box(166, 78, 12, 14, 3, "sk-red-grip");
        pad.box(190, 88, 12, 14, 3, "sk-black-grip");
    }),
    PACKAGE(pad -> {
        pad.path("M92 26 L168 26 L168 44 L92 44 Z", "sk-metal");
        pad.disc(130, 35, 5, "sk-hole");
        pad.box(86, 44, 88, 44, 4, "sk-body");
        pad.write("1", 104, 113, "sk-text");
        pad.write("2", 130, 113, "sk-text");
        pad.write("3", 156, 113, "sk-text");
        for (int pin = 0; pin < 3; pin++) {
            pad.box(101 + 26 * pin, 88, 6, 17, 1, "sk-metal");
        }
        pad.line(96, 58, 150, 58, "sk-print");
        pad.line(96, 68, 132, 68, "sk-print");
    }),
    DIVIDER(pad -> {
        pad.line(130, 8, 130, 116, "sk-wire");
        pad.box(118, 18, 24, 32, 3, "sk-part");
        pad.box(118, 74, 24, 32, 3, "sk-part");
        pad.disc(130, 62, 4, "sk-dot");
        pad.line(130, 62, 84, 62, "sk-wire");
        pad.write("ADJ", 66, 62, "sk-text");
        pad.write("OUT", 156, 10, "sk-text");
        pad.write("GND", 156, 115, "sk-text");
        pad.write("?", 176, 34, "sk-mark");
        pad.write("?", 176, 90, "sk-mark");
    }),
    BESIDE(pad -> {
        meter(pad, "Ω");
        beside(pad, 170);
        leads(pad, 170, 34, 170, 100);
    }),
    ACROSS(pad -> beside(pad, 112)),
    TRIMMER(pad -> {
        meter(pad, "Ω");
        trimmer(pad);
        pad.lead(62, 100, 196, 92, true);
        pad.lead(28, 100, 174, 94, false);
    }),
    TURN(pad -> {
        trimmer(pad);
        pad.path("M168 22 A16 10 0 1 1 192 22 M186 14 L193 23 L181 25", "sk-arrow");
        pad.path("M52 26 L52 98 M42 86 L52 98 L62 86", "sk-arrow");
        pad.write("V", 76, 62, "sk-mark");
        pad.line(30, 98, 74, 98, "sk-print");
    }),
    LIFTED(pad -> {
        meter(pad, "Ω");
        pad.box(150, 46, 60, 20, 6, "sk-part");
        pad.path("M210 56 L224 56 L224 100", "sk-wire");
        pad.path("M150 56 L138 56 L132 30", "sk-wire");
        pad.line(116, 102, 252, 102, "sk-board");
        pad.lead(62, 100, 218, 57, true);
        pad.lead(28, 100, 136, 44, false);
    }),
    PART(pad -> {
        meter(pad, "Ω");
        pad.line(132, 58, 244, 58, "sk-wire");
        pad.box(160, 46, 56, 24, 8, "sk-part");
        pad.line(172, 46, 172, 70, "sk-band");
        pad.line(182, 46, 182, 70, "sk-band");
        pad.line(192, 46, 192, 70, "sk-band");
        pad.line(207, 46, 207, 70, "sk-band");
        pad.lead(62, 100, 240, 60, true);
        pad.lead(28, 100, 136, 60, false);
    }),
    WARMTH(pad -> {
        meter(pad, "°C");
        pad.box(164, 48, 64, 48, 3, "sk-body");
        for (int pin = 0; pin < 5; pin++) {
            pad.box(170 + 12 * pin, 96, 5, 9, 1, "sk-metal");
        }
        pad.box(186, 62, 20, 18, 1, "sk-tape");
        pad.path("M62 94 C 96 120, 130 40, 196 70", "sk-arrow");
        pad.disc(196, 71, 3.5, "sk-dot");
        pad.path(
                "M176 40 q4 -6 0 -12 q-4 -6 0 -12 M196 40 q4 -6 0 -12 q-4 -6 0 -12 M216 40 q4 -6 0 -12 q-4 -6 0 -12",
                "sk-heat");
    }),
    PLUG(pad -> {
        pad.box(36, 30, 54, 64, 8, "sk-meter");
        pad.disc(63, 50, 5, "sk-hole");
        pad.disc(63, 74, 5, "sk-hole");
        pad.box(150, 44, 44, 36, 6, "sk-body");
        pad.box(130, 50, 20, 6, 2, "sk-metal");
        pad.box(130, 68, 20, 6, 2, "sk-metal");
        pad.path("M194 62 C 220 62, 214 100, 250 100", "sk-black");
        pad.path("M96 62 L122 62 M104 54 L96 62 L104 70 M114 54 L122 62 L114 70", "sk-arrow");
    });

    private static final Map<String, Sketch> OF = Map.ofEntries(
            Map.entry("dead", VOLTS_OUT),
            Map.entry("stock", VOLTS_OUT),
            Map.entry("power-up", VOLTS_OUT),
            Map.entry("loaded", VOLTS_OUT),
            Map.entry("input", VOLTS_IN),
            Map.entry("rail-ohms", OHMS_OUT),
            Map.entry("proof", CELL),
            Map.entry("lead-zero", TIPS),
            Map.entry("leg", PAIR),
            Map.entry("other-leg", PAIR),
            Map.entry("reversed", SWAPPED),
            Map.entry("clips", CLIPS),
            Map.entry("reference", CLIPS),
            Map.entry("marking", PACKAGE),
            Map.entry("outline", PACKAGE),
            Map.entry("pins", PACKAGE),
            Map.entry("place", DIVIDER),
            Map.entry("leg-choice", DIVIDER),
            Map.entry("total", BESIDE),
            Map.entry("soldered-pair", ACROSS),
            Map.entry("left", ACROSS),
            Map.entry("trimmer-ends", TRIMMER),
            Map.entry("smooth", TRIMMER),
            Map.entry("turn-down", TURN),
            Map.entry("trimmer-alone", LIFTED),
            Map.entry("part-ohms", PART),
            Map.entry("temperature", WARMTH),
            Map.entry("thermometer", WARMTH),
            Map.entry("plug", PLUG),
            Map.entry("switch-off", PLUG));

    private final Consumer<SketchPad> drawing;

    Sketch(Consumer<SketchPad> drawing) {
        this.drawing = drawing;
    }

    static Optional<Sketch> of(String topic) {
        return Optional.ofNullable(OF.get(topic));
    }

    Node draw(Words words) {
        SketchPad pad = new SketchPad();
        drawing.accept(pad);
        return pad.node(
                words.of("sketch." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
    }

    // ---- what they are made of ----

    private static void meter(SketchPad pad, String mode) {
        pad.box(8, 8, 76, 104, 8, "sk-meter");
        pad.box(16, 16, 60, 26, 3, "sk-glass");
        pad.write(mode, 46, 29, "sk-digits");
        pad.disc(46, 64, 15, "sk-dial");
        pad.line(46, 64, 55, 54, "sk-pointer");
        pad.disc(28, 94, 6, "sk-black-disc");
        pad.disc(62, 94, 6, "sk-red-disc");
        pad.write("−", 28, 93.5, "sk-black-sign");
        pad.write("+", 62, 93.5, "sk-red-sign");
    }

    /** Red and black from the meter to two points. */
    private static void leads(SketchPad pad, double redX, double redY, double blackX, double blackY) {
        pad.lead(62, 100, redX, redY, true);
        pad.lead(28, 100, blackX, blackY, false);
    }

    private static void capacitor(SketchPad pad, String name) {
        pad.line(188, 34, 240, 34, "sk-wire");
        pad.write(name, 226, 22, "sk-text");
        pad.line(214, 34, 214, 56, "sk-wire");
        pad.line(200, 56, 228, 56, "sk-plate");
        pad.line(200, 66, 228, 66, "sk-plate");
        pad.line(214, 66, 214, 92, "sk-wire");
        pad.line(188, 92, 240, 92, "sk-wire");
        pad.path("M204 100 L224 100 M208 106 L220 106 M212 112 L216 112", "sk-wire");
    }

    private static void resistor(SketchPad pad, double middle) {
        pad.line(178, 34, 214, 34, "sk-wire");
        pad.line(178, 100, 214, 100, "sk-wire");
        pad.line(202, 34, 202, 100, "sk-wire");
        pad.box(190, middle - 20, 24, 40, 3, "sk-part");
    }

    private static void beside(SketchPad pad, double left) {
        pad.line(left, 34, left + 66, 34, "sk-wire");
        pad.line(left, 100, left + 66, 100, "sk-wire");
        pad.line(left + 20, 34, left + 20, 100, "sk-wire");
        pad.line(left + 56, 34, left + 56, 100, "sk-added-wire");
        pad.box(left + 10, 48, 20, 38, 3, "sk-part");
        pad.box(left + 46, 48, 20, 38, 3, "sk-added");
    }

    private static void part(SketchPad pad) {
        pad.box(156, 20, 80, 40, 4, "sk-body");
        for (int pin = 0; pin < 3; pin++) {
            pad.box(169 + 24 * pin, 60, 6, 40, 1, "sk-metal");
        }
    }

    private static void trimmer(SketchPad pad) {
        pad.box(150, 32, 92, 34, 3, "sk-added");
        pad.disc(180, 28, 7, "sk-metal");
        pad.line(175, 28, 185, 28, "sk-print");
        for (int pin = 0; pin < 3; pin++) {
            pad.box(171 + 22 * pin, 66, 6, 28, 1, "sk-metal");
        }
    }
}
