package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a careful procedure asks of its own list of steps; the numbers are in DEVELOPERS.md. */
class RequirementsTest {
    private static final List<Step> STEPS = HalfDone.PROCEDURE.steps();
    private static final Words WORDS = Words.english();

    /** 7: what is read a third time is not read any more. */
    @Test
    void noCautionIsShownMoreThanTwiceInAJob() {
        Map<String, Integer> shown = new HashMap<>();
        STEPS.forEach(step -> step.cautions().forEach(caution -> shown.merge(caution, 1, Integer::sum)));
        shown.forEach((caution, times) -> assertTrue(times <= 2, caution + " is shown " + times + " times"));
    }

    /** The gravest hazard of a screen is read first. */
    @Test
    void theGravestCautionComesFirst() {
        for (Step step : STEPS) {
            List<Caution.Level> levels = step.cautions().stream()
                    .map(caution -> HalfDone.PROCEDURE.caution(caution).level())
                    .toList();
            assertEquals(levels.stream().sorted().toList(), levels, step.id());
        }
    }

    /** 8: the killer item is the first thing its screen asks for. */
    @Test
    void killerItemsComeFirstOnTheirScreen() {
        Map<String, String> first = Map.of(
                "clip", "clip.dead",
                "solder", "solder.dead",
                "fit", "fit.dead",
                "place", "place.pair",
                "first.on", "first.on.switch",
                "workplace", "work.off",
                "scope", "board.name");
        first.forEach(
                (step, field) -> assertEquals(field, step(step).fields().get(0).id()));
        assertEquals("first.volts", step("first.on").fields().get(1).id(), "the voltage is the first thing read");
        assertEquals("trimmer.max", step("ends").fields().get(0).id());
    }

    /** 9: at most seven items a screen, but for the data sheet and the pins, which are copied off one drawing. */
    @Test
    void noScreenAsksForMoreThanSevenThings() {
        for (Step step : STEPS) {
            boolean copied = Set.of("datasheet", "pins").contains(step.id());
            long always = step.fields().stream()
                    .filter(field -> !Set.of(
                                    "meter.volt.percent", "meter.volt.digits", "meter.ohm.percent", "meter.ohm.digits")
                            .contains(field.id()))
                    .count();
            assertTrue(copied || always <= 7, step.id() + " asks for " + always);
        }
    }

    /** 10: nothing is merely ticked off: each field is a number, words, a switch, or a choice of at least two answers that differ. */
    @Test
    void everyConfirmationVaries() {
        HalfDone job = HalfDone.upTo("record");
        for (Step step : STEPS) {
            for (Field field : step.fields()) {
                if (field instanceof Field.Choice choice) {
                    List<Field.Option> options =
                            choice.options().apply(job.course.state().figures());
                    assertTrue(
                            options.isEmpty()
                                    || options.size() >= 2
                                    || field.id().contains(".pick"),
                            field.id());
                }
            }
        }
    }

    /** 13: every step that reads something says what to do when the reading is outside. */
    @Test
    void everyStepHasAWayOnWhenAReadingIsOutside() {
        STEPS.forEach(
                step -> assertFalse(WORDS.of("step." + step.id() + ".outside").isBlank(), step.id()));
    }

    /** 14 and 26: one stop rule and one make-safe card, in words. */
    @Test
    void theStopRuleAndMakeSafeAreInWords() {
        for (String key : List.of("stop-rule.on", "card.safe.action", "card.safe.why", "card.safe.outside")) {
            assertFalse(WORDS.of(key).isBlank(), key);
        }
    }

    /** 17: the hold points there have to be: before solder, first power, each voltage step, the fixed resistor. */
    @Test
    void theHoldPointsAreWhereHarmBegins() {
        for (String id : List.of(
                "clip",
                "agree",
                "ends",
                "solder",
                "proof",
                "smooth",
                "first.on",
                "down.back",
                "budget",
                "set.back",
                "setting",
                "hand",
                "fit",
                "fit.proof",
                "fit.on")) {
            assertTrue(step(id).hold(), id);
        }
    }

    /** 18: the second readings at hold points. */
    @Test
    void secondReadingsAreTakenAtHoldPoints() {
        List<String> seconds = STEPS.stream()
                .flatMap(step -> step.fields().stream()
                        .filter(field -> field instanceof Field.Number number
                                && number.again().isPresent())
                        .map(field -> step.id() + (step.hold() ? "" : " is no hold point")))
                .toList();
        assertEquals(List.of("agree", "ends", "solder", "smooth", "setting", "hand"), seconds);
    }

    /** 22: every wait has its length, and words for when it is missed. */
    @Test
    void everyWaitIsTimedAndSaysWhatToDoIfMissed() {
        Map<String, Integer> waits = new HashMap<>();
        STEPS.stream()
                .filter(step -> step.dwellSeconds() > 0)
                .forEach(step -> waits.put(step.id(), step.dwellSeconds()));
        assertEquals(
                Map.of("warm", 300, "first.load", 60, "down.watch", 60, "soak", 1800, "cool", 600, "fit.soak", 1800),
                waits);
        assertTrue(WORDS.of("window.dwell.missed").contains("now"));
        assertTrue(WORDS.of("command.text.dwell", "1").contains("If you miss the end"));
    }

    /** 23: one decrement a screen. */
    @Test
    void oneDecrementAScreen() {
        long numbers = step("down.set").fields().stream()
                .filter(Field.Number.class::isInstance)
                .count();
        assertEquals(1, numbers);
    }

    private static Step step(String id) {
        return STEPS.stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
    }
}
