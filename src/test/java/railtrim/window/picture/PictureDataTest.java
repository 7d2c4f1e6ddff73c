package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.Mark;
import railtrim.practice.Jobs;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.window.picture.LadderData.Kind;

/** What the pictures show is what the job says; the job is played on a practice board. */
class PictureDataTest {
    /** A regulator whose reference sits between output and adjust pin. */
    private static final List<State> JOB = Jobs.states("sound-board", 7);

    private static State first(Predicate<State> when) {
        return JOB.stream().filter(when).findFirst().orElseThrow();
    }

    /** The first state in which that reading is still to come. */
    private static State asking(String step, String field) {
        return first(state -> state.current().step().id().equals(step)
                && state.current().missing().contains(field)
                && state.current().open().isEmpty());
    }

    @Test
    void theProbesFollowTheReadingThatIsAskedFor() {
        assertEquals(
                Optional.of(Place.OUT_ADJ), asking("legs", "leg.ohms").figures().place());
        assertEquals(Spot.pair(PinRole.ADJUST, PinRole.GROUND), spots("legs", "leg.ohms"));
        State reversed =
                first(state -> state.current().missing().equals(List.of("leg.reversed", "other.ohms", "rail.ohms")));
        assertEquals(
                Spot.pair(PinRole.GROUND, PinRole.ADJUST), Touch.of(reversed).spots());
        State other = first(state -> state.current().missing().equals(List.of("other.ohms", "rail.ohms")));
        assertEquals(Spot.pair(PinRole.OUTPUT, PinRole.ADJUST), Touch.of(other).spots());
        State rail = first(state -> state.current().missing().equals(List.of("rail.ohms")));
        assertEquals(Spot.pair(PinRole.OUTPUT, PinRole.GROUND), Touch.of(rail).spots());
    }

    private static List<Spot> spots(String step, String field) {
        return Touch.of(asking(step, field)).spots();
    }

    @Test
    void theReferenceIsClippedNotProbed() {
        Touch live = Touch.of(asking("ref.on", "ref.volts"));
        assertTrue(live.clips());
        assertEquals(Spot.pair(PinRole.OUTPUT, PinRole.ADJUST), live.spots());
        assertFalse(Touch.of(asking("legs", "leg.ohms")).clips());
    }

    @Test
    void oneLeadIsLiftedOnlyForTheTrimmerOnItsOwn() {
        assertFalse(Touch.of(asking("setting", "setting.total")).lift());
        State alone = first(state -> state.current().missing().equals(List.of("setting.trimmer", "setting.again")));
        assertTrue(Touch.of(alone).lift());
    }

    @Test
    void aFirstReadingIsHiddenWhileItsSecondIsTaken() {
        State again = asking("agree", "leg.again");
        assertTrue(again.figures().readLeg().isPresent());
        assertEquals(OptionalDouble.empty(), DividerData.of(again).lower());
        State ends = first(state -> state.current().step().id().equals("ends")
                && state.figures().number("trimmer.max").isPresent()
                && state.current().missing().contains("trimmer.max.again"));
        assertEquals(OptionalDouble.empty(), TrimmerData.of(ends).most());
        State setting = first(state -> state.current().missing().equals(List.of("setting.again")));
        assertEquals(
                OptionalDouble.empty(),
                DividerData.of(setting).added().orElseThrow().ohms());
    }

    @Test
    void theAddedPartIsPlannedThenATrimmerThenAResistor() {
        assertEquals(Optional.empty(), added(asking("place", "place.pair")));
        assertEquals(Optional.of(Added.Kind.PLANNED), added(asking("legs", "leg.ohms")));
        assertEquals(Optional.of(Added.Kind.TRIMMER), added(asking("proof", "proof.total")));
        assertEquals(Optional.of(Added.Kind.RESISTOR), added(asking("fit.proof", "fit.total")));
    }

    private static Optional<Added.Kind> added(State state) {
        return DividerData.of(state).added().map(Added::kind);
    }

    @Test
    void theTrimmersOwnOhmsAreWithoutTheStopResistor() {
        State proof = asking("proof", "proof.total");
        Added added = DividerData.of(proof).added().orElseThrow();
        double both = proof.figures().ohms("trimmer.max").orElseThrow();
        assertEquals(both, added.ohms().orElseThrow() + added.stop().orElse(0), 1e-9);
    }

