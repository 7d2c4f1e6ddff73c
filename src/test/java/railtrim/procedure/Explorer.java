package railtrim.procedure;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Status;
import railtrim.quantity.Unit;

/**
 * Goes every way through the procedure that the alphabet of facts allows. In each state it tries: the good answer, low, high and absurd readings,
 * every other option, an answer too soon, an answer that is not asked for yet, the last answer again or taken back, each caution, going back, leaving out, make
 * safe, a pause, being taken up again after each gap, and facts written into the file by hand. A state is told from another by {@link #key}; each is
 * gone on from once. A detour is any move but the good one; a way has at most so many.
 */
final class Explorer {
    private static final List<String> GONE_BACK_TO = List.of(
            "meter",
            "pins",
            "ref.on",
            "legs",
            "base.on",
            "load",
            "aim",
            "ends",
            "solder",
            "proof",
            "first.on",
            "first.load",
            "budget",
            "set.on",
            "soak",
            "cool",
            "cold",
            "setting",
            "fit",
            "fit.on",
            "fit.soak");
    private static final Set<String> TOLD_APART =
            Set.of("place.leg", "clip.pair", "solder.pair", "smooth.feel", "fit.pair", "fit.left", "cool.how");
    private static final long NO_GAP_KNOWN = -1;

    private final Procedure procedure;
    private final List<Rule> rules;
    private final GoodAnswers good;
    private final Recall recall = new Recall();
    private final Map<String, Integer> visited = new HashMap<>();
    private final Map<String, String> broken = new LinkedHashMap<>();
    /** Those with the most detours left first, so that few are gone on from twice. */
    private final Queue<Node> waiting = new PriorityQueue<>(Comparator.comparingInt(node -> -node.detours()));

    private Job last = Job.empty("");
    private long moves;
    private long limit = Long.MAX_VALUE;

    private record Node(Job job, State state, int detours, String way) {}

    Explorer(Procedure procedure, List<Rule> rules, GoodAnswers good) {
        this.procedure = procedure;
        this.rules = rules;
        this.good = good;
    }

    /** Stops after so many moves. */
    Explorer atMost(long most) {
        limit = most;
        return this;
    }

    int states() {
        return visited.size();
    }

    long moves() {
        return moves;
    }

    /** Whether every way was gone to its end. */
    boolean exhausted() {
        return waiting.isEmpty();
    }

    /** Rules found broken, each with the way that led there. */
    Map<String, String> broken() {
        return broken;
    }

    /** @param stopAt a rule whose breach ends the exploration, "" for none */
    Explorer from(Job start, int detours, String stopAt) {
        arrive(start, procedure.state(start, recall.elsewhere()), detours, "");
        while (!waiting.isEmpty() && moves < limit && !broken.containsKey(stopAt)) {
            expand(waiting.poll());
        }
        return this;
    }

    /** The facts of the state arrived at last. */
    Job last() {
        return last;
    }

    private void arrive(Job job, State state, int detours, String way) {
        last = job;
        for (Rule rule : rules) {
            if (!broken.containsKey(rule.name())) {
                rule.broken(job, state).ifPresent(why -> broken.put(rule.name(), why + " after" + way));
            }
        }
        String key = key(Withdrawals.counting(job), state);
        if (visited.getOrDefault(key, -1) < detours) {
            visited.put(key, detours);
            waiting.add(new Node(job, state, detours, way));
        }
    }

    /** What tells two states apart: where it stands, what is asked, what is done, stale and left out, the way down, the power. */
    private static String key(Job job, State state) {
        Descent descent = state.figures().descent();
        String statuses = state.steps().stream()
                .filter(step -> step.step().hold() || step.status() == Status.SKIPPED)
                .map(step -> step.status().name().substring(0, 2))
                .collect(Collectors.joining());
        double left = state.figures().floor().isPresent() && descent.target().isPresent()
                ? Math.rint((descent.target().getAsDouble()
                                - state.figures().floor().getAsDouble())
                        / state.figures().stepVolts())
                : -1;
        return state.current().step().id()
                + state.current().missing()
                + state.current().open().size()
                + state.current().findings().stream().anyMatch(Step.Finding::blocks)
                + state.card().map(Explorer::cardKey).orElse("")
                + state.power()
                + state.complete()
                + statuses
                + Math.min(2, descent.run())
                + descent.ended()
                + descent.faulted()
                + descent.endOfTravel()
                + left
                + paused(job)
                + owed(job)
                + said(job);
    }

    private static String cardKey(Card card) {
        return card instanceof Card.Resume resume ? "resume" + resume.fields() : card.toString();
    }

    /** Where things were said to be: what the way so far looks like is not enough where the wrong leg is as good as the right one. */
    private static String said(Job job) {
        Map<String, String> said = new TreeMap<>();
        for (Entry entry : job.entries()) {
            if (entry.fact() instanceof Fact.Choice choice && TOLD_APART.contains(choice.field())) {
                said.put(choice.field(), choice.option());
            }
        }
        return said.toString();
    }

