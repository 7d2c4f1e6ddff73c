package railtrim.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import railtrim.procedure.Field.Expected;
import railtrim.procedure.Field.Outside;
import railtrim.procedure.Step.Finding;
import railtrim.procedure.Step.Picture;
import railtrim.quantity.Unit;

/** Puts a step together, so that the list of steps reads like the checklist. */
final class Build {
    private static final Predicate<Figures> ALWAYS = figures -> true;

    private final String id;
    private final Phase phase;
    private final PowerNeed power;
    private boolean hold;
    private boolean skippable;
    private final List<String> cautions = new ArrayList<>();
    private final List<Field> fields = new ArrayList<>();
    private final Set<String> restsOn = new HashSet<>();
    private Predicate<Figures> needed = ALWAYS;
    private Function<Figures, List<Finding>> checks = figures -> List.of();
    private int dwellSeconds;
    private Picture picture = Picture.BOARD;
    private Optional<Picture> pictureBefore = Optional.empty();
    private final List<String> spots = new ArrayList<>();

    private Build(String id, Phase phase, PowerNeed power) {
        this.id = id;
        this.phase = phase;
        this.power = power;
    }

    static Build step(Phase phase, String id, PowerNeed power) {
        Build build = new Build(id, phase, power);
        if (power == PowerNeed.TO_ON || power == PowerNeed.TO_OFF) {
            build.fields.add(new Field.Switch(id + ".switch", power == PowerNeed.TO_ON));
        }
        return build;
    }

    Build hold() {
        hold = true;
        return this;
    }

    Build skippable() {
        skippable = true;
        return this;
    }

    Build cautions(String... ids) {
        cautions.addAll(Arrays.asList(ids));
        return this;
    }

    Build restsOn(String... steps) {
        restsOn.addAll(Arrays.asList(steps));
        return this;
    }

    Build needed(Predicate<Figures> when) {
        needed = when;
        return this;
    }

    Build checks(Function<Figures, List<Finding>> what) {
        checks = what;
        return this;
    }

    Build dwell(int seconds) {
        dwellSeconds = seconds;
        return this;
    }

    Build picture(Picture what, String... where) {
        picture = what;
        spots.addAll(Arrays.asList(where));
        return this;
    }

    /** Shown instead while the step's cautions are still to be read. */
    Build pictureBefore(Picture what) {
        pictureBefore = Optional.of(what);
        return this;
    }

    // ---- fields ----

    Build text(String field, boolean required) {
        return text(field, required, ALWAYS);
    }

    Build text(String field, boolean required, Predicate<Figures> asked) {
        fields.add(new Field.Text(field, required, asked, (figures, typed) -> List.of()));
        return this;
    }

    /** Rows of the meter's accuracy table. */
    Build meterRows(List<String> rows) {
        for (String row : rows) {
            fields.add(new Field.Text(
                    row,
                    true,
                    figures -> MeterRows.asked(figures, row),
                    (figures, typed) -> MeterRows.readBack(figures, row, typed)));
        }
        return this;
    }

    Build choice(String field, String... options) {
        List<Field.Option> list = Choices.plain(field, options);
        return choice(field, figures -> list);
    }

    Build choice(String field, Function<Figures, List<Field.Option>> options) {
        return choice(field, options, ALWAYS);
    }

    Build choice(String field, Function<Figures, List<Field.Option>> options, Predicate<Figures> asked) {
        fields.add(new Field.Choice(field, options, asked));
        return this;
    }

    Build number(
            String field,
            Unit unit,
            double low,
            double high,
            Function<Figures, Optional<Expected>> expected,
            Outside outside) {
        return number(field, unit, low, high, expected, outside, ALWAYS);
    }

    Build number(
            String field,
            Unit unit,
            double low,
            double high,
            Function<Figures, Optional<Expected>> expected,
            Outside outside,
            Predicate<Figures> asked) {
        fields.add(new Field.Number(field, unit, low, high, expected, outside, Optional.empty(), asked));
        return this;
    }

    /** A second, independent reading of {@code first}, which is hidden while this one is typed. */
    Build again(String field, String first, double part) {
        return again(field, first, part, ALWAYS);
    }

    Build again(String field, String first, double part, Predicate<Figures> asked) {
        fields.add(new Field.Number(
                field,
                Unit.OHM,
                0,
                1e8,
                figures -> Ranges.againOhms(figures, first, part),
                Outside.MEASURE_AGAIN,
                Optional.of(first),
                asked));
        return this;
    }

    /** The rail, which has to be dead. */
    Build dead(String field) {
        return number(field, Unit.VOLT, -500, 500, Ranges.dead(), Outside.MEASURE_AGAIN);
    }

    Build ohms(String field, Function<Figures, Optional<Expected>> expected) {
        return ohms(field, expected, ALWAYS);
    }

    Build ohms(String field, Function<Figures, Optional<Expected>> expected, Predicate<Figures> asked) {
        return number(field, Unit.OHM, 0, 1e8, expected, Outside.MEASURE_AGAIN, asked);
    }

    Build ohmsOdd(String field, Function<Figures, Optional<Expected>> expected) {
        return number(field, Unit.OHM, 0, 1e8, expected, Outside.ODD);
    }

    Build volts(String field, Function<Figures, Optional<Expected>> expected) {
        return number(field, Unit.VOLT, -500, 500, expected, Outside.MEASURE_AGAIN);
    }

    Build voltsOrSafe(String field, Function<Figures, Optional<Expected>> expected) {
        return number(field, Unit.VOLT, -500, 500, expected, Outside.MAKE_SAFE);
    }

    Build celsius(String field, Function<Figures, Optional<Expected>> expected, Predicate<Figures> asked) {
        return number(field, Unit.CELSIUS, -20, 250, expected, Outside.ODD, asked);
    }

    Step done() {
        return new Step(
                id,
                phase,
                power,
                hold,
                skippable,
                List.copyOf(cautions),
                List.copyOf(fields),
                Set.copyOf(restsOn),
                needed,
                checks,
                dwellSeconds,
                picture,
                pictureBefore,
                List.copyOf(spots));
    }
}
