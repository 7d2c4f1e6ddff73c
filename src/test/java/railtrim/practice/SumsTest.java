package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.MemoryLog;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.StepSums;
import railtrim.procedure.Sum;
import railtrim.procedure.Sums;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/** Every sum that is shown comes out as it says, worked out again from its text alone, in whole jobs on the practice boards. */
class SumsTest {
    private static final Words WORDS = Words.english();

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "network-blade", "storage-controller", "delay-unit", "studio-clock"})
    void everySumOfAWholeJobComesOutAsItSays(String name) {
        Set<String> seen = sumsThatComeOut(DemoBoards.named(name));
        // What every board asks for on its way.
        assertTrue(
                seen.containsAll(List.of(
                        "ref.volts",
                        "leg.reversed",
                        "base.rail",
                        "stock.volts",
                        "aim.lowest",
                        "trimmer.max",
                        "proof.total",
                        "smooth.low",
                        "first.volts",
                        "first.loaded",
                        "down.volts",
                        "down.start",
                        "target.volts",
                        "set.volts",
                        "soak.volts",
                        "setting.total",
                        "setting.trimmer",
                        "hand.ohms",
                        "fit.total",
                        "fit.volts",
                        "sum.what.current",
                        "sum.what.step",
                        "sum.what.start",
                        "sum.what.leg",
                        "sum.what.next",
                        "sum.what.recommended",
                        "sum.what.wanted",
                        "sum.what.in-hand")),
                seen::toString);
    }

    /** Then both ranges' errors count, and the sum has to say so too. */
    @Test
    void everySumComesOutWhereTheMeterChangesItsRangeBetweenStockAndStart() {
        Meter meter = Meter.middle();
        Iterator<Board> boards = new RandomBoards(Procedure.builtIn().families().all(), Rehearsal.chance(1)).some(5000);
        Board board = boards.next();
        while (meter.voltsAt(board.stock()).equals(meter.voltsAt(0.98 * board.stock()))) {
            board = boards.next();
        }
        assertTrue(sumsThatComeOut(board).containsAll(List.of("first.volts", "setting.trimmer")));
    }

    /** Invented rows, each range worse than the one before: what counts is the row of the range a reading was taken on. */
    @Test
    void everySumComesOutWhereTheRangesOfTheMeterWereCopiedFromItsManual() {
        Meter meter = Meter.ofRanges(
                List.of(
                        RangeRow.read("2 V 1 mV ±(0.5 % + 2)", Unit.VOLT),
                        RangeRow.read("20 V 10 mV ±(0.8 % + 3)", Unit.VOLT)),
                List.of(
                        RangeRow.read("200 Ω 0.1 Ω ±(1.0 % + 3)", Unit.OHM),
                        RangeRow.read("2 kΩ 1 Ω ±(0.8 % + 2)", Unit.OHM),
                        RangeRow.read("20 kΩ 10 Ω ±(1.2 % + 4)", Unit.OHM)));
        assertTrue(sumsThatComeOut(DemoBoards.named("sound-board"), meter)
                .containsAll(List.of("ref.volts", "leg.reversed", "first.volts", "hand.ohms", "sum.what.leg")));
    }

    /** Plays the whole job and works each sum out again. @return which were shown */
    private static Set<String> sumsThatComeOut(Board board) {
        return sumsThatComeOut(board, Meter.middle());
    }

    private static Set<String> sumsThatComeOut(Board board, Meter meter) {
        Set<String> seen = new TreeSet<>();
        walk(board, meter, (state, course) -> {
            for (Field field : state.current().step().fields()) {
                if (field.asked().test(state.figures())) {
                    Sums.expected(field, state.figures()).ifPresent(sum -> {
                        seen.add(field.id());
                        comesOut(field.id(), sum);
                        isTheRangeShown((Field.Number) field, course, sum);
                    });
                }
            }
            for (Sum sum : StepSums.at(state.current().step().id(), state.figures())) {
                seen.add(sum.what().key());
                comesOut(state.current().step().id(), sum);
            }
        });
        return seen;
    }

    /** A reading that will be compared with a first one must not be given away. */
    @Test
    void aHiddenFirstReadingIsInNoSum() {
        walk(
                DemoBoards.named("sound-board"),
                (state, course) -> state.current().step().fields().stream()
                        .filter(field -> field instanceof Field.Number number
                                && number.again().isPresent())
                        .forEach(field ->
                                assertEquals(Optional.empty(), Sums.expected(field, state.figures()), field.id())));
    }

    @Test
    void theReaderOfSumsReadsAsOnPaper() {
        // By hand: 1.250 + 0.01734 · 118.2·2000/(118.2+2000) = 1.250 + 0.01734 · 111.604 = 3.185.
        double[] range = SumReader.range("1.250 V + 17.34 mA · (118.2 Ω ∥ 2.000 kΩ)");
        assertTrue(range[0] < 3.1852 && range[1] > 3.1852 && range[1] - range[0] < 0.01, range[0] + " " + range[1]);
        assertEquals(0.035, SumReader.range("to5mV(max(0.01 · 3.300 V; 2 · 1.000 mV))")[0], 0.0051);
        assertThrows(AssertionError.class, () -> SumReader.range("1.250 V + x"));
        assertThrows(AssertionError.class, () -> SumReader.range("(1 V"));
    }

    private static void comesOut(String where, Sum sum) {
        assertTrue(
                !sum.sources().isEmpty()
                        && !sum.lines().isEmpty()
                        && !sum.given().isEmpty(),
                where);
        sum.sources().forEach(WORDS::of);
        sum.given().forEach(given -> WORDS.of(given.says()));
        for (Sum.Line line : sum.lines()) {
            double[] mayBe = SumReader.range(line.putIn());
            double[] says = SumReader.range(line.result());
            assertTrue(
                    says[0] <= mayBe[1] + 1e-9 && says[1] >= mayBe[0] - 1e-9,
                    () -> where + ": " + line.symbol() + " = " + line.formula() + " = " + line.putIn() + " = "
                            + line.result() + ", but it comes to " + mayBe[0] + " to " + mayBe[1]);
        }
    }

    private static void isTheRangeShown(Field.Number field, Course course, Sum sum) {
        Field.Expected range = course.expected(field.id()).orElseThrow();
        boolean negative = range.high() < 0;
        List<String> shown = sum.lines().stream().map(Sum.Line::result).toList();
        double low = negative ? -range.high() : range.low();
        double high = negative ? -range.low() : range.high();
        for (double end : field.id().equals("target.volts")
                ? List.of(low)
                : field.id().equals("fit.temp.chip") ? List.of(high) : List.of(low, high)) {
            String written =
                    field.unit() == railtrim.quantity.Unit.VOLT ? Display.volts(end) : Display.of(end, field.unit());
            assertTrue(shown.contains(written), () -> field.id() + " shows " + written + ", its sum " + shown);
        }
    }

    private interface Look {
        void at(State state, Course course);
    }

    private static void walk(Board board, Look look) {
        walk(board, Meter.middle(), look);
    }

    private static void walk(Board board, Meter meter, Look look) {
        Bench bench = new Bench(board, meter, new Random(7));
        Course course = new Course(Procedure.builtIn(), new MemoryLog("sums", bench));
        Hand hand = new Hand(bench);
        for (int i = 0; i < 2000; i++) {
            if (course.state().card().isEmpty()) {
                look.at(course.state(), course);
            }
            Answer answer = hand.next(course.state(), course);
            if (answer instanceof Answer.Done || answer instanceof Answer.Stuck) {
                assertTrue(answer instanceof Answer.Done, answer::toString);
                return;
            }
            Rehearsal.offer(answer, course);
        }
    }
}
