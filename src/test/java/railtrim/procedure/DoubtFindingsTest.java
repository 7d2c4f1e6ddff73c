package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Meter;

/** What is said about doubt and heat along a whole job on a demo board, as played and with single readings changed. */
class DoubtFindingsTest {
    private static final List<Entry> PLAYED = new Rehearsal(Procedure.builtIn(), Meter.middle())
            .play(Board.of(BuiltIn.text("demo-data/boards/sound-board.json")), 7)
            .job()
            .entries();

    /** The figures of the whole job with some readings multiplied. */
    private static Figures with(Map<String, Double> factors, String... without) {
        List<String> left = List.of(without);
        List<Entry> entries = PLAYED.stream()
                .filter(entry -> !left.contains(Figures.fieldOf(entry.fact()).orElse("")))
                .map(entry -> entry.fact() instanceof Fact.Reading reading && factors.containsKey(reading.field())
                        ? new Entry(
                                entry.sequence(),
                                entry.time(),
                                entry.session(),
                                entry.tick(),
                                new Fact.Reading(
                                        reading.step(),
                                        reading.field(),
                                        reading.value() * factors.get(reading.field()),
                                        reading.unit(),
                                        reading.typed()))
                        : entry)
                .toList();
        Figures figures = new Figures(
                new Job("changed", entries), RegulatorFamilies.of(BuiltIn.text("regulators.json")), new Recall());
        figures.take(entries);
        return figures;
    }

    private static Figures played() {
        return with(Map.of());
    }

    /**
     * The resistor on the other leg, or not joined at all: its own leg reads 1.5 % higher than with the trimmer in place, which the meter's accuracy
     * alone would allow (±0.9 % + 2 twice).
     */
    @Test
    void aLegThatReadsHigherThanWithTheTrimmerShowsThatTheResistorIsNotAcrossIt() {
        Figures figures = with(Map.of("fit.total", 1.015));
        double read = figures.ohms("fit.total").orElseThrow();
        Field.Expected range = Ranges.total(figures, "hand.ohms").orElseThrow();
        assertTrue(read > range.low() && read < range.high(), "the range alone lets it pass");

        List<Finding> findings = LegProof.of(figures);
        assertEquals(List.of("verdict.fit-not-across"), keys(findings));
        assertTrue(findings.get(0).blocks());
        assertEquals("fit", findings.get(0).backTo());
    }

    /** On the other leg, turned right down, it takes this one down through the board's load, but 6 % less far; ±10 % would let that pass. */
    @Test
    void aLegThatFallsLessFarThanTheTrimmerRightDownShowsThatItIsOnTheOtherOne() {
        Figures figures = with(Map.of("smooth.low", 1.08));
        double read = figures.ohms("smooth.low").orElseThrow();
        assertTrue(read < Ranges.totalAtLowEnd(figures).orElseThrow().high(), "the range alone lets it pass");
        assertEquals(List.of("verdict.low-end-high"), keys(LegProof.lowEnd(figures)));
        assertEquals(List.of(), keys(LegProof.lowEnd(played())));
        assertEquals(List.of(), keys(LegProof.lowEnd(with(Map.of("smooth.low", 1.02)))));
    }

    /** The trimmer is gone by then and its readings cannot be taken again: one of them typed wrongly does not hold up a sound joint. */
    @Test
    void oneEarlierReadingThatIsOffDoesNotHoldUpASoundJoint() {
        assertEquals(List.of(), keys(LegProof.of(played())));
        assertEquals(List.of(), keys(LegProof.of(with(Map.of("setting.total", 0.985)))));
        assertEquals(List.of(), keys(LegProof.of(with(Map.of("leg.ohms", 0.985)))));
    }

    private static List<String> keys(List<Finding> findings) {
        return findings.stream().map(finding -> finding.message().key()).toList();
    }

