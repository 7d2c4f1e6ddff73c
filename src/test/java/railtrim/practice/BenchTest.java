package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.Leg;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.quantity.Meter;

class BenchTest {
    private static final Node.Pair UPPER = Node.Pair.of(Leg.UPPER);
    private static final Node.Pair LOWER = Node.Pair.of(Leg.LOWER);

    private static Bench bench(String board) {
        return new Bench(DemoBoards.named(board), Meter.fine(), Rehearsal.chance(7));
    }

    private static Bench drawn(Place place, long seed) {
        var families = RegulatorFamilies.of(BuiltIn.text("regulators.json")).all();
        Board board = new RandomBoards(families, Rehearsal.chance(seed)).draw("board", place);
        return new Bench(board, Meter.fine(), Rehearsal.chance(seed));
    }

    @Test
    void aTrimmerAcrossTheLegThatLowersBringsTheOutputDown() {
        Bench bench = bench("sound-board");
        Part.Trimmer trimmer = bench.takeTrimmer(10_000, 25, 0.1, 0);
        bench.solder(trimmer, LOWER);
        bench.switchOn();
        double start = bench.output();
        bench.turn(trimmer, 0.1);
        assertTrue(start < bench.board().stock());
        assertTrue(bench.output() < start);
        assertEquals(bench.board().withAdded(trimmer.ohms()), bench.output(), 0.003);
        assertTrue(bench.mishaps().isEmpty());
    }

    /** The fault table of the adjustable regulators: a resistor across the wrong leg raises the output, wherever the reference sits. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void aTrimmerAcrossTheWrongLegRaisesTheOutput(Place place) {
        Bench bench = drawn(place, 11);
        Leg wrong = place.loweringLeg().other();
        bench.solder(bench.takeTrimmer(10_000, 25, 0.1, 0), Node.Pair.of(wrong));
        bench.switchOn();
        assertTrue(bench.output() > bench.board().stock() - 0.01);
        assertTrue(bench.highestSeen() > bench.board().stock());
        assertTrue(bench.mishaps().contains(Bench.Mishap.ABOVE_STOCK));
    }

    /** The fault table again: a short across the lowering leg gives the reference, across the other leg input minus dropout. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void aShortGivesTheReferenceOrAllThereIs(Place place) {
        Bench low = drawn(place, 14);
        Part bridge = low.takeResistors(List.of(0.01), Part.Joined.SERIES, 0);
        low.solder(bridge, Node.Pair.of(place.loweringLeg()));
        low.switchOn();
        Board.Divider divider = low.board().divider();
        assertEquals(divider.reference().value(), low.output(), 0.01);

        Bench high = drawn(place, 14);
        high.solder(bridge, Node.Pair.of(place.loweringLeg().other()));
        high.switchOn();
        double amperes = high.board()
                .amperes(high.output(), Board.Work.IDLE, high.board().warmth().room());
        double sag = amperes * (divider.inputOhms() + divider.outputOhms());
        assertEquals(divider.input() - divider.dropout() - sag, high.output(), 0.01);
        assertEquals(Seen.SMOKE, high.seen());
    }

    @Test
    void aLiftedLeadBringsTheStockVoltageBack() {
        Bench bench = bench("network-blade");
        Part.Trimmer trimmer = bench.takeTrimmer(20_000, 25, 0.1, 0);
        bench.solder(trimmer, UPPER);
        bench.lift(trimmer);
        bench.switchOn();
        assertEquals(bench.board().stock(), bench.output(), 0.003);
        bench.switchOff();
        bench.waitSeconds(60);
        bench.lower(trimmer);
        bench.switchOn();
        assertTrue(bench.output() < bench.board().stock() - 0.05);
    }

    /** Delta of three resistors: 198.78 ∥ (120.504 + 86) = 101.28 Ω, by hand. */
    @Test
    void theLoadSpoilsTheOhmReadingOfALeg() {
        Bench bench = bench("sound-board");
        double truth = 198.78 * (120.504 + 86) / (198.78 + 120.504 + 86);
        // 0.1 % and 5 counts of 10 mΩ (the meter) and up to 0.25 Ω (its leads).
        double read = bench.ohms(Node.ADJUST, Node.GROUND).value();
        assertEquals(truth, read - bench.leadsShorted().value(), 0.001 * truth + 0.1);
        assertTrue(read < 0.6 * bench.board().divider().lower().value());
    }

    @Test
    void swappedProbesReadTheSame() {
        Bench bench = bench("storage-controller");
        assertEquals(bench.ohms(Node.OUTPUT, Node.ADJUST), bench.ohms(Node.ADJUST, Node.OUTPUT));
    }

