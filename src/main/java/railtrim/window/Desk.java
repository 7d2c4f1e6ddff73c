package railtrim.window;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import railtrim.job.JournalProblem;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

/**
 * One job as the window works on it: the course, and what is the window's own, namely which step is shown and what was last said
 * about each field. A finished step stays shown until the person goes on.
 */
final class Desk {
    private static final String MOVED_ON = "job.moved-on";

    private final Course course;
    private final Time time;
    private final Optional<LongConsumer> pass;
    private final List<Runnable> watchers = new ArrayList<>();
    private final Map<String, Verdict> said = new HashMap<>();
    private final Map<String, String> drafts = new HashMap<>();
    private State state;
    private String shown;
    private boolean lookingBack;
    private boolean atEnd;
    private List<Message> stoppedBy = List.of();
    private Optional<Message> trouble = Optional.empty();
    private Optional<Message> movedOn = Optional.empty();

    /** @param pass lets so many seconds go by at once, where time is not real */
    Desk(Course course, Time time, Optional<LongConsumer> pass) {
        this.course = course;
        this.time = time;
        this.pass = pass;
        this.state = course.state();
        this.shown = state.current().step().id();
        this.atEnd = state.complete();
    }

    Course course() {
        return course;
    }

    Instant now() {
        return time.now();
    }

    Optional<LongConsumer> pass() {
        return pass;
    }

    State state() {
        return state;
    }

    /** What a job taken over as a plan says about a field, in words. */
    Optional<String> proposed(Field field, Words words) {
        return TakeOver.inWords(field, state.figures(), words);
    }

    /** Called after anything changed. */
    void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    StepState shown() {
        return state.step(shown);
    }

    /** Whether the shown step is the one to work on, rather than a finished one kept in view. */
    boolean working() {
        return state.card().isEmpty() && !state.complete() && shown.equals(current());
    }

    /** Whether a field can be answered: one of the step at work, or a slip to mend in the step just finished. */
    boolean open(Field field) {
        return !lookingBack && !atEnd() && course.open(field.id());
    }

    /** Whether the person went back on purpose to read an earlier step. */
    boolean lookingBack() {
        return lookingBack;
    }

    /**
     * Whether the step shown is read again and waits to be done anew. One that was finished just now is done, though a step that comes round again,
     * as each one on the way down does, already waits for its next time.
     */
    boolean lookingAtStale() {
        return lookingBack && shown().status() == State.Status.STALE;
    }

    /** Whether everything is done and the closing page is shown. */
    boolean atEnd() {
        return atEnd && state.complete();
    }

    /** Whether the board is being made safe, before which nothing else can be done. */
    boolean makingSafe() {
        return state.card().filter(State.Card.MakeSafe.class::isInstance).isPresent();
    }

    /** Next is open when what is shown is finished and there is somewhere to go. */
    boolean nextOpen() {
        return state.card().isEmpty() && !working() && !atEnd();
    }

    boolean backOpen() {
        return state.card().isEmpty() && (atEnd() || before(shown).isPresent());
    }

    void next() {
        if (!nextOpen()) {
            return;
        }
        boolean last = shown.equals(current()) || lookingBack && after(shown).isEmpty();
        if (state.complete() && last) {
            end();
        } else {
            String to = lookingBack ? after(shown).orElse(current()) : current();
            show(to, !to.equals(current()));
        }
    }

    void back() {
        if (!backOpen()) {
            return;
        }
        if (atEnd()) {
            show(current(), true);
        } else {
            before(shown).ifPresent(step -> show(step, true));
        }
    }

    void look(String step) {
        if (state.card().isEmpty() && readable(state.step(step))) {
            show(step, !step.equals(current()));
        }
    }

    void toCurrent() {
        if (state.complete()) {
            end();
        } else {
            show(current(), false);
        }
    }

    void type(String field, String text, boolean sure) {
        offer(field, () -> course.type(field, text, sure));
    }

    void choose(String field, String option) {
        offer(field, () -> course.choose(field, option));
    }

    void turn(String field) {
        offer(field, () -> course.turn(field));
    }

    void acknowledge(String caution) {
        offer(caution, () -> course.acknowledge(caution));
    }

    void alarm(String reason) {
        offer("alarm", () -> course.alarm(reason));
    }

    void pause(String note) {
        offer("pause", () -> course.pause(note));
    }

    void skip(String reason) {
        offer("skip", () -> course.skip(reason));
    }

    void reopen(String step, String reason) {
        offer("reopen", () -> course.reopen(step, reason));
        if (said("reopen").filter(Verdict.Accept.class::isInstance).isPresent()) {
            toCurrent();
        }
    }

    void takeBack() {
        offer("take-back", course::takeBack);
        if (said("take-back").filter(Verdict.Accept.class::isInstance).isPresent()) {
            said.clear();
            toCurrent();
        }
    }

    Optional<Verdict> said(String about) {
        return Optional.ofNullable(said.get(about));
    }

