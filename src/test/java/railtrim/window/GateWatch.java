package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.Procedure;
import railtrim.procedure.Rule;
import railtrim.procedure.State;
import railtrim.procedure.State.Status;

/** Looks over the window's shoulder: nothing is taken past a gate, and what is shown is what the facts say. */
final class GateWatch {
    private final Procedure procedure = Procedure.builtIn();
    private Optional<Desk> watched = Optional.empty();
    private int seen;

    /** What is wrong after one more gesture; called on the window's thread. */
    List<String> look(Opened window) {
        Optional<Desk> desk = window.shell.desk();
        if (desk.isEmpty()) {
            watched = desk;
            return List.of();
        }
        List<Entry> entries = desk.get().state().job().entries();
        if (!watched.equals(desk)) {
            watched = desk;
            seen = entries.size();
        }
        List<String> wrong = new ArrayList<>();
        for (int i = seen; i < entries.size(); i++) {
            taken(before(desk.get(), i), entries.get(i)).ifPresent(wrong::add);
        }
        if (seen < entries.size()) {
            seen = entries.size();
            rules(desk.get(), wrong);
        }
        shown(window, desk.get(), wrong);
        return wrong;
    }

    private State before(Desk desk, int entries) {
        Job job = desk.state().job();
        return procedure.state(new Job(job.name(), job.entries().subList(0, entries), job.origin()));
    }

    /** Told from the state before it: was its step open, with its cautions read? */
    private static Optional<String> taken(State before, Entry entry) {
        Fact fact = entry.fact();
        boolean answer = fact instanceof Fact.Reading
                || fact instanceof Fact.Choice
                || fact instanceof Fact.Note
                || fact instanceof Fact.Power;
        if (!answer) {
            return Optional.empty();
        }
        if (before.card().isPresent()) {
            boolean its = List.of("safe", "resume").contains(fact.step());
            return its ? Optional.empty() : Optional.of(fact + " was taken while " + before.card() + " stood");
        }
        State.StepState step = before.step(fact.step());
        boolean shut = step.status() == Status.LOCKED || step.status() == Status.NOT_NEEDED;
        boolean unread = step.status() == Status.CURRENT && !step.open().isEmpty();
        return shut || unread
                ? Optional.of(fact + " was taken at " + step.status() + " with " + step.open() + " unread")
                : Optional.empty();
    }

    private void rules(Desk desk, List<String> wrong) {
        State state = desk.state();
        for (Rule rule : Rule.all()) {
            rule.broken(state.job(), state).ifPresent(how -> wrong.add(rule.name() + ": " + how));
        }
    }

    private void shown(Opened window, Desk desk, List<String> wrong) {
        State afresh = procedure.state(desk.state().job());
        if (!summary(afresh).equals(summary(desk.state()))) {
            wrong.add("shown " + summary(desk.state()) + ", the facts say " + summary(afresh));
        }
        // A step that was just finished stays in view though what was answered there may have made it needless.
        boolean finished = desk.shown().status() == Status.NOT_NEEDED
                && !desk.shown().entries().isEmpty();
        // Of the step below a card nothing is seen.
        boolean inView = desk.state().card().isEmpty();
        if (inView && !Desk.readable(desk.shown()) && !finished) {
            wrong.add("a step is shown that is " + desk.shown().status());
        }
        boolean plain = desk.state().card().isEmpty() && !desk.atEnd();
        String title = desk.title(window.words);
        // In one column the picture may be in front of the step.
        if (plain
                && window.has("step-title")
                && !((Label) window.node("step-title")).getText().equals(title)) {
            wrong.add("the title is not " + title);
        }
        if (window.node("next").isDisabled() == desk.nextOpen()
                && !window.shell.sheet().open()) {
            wrong.add("Next is not as the job stands");
        }
    }

    /** What a person would be told of a job: where it stands and what each step wants. */
    static String summary(State state) {
        return state.current().step().id() + " " + state.card() + " " + state.power() + " " + state.complete() + " "
                + state.steps().stream()
                        .map(step -> step.status() + "" + step.open() + step.missing())
                        .toList();
    }
}