    @Test
    void ohmsOnALiveBoardAreNonsenseAndAreNoted() {
        Bench bench = bench("sound-board");
        bench.switchOn();
        Shown one = bench.ohms(Node.ADJUST, Node.GROUND);
        Shown other = bench.ohms(Node.ADJUST, Node.GROUND);
        assertNotEquals(one, other);
        assertTrue(bench.mishaps().contains(Bench.Mishap.OHMS_LIVE));
    }

    /** Falls with exp(−t/τ), τ = 2.5 s: from 3.3 V to below 0.1 V takes 8.75 s. */
    @Test
    void theRailNeedsTimeToDrain() {
        Bench bench = bench("sound-board");
        bench.switchOn();
        bench.switchOff();
        bench.waitSeconds(5);
        assertTrue(bench.volts(Node.OUTPUT, Node.GROUND).value() > 0.1);
        bench.waitSeconds(5);
        assertTrue(bench.volts(Node.OUTPUT, Node.GROUND).value() < 0.1);
    }

    @Test
    void solderingBeforeTheRailHasDrainedIsNoted() {
        Bench bench = bench("sound-board");
        bench.switchOn();
        bench.switchOff();
        bench.solder(bench.takeTrimmer(10_000, 25, 0.1, 0), LOWER);
        assertTrue(bench.mishaps().contains(Bench.Mishap.SOLDERED_LIVE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade"})
    void theReferenceCanBeMeasuredWhereItSits(String name) {
        Bench bench = bench(name);
        Node.Pair pair = Node.Pair.reference(bench.board().divider().place());
        bench.switchOn();
        // 0.05 % and 5 counts of 0.1 mV: the fine meter.
        assertEquals(
                bench.board().divider().reference().value(),
                bench.volts(pair.first(), pair.second()).value(),
                0.0012);
    }

    @Test
    void aNegativeRailReadsNegative() {
        Bench bench = drawn(Place.NEGATIVE_OUT_ADJ, 3);
        bench.switchOn();
        assertEquals(-bench.output(), bench.volts(Node.OUTPUT, Node.GROUND).value(), 0.01);
    }

    @Test
    void theChipFailsUnderLoadBelowItsFailVoltageAndIsWellAboveIt() {
        Bench bench = bench("sound-board");
        Part.Trimmer trimmer = bench.takeTrimmer(2000, 25, 0, 0);
        bench.solder(trimmer, LOWER);
        bench.switchOn();
        assertEquals(Seen.WELL, bench.runLoad(600));
        // Down slowly, until it shows what this board shows.
        double good = bench.output();
        while (bench.seen() == Seen.WELL && trimmer.trimmer().travel() > 0) {
            good = bench.output();
            bench.turn(trimmer, trimmer.trimmer().travel() - 0.005);
            bench.waitSeconds(60);
        }
        assertEquals(Seen.GLITCH, bench.seen());
        Board.Failing failing = bench.board().failing();
        assertTrue(good > failing.cold() - 3 * failing.spread() && good < failing.worst() + 0.03, "last good " + good);
        bench.switchOff();
        bench.turn(trimmer, 1);
        bench.switchOn();
        assertEquals(Seen.WELL, bench.runLoad(60));
    }

    /** Tchip = room + Rth·V·I: 22 + 11·3.34·1.2 = 66 °C in the end. */
    @Test
    void theChipWarmsUpUnderLoadAndCoolsDownWithout() {
        Bench bench = bench("sound-board");
        bench.switchOn();
        assertEquals(22, bench.chipTemperature(), 0.5);
        bench.runLoad(1800);
        double stock = bench.output();
        assertEquals(22 + 11 * stock * 1.2, bench.chipTemperature(), 0.5);
        bench.switchOff();
        bench.waitSeconds(1800);
        assertEquals(22, bench.chipTemperature(), 0.1);
    }

    @Test
    void waitingMovesTheClockAndNothingElseDoes() {
        Bench bench = bench("sound-board");
        long before = bench.ticks();
        bench.waitSeconds(1800);
        assertEquals(1_800_000, bench.ticks() - before);
    }

    @Test
    void theSameSeedGivesTheSameBench() {
        Bench one = bench("sound-board");
        Bench other = bench("sound-board");
        assertEquals(one.ohms(Node.OUTPUT, Node.GROUND), other.ohms(Node.OUTPUT, Node.GROUND));
        assertEquals(one.cell(), other.cell());
        assertEquals(
                one.takeTrimmer(10_000, 25, 0.1, 220).ohms(),
                other.takeTrimmer(10_000, 25, 0.1, 220).ohms());
        Bench another = new Bench(DemoBoards.named("sound-board"), Meter.fine(), Rehearsal.chance(8));
        assertNotEquals(
                one.takeTrimmer(10_000, 25, 0.1, 220).ohms(),
                another.takeTrimmer(10_000, 25, 0.1, 220).ohms());
        assertFalse(one.isOn());
    }
}