    /** A chip takes another current at another voltage: then the three do not belong together, and the voltages count. */
    @Test
    void aLoadThatIsNoPlainResistorContradictsNothing() {
        Figures figures = with(Map.of("rail.ohms", 1.3));
        assertEquals(List.of("verdict.agrees", "verdict.differs-by-ohms"), keys(AgreeFindings.of(figures)));
        assertTrue(AgreeFindings.of(figures).stream().noneMatch(Finding::blocks));
    }

    /** With 0.3 Ω on the rail both legs read alike, whatever they are: the delta is refused and nothing is said of it. */
    @Test
    void aNearShortOnTheRailSaysNothingOfTheLegs() {
        assertTrue(with(Map.of("rail.ohms", 0.005)).legByOhms().isEmpty());
    }

    /** The sound board’s load is a plain resistor, so the delta of the three resistances has to give the same leg as the voltages. */
    @Test
    void theThreeResistancesAloneConfirmTheLeg() {
        Figures figures = played();
        double truth = figures.agreement().orElseThrow().leg();
        assertEquals(truth, figures.legByOhms().orElseThrow().value(), 0.05 * truth);
        assertEquals(List.of("verdict.agrees", "verdict.agrees-by-ohms"), keys(AgreeFindings.of(figures)));
    }

    @Test
    void theReadingsOfAGoodJobLieOnOneLine() {
        assertEquals(4, played().points().size());
        assertEquals(List.of(), Doubts.offTheLine(played()));
    }

    @Test
    void aMisreadVoltageIsNamedByTheStepItBelongsTo() {
        // 10 % of 2.9 V is some 20 standard uncertainties of a middling meter (±(0.5 % + 3) of 6000 counts).
        assertEquals(List.of("verdict.off-the-line.fitted"), keys(Doubts.offTheLine(with(Map.of("fit.loaded", 1.1)))));
        assertEquals(List.of("verdict.off-the-line.soak"), keys(Doubts.offTheLine(with(Map.of("soak.volts", 1.1)))));
    }

    @Test
    void withoutTheOhmReadingsOneOfTwoLikeReadingsCannotBeBlamed() {
        // Setting and fitted resistor are nearly the same resistance: only the leg's own bounds tell which is wrong.
        List<String> told = keys(Doubts.offTheLine(with(Map.of("fit.loaded", 1.1), "leg.ohms", "other.ohms")));
        assertEquals(List.of("verdict.off-the-line.unsure"), told);
    }

    @Test
    void aLegFromTwoNearVoltagesIsCalledTooCoarseAndTheReadingThatHelpsIsNamed() {
        Figures start = with(Map.of(), "fit.loaded", "hand.ohms", "soak.volts", "setting.trimmer");
        Finding told = Doubts.leg(start).get(0);
        assertEquals("verdict.leg-solved-coarse", told.message().key());
        // With the setting and the resistor read it is told outright.
        assertEquals(List.of("verdict.leg-solved"), keys(Doubts.leg(played())));
        double legAtLast = played().legDoubt().orElseThrow().expanded();
        assertTrue(legAtLast < start.legDoubt().orElseThrow().expanded() / 3, legAtLast + " Ω");
    }

    @Test
    void conductancesThatSubtractToNothingAreCalledTooCoarse() {
        // The trimmer's setting is four times the leg: the difference of two readings leaves some ten per cent or more.
        assertEquals(List.of("verdict.difference-coarse"), keys(Doubts.difference(played())));
        // A fine meter's ±(0.1 % + 5 of 50,000) can tell it; here only the readings across the leg matter.
        Figures high = with(Map.of(
                "setting.total",
                played().ohms("leg.ohms").getAsDouble()
                        / played().ohms("setting.total").getAsDouble()));
        assertEquals(List.of("verdict.difference-open"), keys(Doubts.difference(high)));
    }

    @Test
    void voltagesAreShownWithTheirUncertainty() {
        assertTrue(Doubts.reading(played(), 3.303).matches("3\\.303 V ± 0\\.0\\d+ V"), Doubts.reading(played(), 3.303));
        double hand = played().ohms("hand.ohms").orElseThrow();
        assertTrue(Doubts.volts(played(), hand, 2.913).contains(" ± "));
    }

