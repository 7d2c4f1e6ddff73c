package railtrim.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import railtrim.procedure.Caution;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Labels;
import railtrim.procedure.Outlook;
import railtrim.procedure.Phase;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Quantity;
import railtrim.quantity.Unit;

/** Writes what the wizard has to say to a terminal. Knows no rule of the procedure. */
final class TextPage {
    private static final int WIDTH = 78;
    /** Lines of any usual terminal window. */
    private static final int SCREEN = 60;

    private static final List<String> ORDERS = List.of("safe", "back", "pause", "wait", "skip", "help", "quit");

    private final PrintStream out;
    private final Words words;

    TextPage(PrintStream out, Words words) {
        this.out = out;
        this.words = words;
    }

    void say(String key, Object... values) {
        wrapped("", words.of(key, values));
    }

    void tell(String lead, List<Message> messages) {
        messages.forEach(message -> wrapped(lead, words.of(message)));
    }

    void help() {
        say("command.text.help");
        Sheet orders = new Sheet();
        ORDERS.forEach(order -> orders.pair("  " + order, words.of("command.text.help." + order)));
        orders.lines().forEach(out::println);
    }

    void blank() {
        out.println();
    }

    void prompt() {
        out.print("> ");
        out.flush();
    }

    /** Where we are, the power this step needs, and why the step is there. */
    void step(State state) {
        Step step = state.current().step();
        String phase = words.of("phase." + step.phase().id());
        List<State.StepState> expected = new Outlook(state).steps();
        rule();
        say(
                "command.text.where",
                phase,
                Integer.toString(expected.indexOf(state.current()) + 1),
                Integer.toString(expected.size()),
                words.of("power." + Named.word(step.power())).toUpperCase(Locale.ROOT));
        rail(state);
        levels(state);
        if (step.power() != PowerNeed.OFF) {
            say("command.text.stop-rule");
        }
        blank();
        say("step." + step.id() + ".title");
        wrapped("  ", words.of("step." + step.id() + ".why"));
        if (step.hold()) {
            wrapped("  ", words.of("command.text.hold"));
        }
    }

    void action(Step step) {
        blank();
        wrapped(words.of("command.text.do") + " ", words.of("step." + step.id() + ".action"));
    }

    void outside(Step step) {
        String key = "step." + step.id() + ".outside";
        if (words.has(key)) {
            wrapped("  ", words.of(key));
        }
    }

    void caution(Caution caution, String word) {
        blank();
        say("command.text.level." + Named.word(caution.level()));
        wrapped("  ", caution.hazard(words));
        wrapped("  ", caution.consequence(words));
        wrapped("  ", caution.avoidance(words));
        say("command.text.acknowledge", word);
    }

    void makeSafe(Message reason) {
        rule();
        say("command.text.safe.title");
        wrapped("  ", words.of(reason));
        for (int line = 1; line <= 3; line++) {
            wrapped("  " + line + ". ", words.of("command.text.safe." + line));
        }
    }

    void stop(Message reason) {
        rule();
        say("command.text.stop.title");
        wrapped("  ", words.of(reason));
        say("command.text.stop.next");
    }

    void resume(State.Card.Resume resume) {
        rule();
        if (resume.gapSeconds() < 0) {
            say("command.text.resume.unknown");
        } else {
            say("command.text.resume.title", Display.of(resume.gapSeconds(), Unit.SECOND));
        }
        resume.note().ifPresent(note -> wrapped("  ", words.of("command.text.resume.note", note)));
        wrapped("  ", words.of("command.text.resume.why"));
    }

    /** What is asked for and how to find it out. */
    void ask(Field field) {
        blank();
        wrapped("? ", Labels.of(words, field.id()));
        Labels.help(words, field.id()).ifPresent(help -> wrapped("  ", help));
    }

    /** What to expect, shown before the reading is typed. */
    /** What another job says about it, to hold against what is on the bench. */
    void proposed(Field field, State state) {
        TakeOver.inWords(field, state.figures(), words).ifPresent(says -> wrapped("", says));
    }

    void expected(Field.Expected expected, Unit unit) {
        Display.Ends ends = Display.ends(expected.low(), expected.high(), unit);
        wrapped("  ", words.of("command.text.expected", ends.low(), ends.high(), words.of(expected.because())));
    }

    void options(List<Field.Option> options) {
        for (int i = 0; i < options.size(); i++) {
            wrapped("  " + (i + 1) + "  ", words.of(options.get(i).label()));
        }
    }

    void readBack(Quantity quantity) {
        say("command.text.read-back", Display.inWords(quantity));
    }

    void findings(List<Step.Finding> findings) {
        for (Step.Finding finding : findings) {
            wrapped(words.of("command.text.finding." + Named.word(finding.kind())) + " ", words.of(finding.message()));
        }
    }

    /** Pushes what was shown before off the screen. */
    void scrollAway() {
        for (int line = 0; line < SCREEN; line++) {
            out.println();
        }
    }

    /** On the way down and back up: where it was last good, where to go next, and where it ends. */
    private void levels(State state) {
        Figures figures = state.figures();
        Phase phase = state.current().step().phase();
        if (phase == Phase.STEP_DOWN) {
            level("command.text.last-good", figures.sign().shown(figures.lastGood()));
            level("command.text.next-target", figures.sign().shown(figures.nextTarget()));
            level("command.text.floor", figures.sign().shown(figures.floor()));
        } else if (phase == Phase.BACK_OFF) {
            level("command.text.target", figures.sign().shown(figures.target()));
        }
    }

    private void level(String key, OptionalDouble volts) {
        if (volts.isPresent()) {
            say(key, Display.volts(volts.getAsDouble()));
        }
    }

    private void rail(State state) {
        OptionalDouble rail = state.figures().rail();
        if (rail.isPresent()) {
            say("command.text.rail", Display.volts(rail.getAsDouble()));
        }
    }

    private void rule() {
        out.println();
        out.println("-".repeat(WIDTH));
    }

    private void wrapped(String lead, String text) {
        Wrap.lines(lead, text, WIDTH).forEach(out::println);
    }
}
