package railtrim.report;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import railtrim.circuit.LineSolve;
import railtrim.heat.Heat;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.Slip;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Warmth;
import railtrim.procedure.Words;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.Trial;

/**
 * Every number that a job's record may show, with its sign and its unit, asked from the core anew and without the classes that write records: what
 * was typed, what the meter leaves open, the ranges shown before each reading, what was worked out, and what stands in the fixed texts.
 */
final class CoreNumbers {
    /** A number with the sign before it and the unit behind it, where it has them. */
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\p{L}\\d.])[\\u2212-]?\\d+(?:\\.\\d+)?(?: ?(?:[µmkMG]?[VAΩW](?!\\p{L})|°C|%|K/W|min\\b|mV\\b|Hz))?");

    private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\d(?: \\d\\d:\\d\\d:\\d\\d)?");
    private static final DateTimeFormatter SECOND =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss").withZone(ZoneOffset.UTC);

    private final Procedure procedure;
    private final Words words;
    private final Set<String> numbers = new TreeSet<>();
    private final Set<String> times = new TreeSet<>();

    private CoreNumbers(Procedure procedure, Words words) {
        this.procedure = procedure;
        this.words = words;
    }

    static CoreNumbers of(State state, Procedure procedure, Words words) {
        CoreNumbers known = new CoreNumbers(procedure, words);
        known.entries(state);
        known.steps(state);
        known.board(state.figures());
        known.wayDown(state.figures());
        known.resistor(state.figures());
        known.heat(state.figures());
        return known;
    }

    /** Those of the text that no part of the core has said. */
    Set<String> strangersIn(String text) {
        Set<String> strangers = new TreeSet<>(in(text));
        strangers.removeAll(numbers);
        Matcher found = TIME.matcher(text);
        while (found.find()) {
            if (!times.contains(found.group())) {
                strangers.add(found.group());
            }
        }
        return strangers;
    }

    private static Set<String> in(String text) {
        Set<String> numbers = new TreeSet<>();
        Matcher found = NUMBER.matcher(TIME.matcher(text).replaceAll(" "));
        while (found.find()) {
            numbers.add(found.group().replace(" ", "").replace('-', '\u2212'));
        }
        return numbers;
    }

    private void say(String text) {
        numbers.addAll(in(text));
    }

    private void say(Message message) {
        say(words.of(message));
    }

    private void count(long number) {
        say(Long.toString(number));
    }

    // ---- what was typed, and what was shown before ----

    private void entries(State state) {
        List<Entry> entries = state.job().entries();
        count(entries.size());
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            times.add(SECOND.format(entry.time()));
            Figures before = procedure
                    .state(new Job(state.job().name(), entries.subList(0, i)))
                    .figures();
            if (entry.fact() instanceof Fact.Reading reading) {
                say(reading.typed());
                meter(state.figures(), reading);
                shown(before, state.figures(), reading);
            } else if (entry.fact() instanceof Fact.Choice choice) {
                label(before, choice);
                label(state.figures(), choice);
            } else if (entry.fact() instanceof Fact.Note note) {
                say(note.text());
            } else if (entry.fact() instanceof Fact.Resumed resumed) {
                say(Display.of(resumed.gapSeconds(), Unit.SECOND));
            } else if (entry.fact() instanceof Fact.Withdrawn withdrawn) {
                count(withdrawn.entry());
            }
        }
    }

    private void meter(Figures figures, Fact.Reading reading) {
        double value = wished(figures, reading.field()) ? -reading.value() : reading.value();
        say(Display.of(value, reading.unit()));
        if (reading.unit() == Unit.VOLT || reading.unit() == Unit.OHM) {
            Accuracy accuracy = reading.unit() == Unit.VOLT
                    ? figures.meter().voltsAt(value)
                    : figures.meter().ohmsAt(value);
            say(Display.withUncertainty(value, 2 * accuracy.standardUncertainty(value), reading.unit()));
        }
    }

    private void shown(Figures before, Figures after, Fact.Reading reading) {
        field(reading.step(), reading.field())
                .map(Field.Number.class::cast)
                .flatMap(field -> attempt(() -> field.expected().apply(before)).flatMap(range -> range))
                .ifPresent(range -> {
                    double sign = wished(after, reading.field()) ? -1 : 1;
                    Display.Ends ends = Display.ends(sign * range.low(), sign * range.high(), reading.unit());
                    say(ends.low());
                    say(ends.high());
                    say(range.because());
                });
    }

    /** These are typed without a sign, as their labels ask, and are voltages of the rail all the same. */
    private static boolean wished(Figures figures, String field) {
        return figures.negative()
                && Set.of("rated.low", "rated.high", "aim.lowest", "target.volts")
                        .contains(field);
    }

    private void label(Figures figures, Fact.Choice choice) {
        field(choice.step(), choice.field())
                .map(Field.Choice.class::cast)
                .flatMap(field -> attempt(() -> field.options().apply(figures)))
                .ifPresent(options -> options.stream()
                        .filter(option -> option.id().equals(choice.option()))
                        .forEach(option -> say(option.label())));
    }

    private Optional<Field> field(String step, String field) {
        return procedure.steps().stream()
                .filter(each -> each.id().equals(step))
                .flatMap(each -> each.fields().stream())
                .filter(each -> each.id().equals(field))
                .findFirst();
    }

    private static <T> Optional<T> attempt(Supplier<T> sum) {
        try {
            return Optional.of(sum.get());
        } catch (BadInput noSum) {
            return Optional.empty();
        }
    }

    private void steps(State state) {
        for (State.StepState step : state.steps()) {
            step.findings().stream().map(Step.Finding::message).forEach(this::say);
            String id = step.step().id();
            Stream.of("step." + id + ".title", "step." + id + ".action")
                    .filter(words::has)
                    .map(words::of)
                    .forEach(this::say);
            for (Field field : step.step().fields()) {
                String label = "field." + field.id() + ".label";
                say(words.has(label) ? words.of(label) : "");
                // Labels of pins carry the pin's number.
                say(field.id().replaceAll("\\D+", " "));
            }
            for (String caution : step.step().cautions()) {
                var told = procedure.caution(caution);
                say(told.hazard(words) + " " + told.consequence(words) + " " + told.avoidance(words));
            }
        }
        for (String fixed : List.of(
                "report.note",
                "report.undo.dead",
                "report.next.dead-first",
                "report.negative",
                "report.heat.estimate",
                "report.margin.sum")) {
            say(words.of(fixed, "", "", "", ""));
        }
    }

    // ---- what was worked out ----

    private void rail(Figures figures, double... magnitudes) {
        RailSign sign = new RailSign(figures.negative());
        for (double magnitude : magnitudes) {
            say(sign.volts(magnitude));
        }
    }

    private void rail(Figures figures, OptionalDouble magnitude) {
        magnitude.ifPresent(volts -> rail(figures, volts));
    }

    private void board(Figures figures) {
        Stream.of(
                        figures.stock(),
                        figures.input(),
                        figures.ratedLow(),
                        figures.ratedHigh(),
                        figures.floor(),
                        figures.start(),
                        figures.target(),
                        figures.fitted(),
                        figures.lastGood(),
                        figures.fault())
                .forEach(volts -> rail(figures, volts));
        figures.reference().ifPresent(volts -> say(Display.volts(volts)));
        figures.family().ifPresent(family -> say(family.name()));
        figures.outline().ifPresent(outline -> say(outline.id()));
        for (int pin = 1; pin <= figures.pins().size(); pin++) {
            count(pin);
        }
        if (figures.stock().isPresent() && figures.fitted().isPresent()) {
            double stock = figures.stock().getAsDouble();
            double drop = stock - figures.fitted().getAsDouble();
            say(Display.volts(drop));
            say(Display.of(100 * drop / stock, Unit.PERCENT));
        }
        figures.points().forEach(point -> point(figures, point));
        count(figures.points().size());
        figures.solution().ifPresent(found -> {
            say(Display.ohms(found.leg()));
            say(String.format(java.util.Locale.ROOT, "%.1f mV", 1000 * found.worstResidual()));
        });
        for (Slip slip : figures.slips()) {
            say(slip.told(words));
            rail(figures, slip.volts());
        }
    }

    private void point(Figures figures, LineSolve.Point point) {
        rail(figures, point.volts());
        say(Display.ohms(point.added()));
    }

    private void wayDown(Figures figures) {
        List<Trial> trials = figures.trials();
        for (Trial trial : trials) {
            rail(figures, trial.volts());
            count(trial.run());
            say(Double.isNaN(trial.dwell()) ? "" : Display.of(trial.dwell(), Unit.SECOND));
        }
        count(trials.size());
        count(trials.stream().map(Trial::run).distinct().count());
        count(trials.stream().filter(Trial::fault).count());
        figures.failVoltage().ifPresent(fail -> fail(figures, fail));
        figures.budget().ifPresent(budget -> budget(figures, budget));
    }

    private void fail(Figures figures, FailVoltage fail) {
        rail(figures, fail.fail(), fail.bracketLow(), fail.bracketHigh());
        count(fail.runs());
    }

    private void budget(Figures figures, MarginBudget budget) {
        rail(figures, budget.fail(), budget.recommended(), budget.fail() + budget.sum());
        say(Display.volts(budget.sum()));
        for (MarginBudget.Line line : budget.lines()) {
            say(Display.volts(line.volts()));
            say(line.basis());
        }
        OptionalDouble now = figures.fitted().isPresent() ? figures.fitted() : figures.target();
        now.ifPresent(volts -> say(Display.volts(volts - budget.fail())));
    }

    private void resistor(Figures figures) {
        figures.chosen().ifPresent(chosen -> {
            say(chosen.partsInWords());
            chosen.values().forEach(ohms -> say(Display.part(ohms)));
            say(Display.ohms(chosen.added()));
            rail(figures, chosen.voltage(), chosen.lowest(), chosen.highest());
            say(Display.of(chosen.power(), Unit.WATT));
        });
        figures.choice("res.tolerance").ifPresent(percent -> say(percent + " %"));
    }

    private void heat(Figures figures) {
        figures.powers().ifPresent(powers -> {
            watts(powers, powers.loadBefore());
            watts(powers, powers.loadAfter());
            watts(powers, powers.regulatorBefore());
            watts(powers, powers.regulatorAfter());
            say(Math.round(100 * (1 - powers.loadAfter() / powers.loadBefore())) + " %");
        });
        Warmth warmth = Warmth.of(figures);
        Stream.of(
                        warmth.chip().resistanceBefore(),
                        warmth.chip().resistanceAfter(),
                        warmth.regulator().resistanceBefore(),
                        warmth.regulator().resistanceAfter())
                .forEach(value -> value.ifPresent(each -> say(String.format(java.util.Locale.ROOT, "%.1f K/W", each))));
        Stream.of(warmth.junctionBefore(), warmth.junctionAfter())
                .forEach(value -> value.ifPresent(each -> say(Display.of(each, Unit.CELSIUS))));
    }

    private void watts(Heat.Powers powers, double power) {
        say(powers.relative() ? Display.of(100 * power, Unit.PERCENT) : Display.of(power, Unit.WATT));
    }
}
