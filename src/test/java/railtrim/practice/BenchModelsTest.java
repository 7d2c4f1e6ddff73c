package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import railtrim.circuit.Leg;
import railtrim.quantity.Accuracy;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** What the practice bench takes from real boards, meters, trimmers and irons, each held to a sum worked out by hand. */
class BenchModelsTest {
    private static final Node.Pair LOWER = Node.Pair.of(Leg.LOWER);
    private static final Node.Pair UPPER = Node.Pair.of(Leg.UPPER);
    private static final String SOUND = DemoBoards.text("sound-board");

    /** Shows a nanovolt and is never off. */
    private static final Meter IDEAL = new Meter(
            "ideal",
            List.of(new Meter.Range(1e3, new Accuracy(0, 0, 1e-9))),
            List.of(new Meter.Range(1e9, new Accuracy(0, 0, 1e-6))));

    private static Bench bench(String json) {
        return new Bench(Board.of(json), IDEAL, Rehearsal.chance(7));
    }

    private static String with(String was, String becomes) {
        assertTrue(SOUND.contains(was), was);
        return SOUND.replace(was, becomes);
    }

    private static double rail(Bench bench) {
        return bench.volts(Node.OUTPUT, Node.GROUND).value();
    }

    // ---- the board ----

    /** 0.3 Ω at 1.2 A under load with the chip at stock: 5.06 V less 0.36 V is 4.70 V, a few mV more for the sagged output's smaller current. */
    @Test
    void theInputGivesWayUnderLoad() {
        Bench bench = bench(with("\"input\": 5.06,", "\"input\": 5.06, \"input-ohms\": 0.3,"));
        bench.switchOn();
        bench.runLoad(1);
        double amperes = 1.2 * bench.output() / bench.board().stock();
        assertEquals(5.06 - 0.3 * amperes, bench.volts(Node.INPUT, Node.GROUND).value(), 1e-6);
        bench.stopLoad();
        // Idle it draws 0.6 of that.
        assertEquals(
                5.06 - 0.3 * 0.6 * amperes, bench.volts(Node.INPUT, Node.GROUND).value(), 0.001);
    }

    /** Another program draws 2.4 A: 5.06 V less 0.72 V less 1.1 V leaves 3.24 V, less than the 3.315 V it is set for; the named load leaves 3.6 V. */
    @Test
    void aRegulatorThatRunsOutOfInputGivesWhatThereIs() {
        String other = ", \"other\": { \"name\": \"twice the work\", \"share\": 2, \"fails-higher\": 0 }";
        Bench bench = bench(with("\"input\": 5.06,", "\"input\": 5.06, \"input-ohms\": 0.3,")
                .replace("\"idle\": 0.6", "\"idle\": 0.6" + other));
        bench.switchOn();
        bench.runLoad(1);
        assertEquals(bench.board().stock() - 0.002 * 1.2, rail(bench), 1e-6);
        bench.runOther(1);
        assertEquals(5.06 - 1.1 - (0.3 + 0.002) * 2.4, rail(bench), 1e-6);
    }

    /** A quarter of the current leaks and doubles for every 25 K: 25 K cooler it leaks half, so that 7/8 of 1.2 A are left. */
    @Test
    void leakageGrowsWithTheWarmthOfTheChip() {
        Board board = Board.of(with("\"idle\": 0.6", "\"idle\": 0.6, \"leakage\": 0.25"));
        double warm = board.warmAtStock();
        double stock = board.stock();
        assertEquals(1.2, board.amperes(stock, Board.Work.NAMED, warm), 1e-9);
        assertEquals(1.2 * 7 / 8, board.amperes(stock, Board.Work.NAMED, warm - 25), 1e-9);
        assertEquals(1.2 * 5 / 4, board.amperes(stock, Board.Work.NAMED, warm + 25), 1e-9);
        // It does not hang on the work: idle, 0.6 of the other three quarters are drawn.
        assertEquals(1.2 * (0.25 + 0.6 * 0.75), board.amperes(stock, Board.Work.IDLE, warm), 1e-9);
    }

    /** Half the clock, half the switching current. */
    @Test
    void theSwitchingCurrentFollowsTheClock() {
        Board board = Board.of(with("\"idle\": 0.6", "\"idle\": 0.6, \"clock\": 0.5"));
        assertEquals(0.6, board.amperes(board.stock()), 1e-9);
    }

    /** A quarter of the minimum load is drawn: the output rises by three quarters of the rise with nothing drawn, 2 %. */
    @Test
    void belowItsMinimumLoadTheOutputRises() {
        Board.Divider divider = Board.of(
                        with("\"input\": 5.06,", "\"input\": 5.06, \"minimum-load\": 0.01, \"unloaded-rise\": 0.02,"))
                .divider();
        assertEquals(1.015, divider.rise(0.0025), 1e-12);
        assertEquals(1.02, divider.rise(0), 1e-12);
        assertEquals(1, divider.rise(0.01), 1e-12);
        assertEquals(1, divider.rise(1), 1e-12);
    }