    /** Steps gone back to and not answered since. */
    private static Set<String> owed(Job job) {
        Set<String> owed = new TreeSet<>();
        for (Entry entry : job.entries()) {
            if (entry.fact() instanceof Fact.Reopened again) {
                owed.add(again.step());
            } else if (Figures.fieldOf(entry.fact()).isPresent() || entry.fact() instanceof Fact.Skipped) {
                owed.remove(entry.fact().step());
            }
        }
        return owed;
    }

    private static boolean paused(Job job) {
        boolean paused = false;
        for (Entry entry : job.entries()) {
            paused = entry.fact() instanceof Fact.Paused || paused && entry.fact() instanceof Fact.Alarm;
        }
        return paused;
    }

    // ---- moves ----

    private void expand(Node node) {
        boolean waits = node.state().current().step().dwellSeconds() > 0;
        long wait = waits ? node.state().current().step().dwellSeconds() + 5L : 5;
        goodMove(node, wait);
        if (node.detours() == 0) {
            return;
        }
        if (node.state().card().isPresent()) {
            atACard(node, node.state().card().get());
        } else {
            answers(node, wait);
            around(node);
        }
        always(node);
    }

    private void goodMove(Node node, long wait) {
        State state = node.state();
        if (state.card().isPresent()) {
            Card card = state.card().get();
            if (card instanceof Card.Stop stop) {
                offer(node, "", 5, course -> course.reopen(stop.backTo(), "looked again"));
            } else {
                String field = card instanceof Card.Resume resume
                        ? resume.next(node.job().entries())
                        : "safe.rail";
                offer(node, "", 5, course -> answerWell(course, field));
            }
        } else if (state.complete()) {
            return;
        } else if (!state.current().open().isEmpty()) {
            offer(
                    node,
                    "",
                    5,
                    course -> course.acknowledge(state.current().open().get(0)));
        } else if (!state.current().missing().isEmpty()) {
            offer(
                    node,
                    "",
                    wait,
                    course -> answerWell(course, state.current().missing().get(0)));
        } else {
            String back = state.current().findings().stream()
                    .filter(Step.Finding::blocks)
                    .map(Step.Finding::backTo)
                    .filter(id -> !id.isEmpty())
                    .findFirst()
                    .orElse(state.current().step().id());
            offer(node, "", 5, course -> course.reopen(back, "it did not add up"));
        }
    }

    private void answerWell(Course course, String id) {
        Field field = course.field(id).orElseThrow(() -> new AssertionError(id + " is asked but has no field"));
        Figures figures = course.state().figures();
        if (field instanceof Field.Number number) {
            course.type(id, good.reading(number, figures), true);
        } else if (field instanceof Field.Text) {
            course.type(id, good.text(id, figures), true);
        } else if (field instanceof Field.Choice choice) {
            course.choose(id, good.option(choice, figures));
        } else {
            course.turn(id);
        }
    }

    private void atACard(Node node, Card card) {
        if (card instanceof Card.Stop) {
            return;
        }
        String field =
                card instanceof Card.Resume resume ? resume.next(node.job().entries()) : "safe.rail";
        Field asked = procedureField(node, field);
        badAnswers(node, asked, 5);
        // What the card stands before cannot be answered.
        node.state().current().missing().stream()
                .findFirst()
                .ifPresent(id -> offer(node, " out of order " + id, 5, course -> course.turn(id)));
        offer(node, " go back from a card", 5, course -> course.reopen("legs", "never mind the card"));
    }

    private Field procedureField(Node node, String id) {
        return course(node, 5).field(id).orElseThrow();
    }

    private void answers(Node node, long wait) {
        State.StepState current = node.state().current();
        if (!current.open().isEmpty()) {
            current.missing().stream()
                    .findFirst()
                    .ifPresent(id ->
                            offer(node, " before the caution " + id, wait, course -> answerWellIfAsked(course, id)));
            return;
        }
        current.missing().stream().findFirst().ifPresent(id -> {
            Field field = procedureField(node, id);
            badAnswers(node, field, wait);
            if (current.step().dwellSeconds() > 0) {
                offer(node, " too soon " + id, 1, course -> answerWellIfAsked(course, id));
            }
        });
        current.missing().stream()
                .skip(1)
                .findFirst()
                .ifPresent(id -> offer(node, " out of order " + id, wait, course -> answerWellIfAsked(course, id)));
        lastAnswered(Withdrawals.counting(node.job()))
                .ifPresent(id -> offer(node, " again " + id, wait, course -> answerWellIfAsked(course, id)));
    }

    private void answerWellIfAsked(Course course, String id) {
        if (course.field(id).isPresent()) {
            answerWell(course, id);
        }
    }