    @Test
    void aDeadRailIsNotTheVoltageNow() {
        State justOn =
                first(state -> state.current().step().id().equals("first.on") && state.power() == State.Power.ON);
        assertEquals(OptionalDouble.empty(), LadderData.of(justOn.figures()).volts(Kind.NOW));
        State loaded = asking("first.load", "first.loaded");
        assertTrue(LadderData.of(loaded.figures()).volts(Kind.NOW).isPresent());
    }

    @Test
    void theLadderShowsOnlyWhatIsKnown() {
        assertEquals(List.of(), LadderData.of(JOB.get(0).figures()).rungs());
        LadderData last = LadderData.of(JOB.get(JOB.size() - 1).figures());
        for (Kind kind : List.of(Kind.STOCK, Kind.START, Kind.FAULT, Kind.TARGET, Kind.FITTED, Kind.FLOOR)) {
            assertTrue(last.volts(kind).isPresent(), kind.name());
        }
        assertTrue(
                last.volts(Kind.FAULT).orElseThrow() < last.volts(Kind.TARGET).orElseThrow());
        assertTrue(
                last.volts(Kind.FITTED).orElseThrow() < last.volts(Kind.STOCK).orElseThrow());
    }

    @Test
    void theLineOfAnHonestBoardGoesThroughItsReadings() {
        LineData line = LineData.of(JOB.get(JOB.size() - 1).figures());
        assertTrue(line.readings().size() >= 3, "as it was, with the trimmer, with the resistor");
        for (LineData.Reading reading : line.readings()) {
            double onLine =
                    line.reference().orElseThrow() + line.fit().orElseThrow().above(reading.across());
            // Two standard uncertainties of the meter: as far as an honest reading may be off (GUM, coverage factor 2).
            assertEquals(onLine, reading.volts(), 2 * reading.uncertainty(), "added " + reading.added());
        }
    }

    @Test
    void aLineThroughAPublishedCircuitMeetsItsVoltages() {
        // 120 Ω and 220 Ω, 1.25 V, 60 µA: x = 10.476667 mA; 1 kΩ added gives 3.139235 V (by the formula of SNOS412Q
        // §8.1).
        LineData.Fit fit = new LineData.Fit(220, 0.010476667, 0);
        assertEquals(3.554867, 1.25 + fit.above(0), 1e-6);
        assertEquals(3.139235, 1.25 + fit.above(1 / 1000.0), 1e-6);
    }

    @Test
    void theBudgetPilesUpFromTheFaultToTheRecommendedVoltage() {
        BudgetData budget =
                BudgetData.of(asking("budget", "target.volts").figures()).orElseThrow();
        double top = budget.fail()
                + budget.pieces().stream().mapToDouble(BudgetData.Piece::volts).sum();
        // The recommended voltage is rounded up to 5 mV.
        assertEquals(budget.recommended(), top, 0.005);
        assertTrue(budget.pieces().stream().allMatch(piece -> piece.volts() > 0));
    }

    /** Of the demo job the second way down was good at 2.684 V, and the third failed at 2.698 V. */
    @Test
    void whatWasGoodBelowTheFaultOfAnotherRunIsNotShownAsGood() {
        Path shipped = Path.of("demo-data", "finished-job.railtrim");
        State state =
                Procedure.builtIn().state(JobCheck.of(shipped, Mark.forShow()).job());
        assertTrue(state.figures().lastGood().orElseThrow()
                < state.figures().fault().orElseThrow());
        assertTrue(LadderData.of(state.figures()).volts(Kind.LAST_GOOD).isEmpty());
        // While a way down goes on, where it was good last is where it goes on from.
        State deep = first(each -> each.figures().nextTarget().isPresent()
                && each.figures().trials().size() > 3);
        assertTrue(LadderData.of(deep.figures()).volts(Kind.LAST_GOOD).isPresent());
    }

    @Test
    void theChosenResistorComesFirst() {
        ResistorsData hand = ResistorsData.of(asking("hand", "hand.ohms").figures());
        assertTrue(hand.rows().get(0).picked());
        assertEquals(1, hand.rows().stream().filter(ResistorsData.Row::picked).count());
        assertTrue(hand.rows().size() <= ResistorsData.MOST);
    }

