package railtrim.command;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.heat.Heat;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** {@code heat}: power and temperature of the load and its regulator, before and after. */
@Command(name = "heat", description = "${bundle:command.heat.about}")
final class HeatFigures implements Asked {
    private final Words words;

    @Option(names = "--input", required = true, paramLabel = "5V", description = "${bundle:command.option.input}")
    private String input;

    @Option(names = "--stock", required = true, paramLabel = "3.3V", description = "${bundle:command.option.stock}")
    private String stock;

    @Option(names = "--target", required = true, paramLabel = "3.0V", description = "${bundle:command.option.target}")
    private String target;

    @Option(names = "--current", paramLabel = "2A", description = "${bundle:command.option.current}")
    private String current;

    @Option(names = "--load", paramLabel = "digital", description = "${bundle:command.option.load}")
    private String load;

    @Option(names = "--ambient", paramLabel = "25C", description = "${bundle:command.option.ambient}")
    private String ambient;

    @Option(names = "--chip", paramLabel = "70C", description = "${bundle:command.option.chip}")
    private String chip;

    @Option(names = "--chip-after", paramLabel = "62C", description = "${bundle:command.option.chip-after}")
    private String chipAfter;

    @Option(names = "--regulator", paramLabel = "55C", description = "${bundle:command.option.regulator}")
    private String regulator;

    @Option(names = "--leakage", paramLabel = "10%", description = "${bundle:command.option.leakage}")
    private String leakage;

    @Option(names = "--package", paramLabel = "SOT-223", description = "${bundle:command.option.heat-package}")
    private String outline;

    HeatFigures(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        double inputVolts = Typed.railVolts("--input", input, true);
        double stockVolts = Typed.railVolts("--stock", stock, true);
        double targetVolts = Typed.railVolts("--target", target, true);
        order(inputVolts, stockVolts, targetVolts);
        double amperes = current == null ? Double.NaN : Typed.between("--current", current, Unit.AMPERE, 1e-6, 200);
        Heat.Powers powers = Heat.powers(inputVolts, stockVolts, targetVolts, amperes, share());
        Json json = Json.object()
                .put("loadBefore", powers.loadBefore())
                .put("loadAfter", powers.loadAfter())
                .put("regulatorBefore", powers.regulatorBefore())
                .put("regulatorAfter", powers.regulatorAfter())
                .put("saved", powers.saved())
                .put("relative", powers.relative())
                .put("regulatorGetsHotter", powers.regulatorGetsHotter());
        Sheet sheet = powerSheet(powers);
        temperatures(powers, json, sheet);
        return Answer.done(json.map(), sheet);
    }

    private static void order(double inputVolts, double stockVolts, double targetVolts) {
        if (stockVolts >= inputVolts) {
            throw new BadOption(
                    "--input",
                    Message.of(
                            "command.wrong.input-below-stock", Display.volts(inputVolts), Display.volts(stockVolts)));
        }
        if (targetVolts >= stockVolts) {
            throw new BadOption(
                    "--target",
                    Message.of(
                            "command.wrong.target-not-below-stock",
                            Display.volts(targetVolts),
                            Display.volts(stockVolts)));
        }
    }

    /** Share of the current that does not follow the voltage. */
    private double share() {
        if (leakage != null && load != null) {
            throw BadInput.of("command.wrong.leakage-and-load");
        }
        if (leakage != null) {
            return Typed.fraction("--leakage", leakage, 0, 100);
        }
        return kind() == Heat.LoadKind.CONSTANT_CURRENT ? 1 : 0;
    }

    private Heat.LoadKind kind() {
        if (load == null) {
            return Heat.LoadKind.DIGITAL;
        }
        return Arrays.stream(Heat.LoadKind.values())
                .filter(kind -> Named.word(kind).equals(load.strip()))
                .findFirst()
                .orElseThrow(() -> new BadOption("--load", Message.of("command.wrong.load", Typed.shown(load))));
    }

    private Sheet powerSheet(Heat.Powers powers) {
        Sheet sheet = new Sheet()
                .table(
                        1,
                        List.of("", words.of("command.heat.head.before"), words.of("command.heat.head.after")),
                        List.of(
                                row("command.heat.load", powers, powers.loadBefore(), powers.loadAfter()),
                                row(
                                        "command.heat.regulator",
                                        powers,
                                        powers.regulatorBefore(),
                                        powers.regulatorAfter()),
                                row(
                                        "command.heat.total",
                                        powers,
                                        powers.loadBefore() + powers.regulatorBefore(),
                                        powers.loadAfter() + powers.regulatorAfter())))
                .blank();
        if (powers.relative()) {
            sheet.say(words.of("command.heat.relative"));
        }
        return sheet.say(words.of(
                powers.regulatorGetsHotter() ? "command.heat.regulator-hotter" : "command.heat.regulator-cooler"));
    }

