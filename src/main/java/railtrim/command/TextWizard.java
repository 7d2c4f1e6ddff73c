package railtrim.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import railtrim.job.Fact;
import railtrim.job.JournalProblem;
import railtrim.procedure.Caution;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.Quantity;

/** The wizard line by line: shows the state, reads one line, offers it to the course, says the verdict. */
final class TextWizard {
    private final Course course;
    private final Terminal terminal;
    private final Words words;
    private final Waiting waiting;
    private final TextPage page;

    /** The screen shown last; it is not shown again for each of its fields. */
    private String shown = "";

    private boolean actionShown;
    private Optional<Doubt> doubt = Optional.empty();
    private boolean warnedOfPower;

    /** What was typed and asked about, to be offered again with {@code sure}. */
    private record Doubt(String field, String text) {}

    TextWizard(Course course, Terminal terminal, Words words, Waiting waiting) {
        this.course = course;
        this.terminal = terminal;
        this.words = words;
        this.waiting = waiting;
        this.page = new TextPage(terminal.out(), words);
    }

    /** Goes on until the job is complete, the person leaves, or there is nothing more to read. @return exit code */
    int run() {
        page.say("command.text.welcome");
        page.help();
        State state = course.state();
        while (!state.complete()) {
            Question question = Question.of(course, state);
            show(state, question);
            Optional<String> line = read();
            if (line.isEmpty() || !kept(state, question, line.get().strip())) {
                return left(course.state());
            }
            state = course.state();
        }
        page.blank();
        page.say("command.text.complete");
        return Answer.DONE;
    }

    /** Where the job takes no more, the person is still told what the board needs. */
    private boolean kept(State state, Question question, String line) {
        try {
            return goesOn(state, question, line);
        } catch (JournalProblem problem) {
            left(state);
            throw problem;
        }
    }

