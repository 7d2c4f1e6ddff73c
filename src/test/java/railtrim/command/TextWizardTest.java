package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

class TextWizardTest {
    private static final String[] SCOPE = {"mains", "closed", "blue synth", "adapter", "12V"};

    private final Wizarding wizard = new Wizarding();

    @Test
    void aWholeBoardIsDoneLineByLine() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        Bench bench = new Bench(board, Meter.basic(), Rehearsal.chance(1));
        Wizarding whole = Wizarding.on(bench);
        HandTyping[] typing = new HandTyping[1];
        int exit = whole.reads((course, screen) -> typing[0] = new HandTyping(new Hand(bench), course, screen));
        assertEquals("", typing[0].stuck());
        assertTrue(whole.state().complete(), whole.step());
        assertEquals(0, exit);
        assertTrue(bench.mishaps().isEmpty(), bench.mishaps().toString());
        String screen = whole.screen();
        assertTrue(screen.contains("MAKE SAFE"), "the fault on the way down has its card");
        assertTrue(screen.contains("The job is complete"));
        assertTrue(screen.contains("Last good: ") && screen.contains("Next target: ") && screen.contains("Floor: "));
        assertTrue(
                screen.split("POWER ON").length <= screen.split("Pull the plug, then type “safe”").length,
                "every powered step has the stop rule");
        assertFalse(screen.contains("command.text."), "every text is in the bundle");
        assertTrue(screen.lines().allMatch(line -> line.length() <= 80), "it fits a terminal of 80 columns");
    }

    @Test
    void theScreenSaysWhereWeAreAndWhatPowerIsNeeded() {
        wizard.types("help");
        assertTrue(wizard.screen().contains("Prepare · step 1 of "), wizard.screen());
        assertTrue(wizard.screen().contains("POWER OFF"));
    }

    @Test
    void aCautionIsAcknowledgedByItsOwnWordAlone() {
        wizard.types("", "yes", "ok", "1");
        assertFalse(wizard.state().current().open().isEmpty());
        wizard.types("MAINS", "closed");
        assertTrue(wizard.state().current().open().isEmpty());
    }

    @Test
    void answersGoOnToTheNextStep() {
        wizard.types(SCOPE);
        assertEquals("chip", wizard.step());
    }

    @Test
    void aChoiceIsMadeByItsNumberToo() {
        wizard.types("mains", "closed", "blue synth", "1", "12V");
        assertEquals("adapter", wizard.state().figures().choice("supply.kind").orElseThrow());
        assertEquals("chip", wizard.step());
    }

    @Test
    void anAnswerThatIsNotOfferedIsAskedForAgain() {
        wizard.types("mains", "closed", "blue synth", "7", "none");
        assertTrue(wizard.screen().contains("“7” is none of the answers"), wizard.screen());
        assertEquals("scope", wizard.step());
    }

    @Test
    void aReadingIsReadBackInWords() {
        wizard.types(SCOPE);
        assertTrue(
                wizard.screen().contains("Read back: twelve volts")
                        || wizard.screen().contains("Read back: one two volts"),
                wizard.screen());
    }

    @Test
    void aReadingWithoutItsUnitIsNotTaken() {
        wizard.types("mains", "closed", "blue synth", "adapter", "12", "12R");
        assertEquals("scope", wizard.step());
        assertTrue(wizard.screen().contains("✗"));
    }

    @Test
    void aNumberThatWasCopiedIsLookedAtAgainAndNotMeasured() {
        wizard.types("mains", "closed", "blue synth", "adapter", "72V");
        assertTrue(wizard.screen().contains("Look again"), wizard.screen());
        assertFalse(wizard.screen().contains("If the meter really shows this"), wizard.screen());
    }

    @Test
    void backOpensTheStepBefore() {
        wizard.types(SCOPE);
        wizard.types("back");
        assertEquals("scope", wizard.step());
    }

    @Test
    void theFirstStepHasNothingBeforeIt() {
        wizard.types("back");
        assertTrue(wizard.screen().contains("no finished step to go back to"), wizard.screen());
    }

    @Test
    void inAFieldForFreeWordsAnOrderIsOnlyAWordOnItsOwn() {
        wizard.types("mains", "closed", "back panel of the synth");
        assertEquals(
                "back panel of the synth",
                wizard.state().figures().text("board.name").orElseThrow());
    }

    @Test
    void safeShowsTheCardAndOnlyADeadRailLeadsOut() {
        wizard.types("mains", "safe");
        assertTrue(wizard.state().card().orElseThrow() instanceof State.Card.MakeSafe);
        assertTrue(wizard.screen().contains("MAKE SAFE"));
        wizard.types("3.3V");
        assertTrue(wizard.state().card().isPresent());
        wizard.types("0.01V");
        assertTrue(wizard.state().card().isEmpty());
    }

    @Test
    void aMainsSupplyStopsTheJobAndTheAnswerIsNo() {
        int exit = wizard.types("mains", "closed", "old telly", "mains", "12V");
        assertTrue(wizard.state().card().orElseThrow() instanceof State.Card.Stop);
        assertTrue(wizard.screen().contains("STOP"));
        assertEquals(1, exit);
        wizard.types("back");
        assertTrue(wizard.state().card().isEmpty(), "a slip can be mended");
    }

    @Test
    void pauseKeepsTheNoteAndLeaves() {
        int exit = wizard.types("mains", "closed", "blue synth", "pause supper", "adapter");
        assertEquals(0, exit);
        assertTrue(wizard.state().figures().choice("supply.kind").isEmpty(), "nothing is read after the pause");
    }

    @Test
    void quitLeavesAtOnceWhileTheBoardIsOff() {
        assertEquals(0, wizard.types("mains", "quit", "blue synth"));
        assertTrue(wizard.state().figures().text("board.name").isEmpty());
        assertFalse(wizard.screen().contains("STILL HAVE POWER"));
    }

    @Test
    void waitLetsTheDwellRun() {
        Wizarding warming = until(state -> state.current().step().id().equals("warm"));
        assertTrue(warming.dwellLeft() > 200, "five minutes under load before temperatures are read");
        warming.types("infrared", "wait");
        assertEquals(0, warming.dwellLeft());
    }

    @Test
    void withTheBoardOnNobodyLeavesInSilence() {
        Wizarding powered = until(state -> state.power() == State.Power.ON);
        powered.types("quit", "help");
        assertTrue(powered.screen().contains("Type “safe” to make it safe first"), powered.screen());
        assertTrue(powered.screen().contains("THE BOARD MAY STILL HAVE POWER"), "also where the input just ends");
    }

    @Test
    void aPauseWithTheBoardOnMakesSafeFirst() {
        Wizarding powered = until(state -> state.power() == State.Power.ON);
        powered.types("pause the door bell");
        assertTrue(powered.state().card().orElseThrow() instanceof State.Card.MakeSafe);
        assertTrue(powered.screen().contains("MAKE SAFE"));
    }

    /** A board taken by a hand up to where {@code there} holds. */
    private static Wizarding until(Predicate<State> there) {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        Bench bench = new Bench(board, Meter.basic(), Rehearsal.chance(1));
        Wizarding wizard = Wizarding.on(bench);
        wizard.reads((course, screen) -> new HandTyping(new Hand(bench), course, screen) {
            @Override
            public String readLine() {
                return there.test(course.state()) ? null : super.readLine();
            }
        });
        assertTrue(there.test(wizard.state()));
        return wizard;
    }
}