    @Test
    void theRegulatorIsSaidToGetHotterBeforeTheVoltageIsSet() {
        // 5 V in, 3.3 V out: above half the input the loss V·(Vin − V) rises as V falls.
        List<String> told = keys(HeatFindings.outlook(played()));
        assertEquals(List.of("verdict.chip-outlook", "verdict.regulator-outlook"), told);
        List<String> bare = keys(HeatFindings.outlook(with(Map.of(), "temp.chip", "temp.reg", "temp.room")));
        assertEquals(List.of("verdict.chip-outlook-power", "verdict.regulator-outlook-power"), bare);
    }

    @Test
    void anInputNearTheOutputLeavesTheRegulatorCooler() {
        // 3.4 V to 2.9 V from an input of 12 V: below half of it the loss falls.
        assertFalse(keys(HeatFindings.outlook(with(Map.of("input.volts", 3.0)))).contains("verdict.regulator-outlook"));
    }

    @Test
    void aChipHotterThanItsPowerExplainsIsToldOfAsOdd() {
        assertTrue(keys(HeatFindings.measured(played())).contains("verdict.chip-as-expected"));
        assertTrue(keys(HeatFindings.measured(with(Map.of("fit.temp.chip", 1.3))))
                .contains("verdict.chip-not-as-expected"));
    }

    @Test
    void aRegulatorPastItsJunctionLimitIsWarnedOf() {
        assertEquals(List.of("verdict.junction"), keys(HeatFindings.junction(played())));
        assertEquals(List.of("verdict.junction-hot"), keys(HeatFindings.junction(with(Map.of("temp.reg", 2.6)))));
        // Without the current the power is not known in watts, and nothing is said.
        assertEquals(List.of(), HeatFindings.junction(with(Map.of(), "load.current")));
    }

    @Test
    void theThermalResistanceStaysWhenTheVoltageFalls() {
        Warmth warmth = Warmth.of(played());
        double before = warmth.chip().resistanceBefore().orElseThrow();
        double after = warmth.chip().resistanceAfter().orElseThrow();
        // Thermometers of two degrees on a rise of thirty to forty.
        assertEquals(before, after, 0.12 * before);
    }

    @Test
    void everySlipIsToldWorstFirst() {
        List<Slip> slips = played().slips();
        assertTrue(slips.size() >= 9, "seven faults and two pairs of neighbouring pins: " + slips);
        assertTrue(slips.get(0).harmful());
        assertFalse(slips.get(slips.size() - 1).harmful());
        Words words = Words.english();
        assertTrue(Stream.of("Pins 1–2 bridged: adjust, output", "Added part comes off")
                .allMatch(
                        told -> slips.stream().anyMatch(slip -> slip.told(words).equals(told))));
    }

    @Test
    void aLowDropoutPartDrivenFullyOnIsReckonedToLetTheWholeInputThrough() {
        Figures figures =
                HalfDone.on("storage-controller", "solder").course.state().figures();
        assertTrue(figures.family().orElseThrow().dropout() < 1);
        Slip open = figures.slips().stream()
                .filter(slip -> slip.id().equals("lower-open"))
                .findFirst()
                .orElseThrow();
        assertEquals(figures.input().orElseThrow(), open.volts().orElseThrow(), 1e-9);
        assertTrue(open.harmful());
    }

    @Test
    void beforeSolderingTheWrongPinsAreReckonedWithTheTrimmerTurnedDown() {
        String[] later = PLAYED.stream()
                .flatMap(entry -> Figures.fieldOf(entry.fact()).stream())
                .filter(field -> field.matches("(solder|setting|fit|hand)\\..*"))
                .toArray(String[]::new);
        Figures before = with(Map.of(), later);
        Slip wrong = before.slips().stream()
                .filter(slip -> slip.id().equals("added-wrong-leg"))
                .findFirst()
                .orElseThrow();
        double atMaximum = before.stock().orElseThrow() + 0.1;
        assertTrue(wrong.volts().orElse(99) > atMaximum, wrong.toString());
        assertTrue(wrong.harmful());
    }
}