    private Optional<String> read() {
        page.prompt();
        try {
            return Optional.ofNullable(terminal.in().readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void show(State state, Question question) {
        String screen =
                state.card().map(card -> card.getClass().getSimpleName()).orElse("step")
                        + state.current().step().id();
        if (!screen.equals(shown)) {
            shown = screen;
            actionShown = false;
            showScreen(state);
        }
        if (question instanceof Question.Read read) {
            page.caution(read.caution(), word(read.caution()));
        } else if (question instanceof Question.Answer answer) {
            ask(state, answer.field());
        } else if (question instanceof Question.Mend mend) {
            page.findings(mend.findings());
            page.say("command.text.mend", words.of("step." + mend.backTo() + ".title"));
        } else if (question instanceof Question.Ended ended && !ended.backTo().isEmpty()) {
            page.say("command.text.ended", words.of("step." + ended.backTo() + ".title"));
        }
    }

    private void showScreen(State state) {
        State.Card card = state.card().orElse(null);
        if (card instanceof State.Card.MakeSafe safe) {
            page.makeSafe(safe.reason());
        } else if (card instanceof State.Card.Stop stop) {
            page.stop(stop.reason());
        } else if (card instanceof State.Card.Resume resume) {
            page.resume(resume);
        } else {
            page.step(state);
        }
    }

    private void ask(State state, Field field) {
        boolean inStep = state.card().isEmpty();
        if (inStep && !actionShown && course.deedWaitsFor().isEmpty()) {
            actionShown = true;
            page.action(state.current().step());
        }
        if (terminal.person() && hidesTheFirst(field)) {
            page.scrollAway();
        }
        page.ask(field);
        page.proposed(field, state);
        if (field instanceof Field.Number number) {
            course.expected(number.id()).ifPresent(expected -> page.expected(expected, number.unit()));
        } else if (field instanceof Field.Choice choice) {
            page.options(choice.options().apply(state.figures()));
        } else if (field instanceof Field.Switch turn) {
            page.say("command.text.switch", turn.on() ? "on" : "off");
        }
        if (inStep && course.dwellLeft() > 0) {
            page.say("command.text.dwell", Long.toString(course.dwellLeft()));
        }
    }

    /** A second reading is worth something only where the first cannot be seen while it is taken. */
    private static boolean hidesTheFirst(Field field) {
        return field instanceof Field.Number number && number.again().isPresent();
    }

    /** @return false where the person leaves */
    private boolean goesOn(State state, Question question, String line) {
        int space = line.indexOf(' ');
        String first = (space < 0 ? line : line.substring(0, space)).toLowerCase(Locale.ROOT);
        String rest = space < 0 ? "" : line.substring(space + 1).strip();
        boolean freeWords = question instanceof Question.Answer answer && answer.field() instanceof Field.Text;
        // In a field for free words only a word on its own is an order: "back panel" may be the answer.
        String order = freeWords && !rest.isEmpty() ? "" : first;
        boolean quit = order.equals("quit");
        if (quit && (warnedOfPower || state.power() == State.Power.OFF)) {
            return false;
        }
        warnedOfPower = quit;
        switch (order) {
            case "quit" -> page.say("command.text.quit-powered");
            case "help" -> page.help();
            case "safe" -> judged("", "", course.alarm("pressed"));
            case "back" -> back(state, question, rest);
            case "skip" -> judged("", "", course.skip(rest));
            case "wait" -> await();
            case "sure" -> sure();
            case "pause" -> {
                return !paused(course.pause(rest));
            }
            default -> answer(state, question, line);
        }
        return true;
    }

    private void answer(State state, Question question, String line) {
        if (question instanceof Question.Read read) {
            acknowledge(read.caution(), line);
        } else if (question instanceof Question.Answer answer) {
            answerField(state, answer.field(), line);
        } else {
            page.say("command.text.back-or-quit");
        }
    }

    private void acknowledge(Caution caution, String line) {
        if (line.equalsIgnoreCase(word(caution))) {
            judged("", "", course.acknowledge(caution.id()));
        } else {
            page.say("command.text.not-acknowledged");
        }
    }

    private void answerField(State state, Field field, String line) {
        if (field instanceof Field.Choice choice) {
            choose(choice, choice.options().apply(state.figures()), line);
        } else if (field instanceof Field.Switch turn) {
            if (line.equalsIgnoreCase(turn.on() ? "on" : "off")) {
                judged(turn.id(), "", course.turn(turn.id()));
            } else {
                page.say("command.text.not-switched", turn.on() ? "on" : "off");
            }
        } else {
            judged(field.id(), line, course.type(field.id(), line, false));
        }
    }

    /** By its number or by its name. */
    private void choose(Field.Choice choice, List<Field.Option> options, String line) {
        for (int i = 0; i < options.size(); i++) {
            String id = options.get(i).id();
            if (line.equals(Integer.toString(i + 1)) || line.equalsIgnoreCase(id)) {
                judged(choice.id(), id, course.choose(choice.id(), id));
                return;
            }
        }
        page.say("command.text.not-an-option", Typed.shown(line), Integer.toString(options.size()));
    }

    private void sure() {
        if (doubt.isEmpty()) {
            page.say("command.text.nothing-doubted");
            return;
        }
        judged(
                doubt.get().field(),
                doubt.get().text(),
                course.type(doubt.get().field(), doubt.get().text(), true));
    }

    /** To the step the finding points at, else to the last one that is done. */
    private void back(State state, Question question, String reason) {
        String why = reason.isEmpty() ? words.of("command.text.back-reason") : reason;
        Optional<String> target;
        if (question instanceof Question.Mend mend) {
            target = Optional.of(mend.backTo());
        } else if (question instanceof Question.Ended ended && !ended.backTo().isEmpty()) {
            target = Optional.of(ended.backTo());
        } else {
            target = lastDone(state);
        }
        target.ifPresentOrElse(
                step -> {
                    judged("", "", course.reopen(step, why));
                    shown = "";
                },
                () -> page.say("command.text.nothing-before"));
    }

    private static Optional<String> lastDone(State state) {
        return state.steps().subList(0, state.steps().indexOf(state.current())).stream()
                .filter(step -> step.status() == State.Status.DONE)
                .reduce((earlier, later) -> later)
                .map(step -> step.step().id());
    }

    private void await() {
        long left = course.dwellLeft();
        if (left > 0) {
            page.say("command.text.waiting", Long.toString(left));
            waiting.pass(left);
        }
    }

    /** Leaves, unless the board has to be made safe first. */
    private boolean paused(Verdict verdict) {
        judged("", "", verdict);
        boolean safeFirst = course.state()
                .card()
                .filter(State.Card.MakeSafe.class::isInstance)
                .isPresent();
        return verdict instanceof Verdict.Accept && !safeFirst;
    }

    private void judged(String field, String text, Verdict verdict) {
        if (verdict instanceof Verdict.Accept accept) {
            doubt = Optional.empty();
            accepted(accept);
        } else if (verdict instanceof Verdict.AskAgain again) {
            page.tell("! ", again.says());
            if (doubt.filter(before -> before.field().equals(field)).isPresent()) {
                page.outside(course.state().current().step());
            }
            doubt = Optional.of(new Doubt(field, text));
            page.say(written(field) ? "command.text.again-written" : "command.text.again");
        } else if (verdict instanceof Verdict.Refuse refuse) {
            page.tell("✗ ", refuse.says());
        }
    }

    /** Whether it was copied or chosen; no meter shows it. */
    private boolean written(String field) {
        return course.field(field)
                .filter(each -> each instanceof Field.Number number && !number.measured())
                .isPresent();
    }

    private void accepted(Verdict.Accept accept) {
        if (accept.fact() instanceof Fact.Reading reading) {
            page.readBack(new Quantity(reading.value(), reading.unit(), reading.typed()));
        }
        page.tell("  ", accept.says());
        State state = course.state();
        String step = accept.fact().step();
        if (!state.current().step().id().equals(step)) {
            state.steps().stream()
                    .filter(one -> one.step().id().equals(step))
                    .map(State.StepState::findings)
                    .forEach(page::findings);
        }
    }

    private int left(State state) {
        page.blank();
        if (state.power() != State.Power.OFF) {
            page.say("command.text.left-powered");
        }
        page.say("command.text.left");
        return state.card().filter(State.Card.Stop.class::isInstance).isPresent() ? Answer.NO : Answer.DONE;
    }

    /** The word that acknowledges a caution is another one for each, so that no habit can form. */
    private String word(Caution caution) {
        String key = "command.text.word." + caution.id();
        return words.has(key) ? words.of(key) : caution.id();
    }
}