    /** What was said of the entry because of which the board is made safe, such as where the probe is likely to be. */
    List<Message> stoppedBy() {
        return stoppedBy;
    }

    /** What stands in the way of saving, until something was saved again. */
    Optional<Message> trouble() {
        return trouble;
    }

    /** That the job goes on in another file, until the next entry is saved there. */
    Optional<Message> movedOn() {
        return movedOn;
    }

    /** Text typed but not yet taken; kept while the person looks elsewhere. */
    String draft(String field) {
        return drafts.getOrDefault(field, "");
    }

    Map<String, String> drafts() {
        return Map.copyOf(drafts);
    }

    void draft(String field, String text) {
        if (text.isEmpty()) {
            drafts.remove(field);
        } else {
            drafts.put(field, text);
        }
    }

    /** What the page asks for now: of the card that stands before the steps, else of the step shown. */
    List<Field> fields() {
        List<Field> all = state.card().isPresent()
                ? course.cardFields().map(Step::fields).orElse(List.of())
                : shown().step().fields();
        return all.stream().filter(field -> field.asked().test(state.figures())).toList();
    }

    /** What the page is called. */
    String title(Words words) {
        String stands = state.card()
                .map(card -> card instanceof State.Card.MakeSafe
                        ? "safe"
                        : card instanceof State.Card.Stop ? "stop" : "resume")
                .orElse(atEnd() ? "done" : "");
        return words.of(stands.isEmpty() ? "step." + shown + ".title" : "card." + stands + ".title");
    }

    /** First readings that must not be seen now, because an independent second one is still to be taken. */
    Set<String> hidden() {
        Set<String> hidden = new HashSet<>();
        for (Field field : state.current().step().fields()) {
            if (field instanceof Field.Number number
                    && state.current().missing().contains(field.id())) {
                number.again().ifPresent(hidden::add);
            }
        }
        return hidden;
    }

    /** Something outside the job changed, such as the practice bench. */
    void changed() {
        watchers.forEach(Runnable::run);
    }

    private void offer(String about, Supplier<Verdict> offered) {
        boolean hadCard = state.card().isPresent();
        String before = current();
        try {
            Verdict verdict = offered.get();
            said.put(about, verdict);
            if (verdict instanceof Verdict.Accept accept) {
                // Only an entry that was kept shows that the file takes some: a refusal leaves the way on in sight.
                trouble = Optional.empty();
                drafts.remove(about);
                accepted(about, accept);
            }
        } catch (BadInput bad) {
            said.put(about, new Verdict.Refuse(List.of(bad.told())));
        } catch (JournalProblem problem) {
            said.remove(about);
            trouble = Optional.of(problem.told());
        }
        state = course.state();
        if (!hadCard) {
            stoppedBy = makingSafe() ? taken(about) : List.of();
        }
        boolean cardGone = hadCard && state.card().isEmpty();
        boolean elsewhere = !shown.equals(before) && !before.equals(current());
        if (cardGone || elsewhere) {
            atEnd = false;
            shown = current();
            lookingBack = false;
            said.clear();
        }
        watchers.forEach(Runnable::run);
    }

    private List<Message> taken(String about) {
        return said(about)
                .filter(Verdict.Accept.class::isInstance)
                .map(verdict -> ((Verdict.Accept) verdict).says())
                .orElse(List.of());
    }

    /** What is told of the file is shown with how the job is saved, not under the field. */
    private void accepted(String about, Verdict.Accept accept) {
        movedOn = accept.says().stream()
                .filter(says -> says.key().equals(MOVED_ON))
                .findFirst();
        List<Message> says = accept.says().stream()
                .filter(each -> !each.key().equals(MOVED_ON))
                .toList();
        said.put(about, new Verdict.Accept(accept.fact(), says));
    }

    private void end() {
        atEnd = true;
        lookingBack = false;
        watchers.forEach(Runnable::run);
    }

    private void show(String step, boolean back) {
        atEnd = false;
        if (!step.equals(shown)) {
            said.clear();
        }
        shown = step;
        lookingBack = back;
        watchers.forEach(Runnable::run);
    }

    private String current() {
        return state.current().step().id();
    }

    static boolean readable(StepState step) {
        return switch (step.status()) {
            case DONE, STALE, SKIPPED, CURRENT -> true;
            case LOCKED, NOT_NEEDED -> false;
        };
    }

    private Optional<String> before(String step) {
        Optional<String> found = Optional.empty();
        for (StepState each : state.steps()) {
            if (each.step().id().equals(step)) {
                return found;
            }
            if (readable(each)) {
                found = Optional.of(each.step().id());
            }
        }
        return found;
    }

    private Optional<String> after(String step) {
        return state.steps().stream()
                .dropWhile(each -> !each.step().id().equals(step))
                .skip(1)
                .filter(Desk::readable)
                .map(each -> each.step().id())
                .findFirst();
    }
}