    private void badAnswers(Node node, Field field, long wait) {
        if (field instanceof Field.Number number) {
            Optional<Field.Expected> expected = Judge.expected(node.state().figures(), number);
            double low = expected.map(range -> range.low() - 0.3 * Math.abs(range.low()) - 0.2)
                    .orElse(1.0);
            double high = expected.map(range -> range.high() + 0.3 * Math.abs(range.high()) + 0.2)
                    .orElse(9.0);
            for (double value : new double[] {low, high, 1e7}) {
                String text = GoodAnswers.written(value, number);
                offer(node, " " + field.id() + " " + text, wait, course -> course.type(field.id(), text, true));
            }
        } else if (field instanceof Field.Choice choice) {
            List<Field.Option> options = choice.options().apply(node.state().figures());
            String right = good.option(choice, node.state().figures());
            options.stream()
                    .map(Field.Option::id)
                    .filter(id -> !id.equals(right))
                    .limit(5)
                    .forEach(id ->
                            offer(node, " " + field.id() + " " + id, wait, course -> course.choose(field.id(), id)));
        } else if (field instanceof Field.Text) {
            offer(
                    node,
                    " other words for " + field.id(),
                    wait,
                    course -> course.type(field.id(), "something else 99", true));
        }
    }

    private static Optional<String> lastAnswered(Job job) {
        for (int i = job.entries().size() - 1; i >= 0; i--) {
            Optional<String> field = Figures.fieldOf(job.entries().get(i).fact());
            if (field.isPresent()) {
                return field;
            }
        }
        return Optional.empty();
    }

    private void around(Node node) {
        for (String step : GONE_BACK_TO) {
            offer(node, " go back to " + step, 5, course -> course.reopen(step, "one lead was loose"));
        }
        offer(node, " leave out", 5, course -> course.skip("no time for this"));
        offer(node, " pause", 5, course -> course.pause("lunch"));
        // Written into the file by hand.
        String here = node.state().current().step().id();
        byHand(node, new Fact.Power(here, true));
        byHand(node, new Fact.Skipped(here, "x"));
        for (String field : List.of("proof.total", "smooth.total", "fit.total")) {
            byHand(node, new Fact.Reading(field.substring(0, field.indexOf('.')), field, 100, Unit.OHM, "100 Ω"));
        }
        byHand(node, new Fact.Choice("soak", "soak.seen", "well"));
        byHand(node, new Fact.Choice("down.watch", "down.seen", "well"));
    }

    private void always(Node node) {
        if (node.state().complete()) {
            return;
        }
        takeBack(node);
        offer(node, " make safe", 5, course -> course.alarm("pressed"));
        offer(node, " smoke", 5, course -> course.alarm("smoke"));
        for (long gap : List.of(60L, 1200L, 86_400L, NO_GAP_KNOWN)) {
            byHand(node, new Fact.Resumed("resume", gap));
        }
        Entry closed = new Entry(
                node.job().last() + 1,
                java.time.Instant.EPOCH,
                session(node.job()) + 1,
                0,
                new Fact.Resumed("resume", 60));
        moves++;
        Job job = node.job().with(closed);
        arrive(job, procedure.state(job, recall.elsewhere()), node.detours() - 1, node.way() + " closed and opened");
    }

    /** The last entry; where that cannot be taken back, a file says that it was. */
    private void takeBack(Node node) {
        if (Withdrawals.last(Withdrawals.counting(node.job())).isPresent()) {
            offer(node, " take back", 5, Course::takeBack);
        } else {
            byHand(
                    node,
                    new Fact.Withdrawn(
                            node.state().current().step().id(), node.job().last()));
        }
    }

    private static int session(Job job) {
        return job.entries().isEmpty()
                ? 1
                : job.entries().get(job.entries().size() - 1).session();
    }

    private void byHand(Node node, Fact fact) {
        Fork log = new Fork(node.job(), 5);
        log.append(fact);
        moves++;
        arrive(
                log.job(),
                procedure.state(log.job(), recall.elsewhere()),
                node.detours() - 1,
                node.way() + " by hand " + fact);
    }

    /** @param how "" for the good move, which is no detour */
    private void offer(Node node, String how, long later, Consumer<Course> move) {
        Fork log = new Fork(node.job(), later);
        Course course = new Course(procedure, log, recall.elsewhere(), node.state());
        move.accept(course);
        moves++;
        if (log.job().last() > node.job().last()) {
            int detours = how.isEmpty() ? node.detours() : node.detours() - 1;
            arrive(
                    log.job(),
                    course.state(),
                    detours,
                    node.way()
                            + (how.isEmpty()
                                    ? ""
                                    : "," + how + " at "
                                            + node.state().current().step().id()));
        }
    }

    private Course course(Node node, long later) {
        return new Course(procedure, new Fork(node.job(), later), recall.elsewhere(), node.state());
    }
}
