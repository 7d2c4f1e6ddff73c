package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeoutException;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Journal;
import railtrim.job.JournalProblem;
import railtrim.job.Log;
import railtrim.job.Mark;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;

/**
 * Slips that people make, each made on purpose with the keys of the smallest window: what is said about it is in sight, and the way does not go on until
 * it is mended. What the procedure says to each slip, and why, is in {@code procedure.SeededSlipsTest}.
 */
class SlipsAtTheWindowTest {
    private static final int MOST_ANSWERS = 1000;

    @TempDir
    Path folder;

    private final BenchTime time = new BenchTime();
    private final Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), Rehearsal.chance(3));
    private final Hand hand = new Hand(bench);
    private Opened window;

    @BeforeEach
    void aSmallWindow() throws Exception {
        time.of(bench);
        window = Opened.with(new TestSurroundings(folder, new TestPrinting(false), time));
        window.size(1024, 700, 14);
    }

    @AfterEach
    void closed() throws Exception {
        window.close();
    }

    // ---- numbers ----

    /** 1 to 6: kΩ for Ω, a comma among thousands, no unit, volts for ohms, a factor of ten, OL. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "middle kΩ | verdict.slip",
                "1,234.5 Ω | quantity.two-marks",
                "100 | quantity.unit-missing",
                "0.1 V | quantity.other-unit",
                "tenth Ω | verdict.slip",
                "OL | quantity.over-range"
            })
    void aNumberThatIsNotWhatTheMeterShows(String typed, String words) throws Exception {
        SlippingPerson person = at("proof");
        String middle = middle(person, "proof.total", 1);
        String tenth = middle(person, "proof.total", 0.1);
        person.types("proof.total", typed.replace("middle", middle).replace("tenth", tenth));
        person.sees(words);
        person.staysAt("proof");
        person.mendsAndGoesOnFrom("proof");
    }

    /** 7: black and red exchanged. */
    @Test
    void probesExchanged() throws Exception {
        SlippingPerson person = at("base.on");
        person.answers();
        person.types("base.rail", "-3.31 V");
        person.sees("verdict.slip-sign");
        person.staysAt("base.on");
        person.mendsAndGoesOnFrom("base.on");
    }

    /** 8: the probe lay on the wrong pad, and the reading is nought. */
    @Test
    void aReadingOfNought() throws Exception {
        SlippingPerson person = at("proof");
        person.types("proof.total", "0 Ω");
        person.sees("verdict.outside");
        person.staysAt("proof");
        person.mendsAndGoesOnFrom("proof");
    }

    // ---- legs and pins ----

    /** 9: the two legs swapped. Found where the readings are held together; why is said there, with the way back. */
    @Test
    void theLegsSwapped() throws Exception {
        SlippingPerson person = at("legs");
        String leg = rightNow("leg.ohms");
        String other = rightNow("other.ohms");
        for (String field : new String[] {"leg.ohms", "leg.reversed", "other.ohms"}) {
            person.answersUntilAsked(field);
            person.types(field, field.startsWith("leg") ? other : leg);
            if (window.has(Ids.sure(field))) {
                person.insists(field);
            }
        }
        person.mendsAndGoesOnFrom("legs");
        walkTo(person.desk(), "agree");
        person.readsTheCautions();
        person.types("leg.again", other);
        person.sees("verdict.legs-swapped");
        person.staysAt("agree");
        assertTrue(window.has("back-to-legs"), "the way back is beside it");
    }

    /** 10: the wrong leg is chosen for the trimmer. */
    @Test
    void theWrongLegChosen() throws Exception {
        SlippingPerson person = at("place");
        person.picks("place.pair", "out-adjust");
        person.picks("place.leg", "out-adjust");
        person.sees("verdict.leg-differs");
        person.staysAt("place");
    }

    /** 11: the pins of the other leg, told by the meter before the iron is picked up; until then the pins cannot be chosen. */
    @Test
    void theWrongPinsBeforeTheIron() throws Exception {
        SlippingPerson person = at("solder");
        String other = person.desk()
                .state()
                .figures()
                .reading("other.ohms")
                .orElseThrow()
                .typed();
        person.types("solder.dead", "0 V");
        person.types("solder.leg", other);
        person.sees("verdict.slip-other-leg");
        person.insists("solder.leg");
        assertTrue(window.node(Ids.option("solder.pair", "adjust-ground")).isDisabled());
        person.sees("verdict.again-differs");
        person.staysAt("solder");
    }

    /** 12: a step of the past read anew: what rests on it counts no more, and the iron has to wait. */
    @Test
    void aStaleValue() throws Exception {
        SlippingPerson person = at("solder");
        window.fx(() -> {
            person.desk().look("legs");
            return null;
        });
        person.presses("again");
        window.until("the reason’s field", () -> window.focused().equals("again-reason"));
        window.type("one lead was loose");
        person.presses("again-go");
        assertEquals("legs", person.desk().shown().step().id());
        assertEquals(State.Status.STALE, person.desk().state().step("ends").status());
        assertFalse(Desk.readable(person.desk().state().step("solder")), "the iron waits");
        assertFalse(window.has(Ids.step("solder")), "and there is no way to it on the page");
        person.staysAt("legs");
    }

    // ---- power ----

    /** 13: the board still has power where it must have none; the deed stays shut. */
    @ParameterizedTest
    @CsvSource({"clip, clip.pair, adjust-ground", "solder, solder.pair, adjust-ground"})
    void aBoardWithPowerWhereItMustBeOff(String step, String field, String option) throws Exception {
        SlippingPerson person = at(step);
        person.types(step + ".dead", "3.31 V");
        person.sees("verdict.outside");
        person.insists(step + ".dead");
        assertTrue(window.node(Ids.option(field, option)).isDisabled());
        person.sees("verdict.outside");
        person.staysAt(step);
    }

    /** 14 to 16: at first power the output is too low, above stock, or the probe is on the input: the plug first, with what is likely. */
    @ParameterizedTest
    @CsvSource({"low, card.safe.read", "above, card.safe.read", "input, verdict.slip-input"})
    void aReadingThatIsOutAtFirstPower(String how, String words) throws Exception {
        SlippingPerson person = at("first.on");
        person.answers();
        State state = person.desk().state();
        double volts = switch (how) {
            case "low" -> 2.9;
            case "above" -> state.figures().reading("base.rail").orElseThrow().value() + 0.4;
            default -> state.figures().input().orElseThrow();
        };
        person.types("first.volts", String.format(Locale.ROOT, "%.3f V", volts));
        assertInstanceOf(State.Card.MakeSafe.class, state(person).card().orElseThrow());
        person.sees(words);
        person.sees("card.safe.action");
        assertTrue(window.node("next").isDisabled());
    }

    /** 17: a fault is seen and Make safe pressed; a rail that is not dead keeps the card. */
    @Test
    void makeSafeWithARailThatIsNotDead() throws Exception {
        SlippingPerson person = at("first.on");
        person.answers();
        window.press("make-safe");
        person.types("safe.rail", "0.8 V");
        person.sees("card.safe.outside");
        assertTrue(state(person).card().isPresent());
        assertTrue(window.node("next").isDisabled());
        bench.switchOff();
        person.types("safe.rail", "1 mV");
        assertTrue(state(person).card().isEmpty());
    }

    // ---- keys ----

    /** 18: Next, and Enter, before the caution was read. */
    @Test
    void nextBeforeTheCaution() throws Exception {
        SlippingPerson person = standAt("scope");
        int waiting = person.desk().shown().open().size();
        assertTrue(waiting > 0);
        person.staysAt("scope");
        window.press(KeyCode.ENTER, KeyCode.ENTER);
        assertEquals(waiting, person.desk().shown().open().size());
        assertTrue(window.node(Ids.field("board.name")).isDisabled());
        person.readsTheCautions();
        assertFalse(window.node(Ids.field("board.name")).isDisabled());
    }

    /** 19: Enter is leaned on: it gives the answer it was pressed for, and goes no further. */
    @Test
    void enterHeldDown() throws Exception {
        SlippingPerson person = at("proof");
        person.answersUntilAsked("proof.total");
        Answer.Typed right =
                (Answer.Typed) hand.next(state(person), person.desk().course());
        window.type(right.text());
        long before = state(person).job().last();
        for (int i = 0; i < 15; i++) {
            key(KeyEvent.KEY_PRESSED);
            window.layOut();
        }
        assertEquals(before + 1, state(person).job().last());
        assertEquals("proof", person.desk().shown().step().id());
        key(KeyEvent.KEY_RELEASED);
        person.mendsAndGoesOnFrom("proof");
    }

    // ---- files ----

    /** 20: left in the middle of a powered step: asked first, and never taken up there. */
    @Test
    void leftInTheMiddleWithTheBoardOn() throws Exception {
        Path other = folder.resolve("other.railtrim");
        Journal.create(other, "other", bench, Mark.keptIn(folder.resolve("own")))
                .close();
        Path file = kept("first.on");
        SlippingPerson person = person();
        person.answers();
        open(other);
        window.until("the question", () -> window.focused().equals("stay"));
        person.sees("window.leave.text");
        window.press(KeyCode.ESCAPE);
        assertEquals(State.Power.ON, state(person).power(), "Escape stays");
        open(other);
        window.until("the question", () -> window.focused().equals("stay"));
        person.presses("leave-anyway");
        open(file);
        SlippingPerson later = person();
        assertInstanceOf(State.Card.Resume.class, state(later).card().orElseThrow());
        later.sees("power.prove");
        later.sees("card.resume.action");
        later.types("resume.rail", "3.3 V");
        assertTrue(state(later).card().isPresent());
        later.sees("verdict.outside");
        later.sees("card.resume.action");
    }

    /** 21: the next day, with another board on the bench. */
    @Test
    void anotherBoardTheNextDay() throws Exception {
        Path file = kept("smooth");
        bench.waitSeconds(86_400);
        window.fx(() -> {
            window.shell.toStart();
            return null;
        });
        open(file);
        SlippingPerson person = person();
        person.sees("card.resume.action");
        person.answersUntilAsked("resume.marking");
        person.types("resume.marking", "ZZ9 other");
        person.sees("verdict.other-marking");
        assertInstanceOf(State.Card.Resume.class, state(person).card().orElseThrow());
        assertTrue(window.node("next").isDisabled());
    }

    /** 22: the disk is full: told at the top, what was typed stays, and it is taken once there is room. */
    @Test
    void aFullDisk() throws Exception {
        FullDisk disk = new FullDisk(new MemoryLog("organ", bench));
        Course course = new Course(Procedure.builtIn(), disk);
        walk(course, "proof");
        show(() -> JobPage.practice(window.shell, course, bench));
        SlippingPerson person = person();
        person.readsTheCautions();
        disk.full = true;
        Answer.Typed right = (Answer.Typed) hand.next(state(person), course);
        person.types(right.field(), right.text());
        person.sees("job.not-saved");
        assertEquals(right.text(), ((TextField) window.node(Ids.field(right.field()))).getText());
        person.staysAt("proof");
        disk.full = false;
        person.mendsAndGoesOnFrom("proof");
        assertFalse(window.has("trouble"));
    }

    /** 23: a stranger's file: for reading only, and said so. */
    @Test
    void aStrangersFile() throws Exception {
        Path file = folder.resolve("theirs.railtrim");
        try (Journal theirs = Journal.create(file, "theirs", bench, Mark.keptIn(folder.resolve("their own")))) {
            walk(new Course(Procedure.builtIn(), theirs), "legs");
        }
        byte[] before = Files.readAllBytes(file);
        open(file);
        SlippingPerson person = person();
        person.sees("window.band.saved.elsewhere");
        for (Node node : window.shell.scene().getRoot().lookupAll(".text-field")) {
            assertTrue(node.isDisabled() || !((TextField) node).isEditable(), node.getId());
        }
        assertTrue(window.has("take-over"), "the way on is offered");
        person.staysAt("legs");
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(file)));
    }

    // ---- helpers ----

    private static final class FullDisk implements Log {
        private final MemoryLog log;
        private boolean full;

        FullDisk(MemoryLog log) {
            this.log = log;
        }

        @Override
        public Entry append(Fact fact) {
            if (full) {
                throw new JournalProblem(Message.of("job.not-saved", "organ.railtrim"), null);
            }
            return log.append(fact);
        }

        @Override
        public Job job() {
            return log.job();
        }

        @Override
        public long ticks() {
            return log.ticks();
        }

        @Override
        public java.time.Instant now() {
            return log.now();
        }

        @Override
        public int session() {
            return log.session();
        }

        @Override
        public boolean readOnly() {
            return false;
        }
    }

    private interface Pages {
        JobPage page();
    }

    private void show(Pages pages) throws TimeoutException {
        window.fx(() -> {
            window.shell.show(pages.page());
            return null;
        });
        window.settle();
        window.layOut();
    }

    private void open(Path file) throws TimeoutException {
        window.fx(() -> {
            window.shell.open(file);
            return null;
        });
    }

    private SlippingPerson person() {
        return new SlippingPerson(window, window.shell.desk().orElseThrow(), hand);
    }

    private static State state(SlippingPerson person) {
        return person.desk().state();
    }

    /** At a step, its cautions read. */
    private SlippingPerson at(String step) throws Exception {
        SlippingPerson person = standAt(step);
        person.readsTheCautions();
        return person;
    }

    private SlippingPerson standAt(String step) throws Exception {
        Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
        walk(course, step);
        show(() -> JobPage.practice(window.shell, course, bench));
        return person();
    }

    /** The same with a job that is kept in a file. */
    private Path kept(String step) throws Exception {
        Path file = folder.resolve("organ.railtrim");
        Journal journal = Journal.create(file, "organ", bench, Mark.keptIn(folder.resolve("own")));
        Course course = new Course(Procedure.builtIn(), journal);
        walk(course, step);
        show(() -> JobPage.of(window.shell, journal, course));
        person().readsTheCautions();
        return file;
    }

    /** Away from the window, by a careful hand. */
    private void walk(Course course, String step) {
        for (int i = 0; i < MOST_ANSWERS; i++) {
            if (course.state().current().step().id().equals(step)
                    && course.state().card().isEmpty()) {
                return;
            }
            Rehearsal.offer(hand.next(course.state(), course), course);
        }
        throw new AssertionError("never came to " + step);
    }

    private void walkTo(Desk desk, String step) throws Exception {
        window.fx(() -> {
            for (int i = 0;
                    i < MOST_ANSWERS && !desk.state().current().step().id().equals(step);
                    i++) {
                Walk.give(desk, hand.next(desk.state(), desk.course()));
                desk.next();
            }
            return null;
        });
        window.layOut();
    }

    /** What a careful hand will type into a field, found out on a board of its own. */
    private static String rightNow(String field) {
        Bench own = new Bench(Practice.board("sound-board"), Meter.middle(), Rehearsal.chance(3));
        Hand careful = new Hand(own);
        Course course = new Course(Procedure.builtIn(), new MemoryLog("board", own));
        for (int i = 0; i < MOST_ANSWERS; i++) {
            Answer answer = careful.next(course.state(), course);
            if (answer instanceof Answer.Typed typed && typed.field().equals(field)) {
                return typed.text();
            }
            Rehearsal.offer(answer, course);
        }
        throw new AssertionError(field + " is never asked for");
    }

    /** A part of the middle of what is expected, rounded to a tenth. */
    private static String middle(SlippingPerson person, String field, double part) {
        Field.Expected range = person.desk().course().expected(field).orElseThrow();
        return String.format(Locale.ROOT, "%.1f", (range.low() + range.high()) / 2 * part);
    }

    private void key(javafx.event.EventType<KeyEvent> kind) throws TimeoutException {
        window.fx(() -> {
            Node owner = window.shell.scene().getFocusOwner();
            Event.fireEvent(owner, new KeyEvent(kind, "", "", KeyCode.ENTER, false, false, false, false));
            return null;
        });
        window.settle();
    }
}