    /** On the studio clock the other program fails 12 mV higher than the named load. */
    @Test
    void anotherProgramFailsAtAnotherVoltage() {
        Board board = DemoBoards.named("studio-clock");
        assertEquals(board.failing().worst() + 0.012, board.worstFail(), 1e-12);
        Fate fate = new Fate(board, new Draw(board));
        fate.powerUp(new java.util.Random(1));
        // The same power-up, the cold chip: between the two fail voltages, whatever chance added to both.
        double low = failsAt(board, Board.Work.NAMED);
        double high = failsAt(board, Board.Work.OTHER);
        assertEquals(0.012, high - low, 2e-4);
    }

    private static double failsAt(Board board, Board.Work work) {
        double volts = board.stock();
        while (true) {
            Fate fate = new Fate(board, new Draw(board));
            fate.powerUp(new java.util.Random(1));
            fate.feel(volts, work);
            if (fate.failed()) {
                return volts;
            }
            volts -= 1e-4;
        }
    }

    // ---- the meter ----

    /** On the studio clock the legs are 10 kΩ: 10 MΩ beside one of them makes it 0.1 % less, and the output moves with it. */
    @Test
    void aMeterOnALegDrawsItsOwnCurrent() {
        Bench bench = bench(DemoBoards.text("studio-clock"));
        bench.switchOn();
        Board.Divider divider = bench.board().divider();
        double lower = 1 / (1 / divider.lower().value() + 1 / 10e6);
        double reference = divider.reference().value();
        // The reference sits across the lower leg, and stays.
        assertEquals(reference, bench.volts(Node.ADJUST, Node.GROUND).value(), 1e-8);
        double loaded = reference
                + (reference / lower + divider.bias()) * divider.upper().value();
        double upper = 1 / (1 / divider.upper().value() + 1 / 10e6);
        double across = (reference / divider.lower().value() + divider.bias()) * upper;
        double sag = divider.outputOhms() * bench.board().amperes(bench.board().stock(), Board.Work.IDLE, 21);
        assertEquals(across - sag, bench.volts(Node.OUTPUT, Node.ADJUST).value(), 1e-5);
        assertTrue(loaded > bench.board().stock() + 0.002, "the meter on the lower leg raises the output");
        assertEquals(bench.board().stock() - sag, rail(bench), 1e-5, "and on the output itself it changes nothing");
    }

    /** On one of 2000 counts, 3.47 V shows on its 20 V range; turned to 2 V it overflows, turned to 200 V one decimal is left. */
    @Test
    void aRangeTurnedByHandOverflowsOrLosesDigits() {
        VirtualMeter meter = new VirtualMeter(Meter.basic(), Rehearsal.chance(3));
        String itself = meter.volts(3.47).text();
        assertTrue(itself.matches("3\\.\\d\\d V"), itself);
        meter.nextRange(Unit.VOLT);
        assertTrue(meter.volts(3.47).overload(), "0.2 V");
        meter.nextRange(Unit.VOLT);
        assertTrue(meter.volts(3.47).overload(), "2 V");
        meter.nextRange(Unit.VOLT);
        assertEquals(itself, meter.volts(3.47).text(), "20 V");
        meter.nextRange(Unit.VOLT);
        assertTrue(meter.volts(3.47).text().matches("3\\.\\d V"), "200 V");
        meter.nextRange(Unit.VOLT);
        assertTrue(meter.rangeByHand(Unit.VOLT).isEmpty());
        assertEquals(itself, meter.volts(3.47).text());
    }

    /** The gain wanders by at most three tenths of the promised 0.05 %, up and down; 4 hours on it has turned to the other side. */
    @Test
    void theGainWandersOverTheDayAndStaysSmall() {
        Set<Double> read = new TreeSet<>();
        VirtualMeter meter = new VirtualMeter(Meter.fine(), Rehearsal.chance(9));
        for (int minute = 0; minute < 8 * 60; minute += 5) {
            meter.at(60 * minute);
            read.add(meter.volts(3.0).value());
        }
        double span = new java.util.ArrayList<>(read).get(read.size() - 1)
                - read.iterator().next();
        assertTrue(read.size() > 4, "it is never quite the same: " + read);
        // Twice 0.3 · 0.05 % of 3 V is 0.9 mV, and a count of 0.1 mV for rounding.
        assertEquals(0.0009, span, 0.00011);
    }