    private List<String> row(String key, Heat.Powers powers, double before, double after) {
        return List.of(words.of(key), power(powers, before), power(powers, after));
    }

    private String power(Heat.Powers powers, double value) {
        return powers.relative()
                ? words.of("command.heat.times", String.format(Locale.ROOT, "%.3f", value))
                : Display.of(value, Unit.WATT);
    }

    private void temperatures(Heat.Powers powers, Json json, Sheet sheet) {
        boolean any = chip != null || regulator != null;
        if ((ambient != null) != any || chipAfter != null && chip == null) {
            throw BadInput.of("command.wrong.temperatures");
        }
        if (outline != null && (regulator == null || powers.relative())) {
            throw BadInput.of("command.wrong.package-heat");
        }
        if (ambient == null) {
            return;
        }
        double room = Typed.between("--ambient", ambient, Unit.CELSIUS, -40, 80);
        if (chip != null) {
            chip(room, powers, json, sheet);
        }
        if (regulator != null) {
            regulator(room, powers, json, sheet);
        }
    }

    private void chip(double room, Heat.Powers powers, Json json, Sheet sheet) {
        double before = aboveRoom("--chip", chip, room);
        double after = Heat.temperatureAfter(room, before, powers.loadBefore(), powers.loadAfter());
        json.put("chipBefore", before).put("chipAfter", after);
        sheet.say(words.of("command.heat.chip", Display.of(before, Unit.CELSIUS), Display.of(after, Unit.CELSIUS)));
        if (!powers.relative()) {
            double resistance = Heat.thermalResistance(room, before, powers.loadBefore());
            json.put("chipThermalResistance", resistance);
            sheet.say(words.of("command.heat.chip-resistance", kelvinPerWatt(resistance)));
        }
        if (chipAfter != null) {
            double measured = aboveRoom("--chip-after", chipAfter, room);
            json.put("chipAfterMeasured", measured);
            sheet.say(words.of("command.heat.chip-measured", Display.of(measured, Unit.CELSIUS)));
            if (!powers.relative()) {
                double resistance = Heat.thermalResistance(room, measured, powers.loadAfter());
                json.put("chipThermalResistanceAfter", resistance);
                sheet.say(words.of("command.heat.chip-resistance-after", kelvinPerWatt(resistance)));
            }
        }
    }

    private void regulator(double room, Heat.Powers powers, Json json, Sheet sheet) {
        double before = aboveRoom("--regulator", regulator, room);
        double after = Heat.temperatureAfter(room, before, powers.regulatorBefore(), powers.regulatorAfter());
        json.put("regulatorTemperatureBefore", before).put("regulatorTemperatureAfter", after);
        sheet.say(words.of(
                "command.heat.regulator-temperature",
                Display.of(before, Unit.CELSIUS),
                Display.of(after, Unit.CELSIUS)));
        if (!powers.relative()) {
            double resistance = Heat.thermalResistance(room, before, powers.regulatorBefore());
            json.put("regulatorThermalResistance", resistance);
            sheet.say(words.of("command.heat.regulator-resistance", kelvinPerWatt(resistance)));
        }
        if (outline != null) {
            double perWatt = Named.junctionToCase("--package", outline);
            double inside = Heat.junction(before, powers.regulatorBefore(), perWatt);
            double insideAfter = Heat.junction(after, powers.regulatorAfter(), perWatt);
            boolean hot = Math.max(inside, insideAfter) > Heat.HOTTEST_JUNCTION;
            json.put("junctionBefore", inside).put("junctionAfter", insideAfter).put("junctionTooHot", hot);
            sheet.say(words.of(
                    hot ? "command.heat.junction-hot" : "command.heat.junction",
                    Display.of(inside, Unit.CELSIUS),
                    Display.of(insideAfter, Unit.CELSIUS)));
        }
    }

    private static String kelvinPerWatt(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static double aboveRoom(String option, String text, double room) {
        double celsius = Typed.between(option, text, Unit.CELSIUS, -40, 200);
        if (celsius <= room) {
            throw new BadOption(
                    option,
                    Message.of(
                            "command.wrong.chip-not-above-room",
                            Display.of(celsius, Unit.CELSIUS),
                            Display.of(room, Unit.CELSIUS)));
        }
        return celsius;
    }
}