    @Test
    void inTheHandTheChosenResistorIsShownAloneAndItsFirstReadingOnlyWithTheSecond() {
        State first = asking("hand", "hand.ohms");
        HandDrawing untouched = (HandDrawing) Pictures.drawing(Step.Picture.RESISTORS, first, Samples.WORDS);
        assertTrue(untouched.row().picked());
        assertTrue(untouched.measured().isEmpty());
        State second = first(state -> state.current().missing().equals(List.of("hand.again")));
        assertTrue(second.figures().ohms("hand.ohms").isPresent());
        HandDrawing hidden = (HandDrawing) Pictures.drawing(Step.Picture.RESISTORS, second, Samples.WORDS);
        assertTrue(hidden.measured().isEmpty(), "the first reading must not sway the second");
    }

    @Test
    void aCutMiddleLegIsProbedAtTheTab() {
        PackageData data = new PackageData(
                Optional.of(Outline.TO_252),
                List.of(
                        Optional.of(PinRole.ADJUST),
                        Optional.of(PinRole.OUTPUT),
                        Optional.of(PinRole.INPUT),
                        Optional.of(PinRole.OUTPUT)),
                Spot.pair(PinRole.OUTPUT, PinRole.ADJUST),
                false,
                false);
        assertEquals(Optional.empty(), data.spotAt(2));
        assertEquals(Spot.Probe.RED, data.spotAtTab().orElseThrow().probe());
        assertEquals(Spot.Probe.BLACK, data.spotAt(1).orElseThrow().probe());
    }

    @Test
    void aPackageWithoutAGroundPinSendsTheBlackProbeElsewhere() {
        PackageData data = new PackageData(
                Optional.of(Outline.SOT_223),
                List.of(Optional.of(PinRole.ADJUST), Optional.of(PinRole.OUTPUT), Optional.of(PinRole.INPUT)),
                Spot.output(),
                false,
                false);
        assertTrue(data.groundElsewhere());
    }

    @Test
    void everyOutlineIsDrawnWithAllItsPins() {
        for (Outline outline : Outline.values()) {
            OutlineShape shape = OutlineShape.of(outline);
            assertEquals(outline.pins(), shape.pins().size(), outline.id());
            assertEquals(outline.hasTab(), shape.tab().isPresent(), outline.id());
        }
    }

    @Test
    void aStepThatIsReadAgainShowsItsOwnPictureNotThatOfTheCurrentStep() {
        State soldering = asking("solder", "solder.pair");
        String says = Screen.on(() -> Pictures.of(
                        Step.Picture.DIVIDER, soldering.step("legs"), soldering, Samples.WORDS, Answering.none())
                .getAccessibleText());
        assertTrue(says.contains("The red probe goes to: adjust."), says);
        assertTrue(DividerData.of(soldering).solder());
    }

    @Test
    void aBoardThatIsMadeSafeIsSwitchedOffWhateverItsStepAsksFor() {
        State watching = asking("down.watch", "down.seen");
        assertEquals(Optional.empty(), BoardData.of(watching).turn());
        Job job = watching.job();
        Entry last = job.entries().get(job.entries().size() - 1);
        Fact pressed = new Fact.Alarm("down.watch", "pressed");
        State safe = Procedure.builtIn()
                .state(job.with(new Entry(last.sequence() + 1, last.time(), last.session(), last.tick(), pressed)));
        assertEquals(State.Power.ON, safe.power());
        assertEquals(Optional.of(false), BoardData.of(safe).turn());
    }

    /** The rail read dead before the power came on says nothing of a board that is on. */
    @Test
    void aBoardThatWasSwitchedOnDoesNotShowTheRailItHadBefore() {
        State before = asking("ref.on", "ref.on.switch");
        assertEquals(0, DividerData.of(before).rail().orElseThrow(), 0.1);
        State on = asking("ref.off", "ref.off.switch");
        assertEquals(State.Power.ON, on.power());
        assertEquals(OptionalDouble.empty(), DividerData.of(on).rail());
        assertEquals(OptionalDouble.empty(), BoardData.of(on).rail());
        State saidOff = first(state -> state.current().missing().equals(List.of("ref.off.rail")));
        assertEquals(State.Power.OFF, saidOff.power());
        assertEquals(OptionalDouble.empty(), BoardData.of(saidOff).rail(), "it is off by word, and not read yet");
    }
}