    /** A dead board gives the same ohms twice; live, or still charged, nonsense. */
    @Test
    void ohmsOnAChargedBoardAreNonsenseUntilItHasDrained() {
        Bench bench = bench(SOUND);
        bench.switchOn();
        bench.switchOff();
        assertTrue(bench.output() > 3);
        double charged = bench.ohms(Node.ADJUST, Node.GROUND).value();
        assertTrue(bench.mishaps().contains(Bench.Mishap.OHMS_LIVE));
        bench.waitSeconds(60);
        double dead = bench.ohms(Node.ADJUST, Node.GROUND).value();
        assertEquals(dead, bench.ohms(Node.ADJUST, Node.GROUND).value(), 0);
        assertTrue(Math.abs(charged - dead) > 1, charged + " and " + dead);
    }

    // ---- the trimmer ----

    /** In the middle the contact adds at most 0.4 notches of the total, in the last turn at either end up to 3; the same place always the same. */
    @Test
    void theTrackIsRoughInItsLastTurn() {
        double middle = 0;
        double end = 0;
        for (int specimen = 0; specimen < 20; specimen++) {
            VirtualTrimmer trimmer = new VirtualTrimmer(10_000, 25, 0, Rehearsal.chance(specimen));
            for (int notch = 1; notch < 60; notch++) {
                end = Math.max(end, step(trimmer, notch * trimmer.finest()));
                middle = Math.max(middle, step(trimmer, 0.5 + notch * trimmer.finest()));
            }
        }
        // A notch is 0.05 % of 10 kΩ, 5 Ω: 0.4 of it is 2 Ω, three are 15 Ω; beside the notch itself.
        assertTrue(middle < 5 + 2 && middle > 5 + 1, "middle " + middle);
        assertTrue(end < 5 + 15 && end > 5 + 10, "end " + end);
    }

    private static double step(VirtualTrimmer trimmer, double travel) {
        trimmer.turnTo(travel);
        double before = trimmer.ohms();
        assertEquals(before, trimmer.ohms(), 0);
        trimmer.turnTo(travel + trimmer.finest());
        return Math.abs(trimmer.ohms() - before);
    }

    // ---- the iron ----

    /** The leg is open where it was soldered badly once the time is up, with the power on; off, the time stands still. */
    @Test
    void aDryJointOpensOnceTheBoardHasBeenOnForSoLong() {
        Bench bench = bench(SOUND);
        Part part = bench.takeResistors(List.of(1000.0), Part.Joined.SERIES, 0);
        bench.solder(part, LOWER);
        bench.leaveDry(part, 100);
        bench.waitSeconds(3600);
        bench.switchOn();
        bench.waitSeconds(90);
        double held = rail(bench);
        assertEquals(bench.board().withAdded(1000), held, 0.005);
        assertFalse(bench.opened());
        bench.waitSeconds(20);
        assertTrue(bench.opened());
        assertEquals(bench.board().stock(), rail(bench), 0.005);
        assertTrue(bench.mishaps().isEmpty(), "back at stock and no higher");
        // Soldered again, it holds.
        bench.switchOff();
        bench.waitSeconds(60);
        bench.solder(part, LOWER);
        bench.switchOn();
        bench.waitSeconds(3600);
        assertEquals(held, rail(bench), 0.005);
    }

    /** A blob of 50 mΩ across the lower leg leaves the reference; across the upper one all there is, which kills the chip. */
    @Test
    void aBridgeShortsItsLeg() {
        Part blob = new Part.Fixed("solder", 0.05);
        Bench low = bench(SOUND);
        low.solder(blob, LOWER);
        low.switchOn();
        assertEquals(1.247, rail(low), 0.003);
        assertTrue(low.mishaps().isEmpty());
        Bench high = bench(SOUND);
        high.solder(blob, UPPER);
        high.switchOn();
        assertTrue(rail(high) > 3.8, "5.06 V less 1.1 V");
        assertTrue(high.mishaps().contains(Bench.Mishap.ABOVE_STOCK));
    }

    /** From the output to ground it is a load and no divider: ohms fall, the voltage stays. A short there brings the output down. */
    @Test
    void aPartOnTheWrongPinsShowsInOhms() {
        Bench bench = bench(SOUND);
        double before = bench.ohms(Node.OUTPUT, Node.GROUND).value();
        bench.solder(bench.takeResistors(List.of(100.0), Part.Joined.SERIES, 0), Node.Pair.RAIL);
        double leads = bench.leadsShorted().value();
        assertEquals(
                1 / (1 / (before - leads) + 1 / 100.0),
                bench.ohms(Node.OUTPUT, Node.GROUND).value() - leads,
                0.001);
        bench.switchOn();
        assertEquals(bench.board().stock(), rail(bench), 0.005);
        bench.switchOff();
        bench.waitSeconds(60);
        bench.solder(new Part.Fixed("solder", 0.05), Node.Pair.RAIL);
        bench.switchOn();
        assertEquals(0, rail(bench), 1e-9);
    }
}
