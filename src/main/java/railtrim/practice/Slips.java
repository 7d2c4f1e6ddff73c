package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import railtrim.job.Fact;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Verdict;

/**
 * A hand that slips: whenever it comes to a step, with a given chance, one thing in it is done wrong. What is wrong on the bench is wrong there
 * for real. The hand does not know that it slipped; when the procedure objects it looks for the cause, puts it right and goes on.
 */
final class Slips implements Worker {
    /** What a reading may be told about without anything being wrong with it. */
    private static final Set<String> NO_OBJECTION =
            Set.of("verdict.not-now", "verdict.caution-first", "verdict.rail-first", "verdict.pins-first");

    /** It can happen anywhere, and would crowd out everything else. */
    private static final double WALKING_AWAY = 0.1;

    private final Worker hand;
    private final Workpiece piece;
    private final RandomGenerator chance;
    private final double probability;
    private final SlipDeeds deeds;
    private final List<Case> cases = new ArrayList<>();
    private String visited = "";
    private boolean due;
    private Optional<Case> justMade = Optional.empty();
    private final List<String> back = new ArrayList<>();
    private String lastAlarm = "";
    private String answering = "";
    private int stopped;

    /** A slip from the moment it was made. */
    private static final class Case {
        private final Slip slip;
        private final String step;
        private final String field;
        private final int harmBefore;
        private String suspicion = "";
        private boolean lookedOver;
        private SlipMade.Noticed noticed = SlipMade.Noticed.NEVER;
        private String key = "";
        private String at = "";

        Case(Slip slip, String step, String field, int harmBefore) {
            this.slip = slip;
            this.step = step;
            this.field = field;
            this.harmBefore = harmBefore;
        }

        boolean open() {
            return noticed == SlipMade.Noticed.NEVER;
        }

        SlipMade made() {
            return new SlipMade(slip, step, field, noticed, key, at);
        }
    }

    /** @param probability of a slip in a step, 0 to 1 */
    Slips(Worker hand, Workpiece piece, RandomGenerator chance, double probability) {
        this.hand = hand;
        this.piece = piece;
        this.chance = chance;
        this.probability = probability;
        this.deeds = new SlipDeeds(hand, piece, chance);
    }

    @Override
    public List<SlipMade> slips() {
        return cases.stream().map(Case::made).toList();
    }

    // ---- doing ----

    @Override
    public Answer next(State state, Course course) {
        Optional<Answer> mending = mend(state);
        if (mending.isPresent()) {
            return mending.get();
        }
        arrive(state);
        Optional<Field> question = question(state, course);
        if (due && question.isPresent()) {
            Optional<Answer> wrong = slip(question.get(), state, course);
            if (wrong.isPresent()) {
                return wrong.get();
            }
        }
        return lookOver(deeds.honest(state, course));
    }

    /** At a loss, the hand goes over what it wrote before, oldest first. */
    private Answer lookOver(Answer answer) {
        if (answer instanceof Answer.Stuck) {
            Optional<Case> doubt =
                    open(Slip::onPaper).filter(each -> !each.lookedOver).findFirst();
            if (doubt.isPresent()) {
                doubt.get().lookedOver = true;
                doubt.get().suspicion = lastAlarm;
                return new Answer.Reopened(doubt.get().step, "It does not add up; going over what was written.");
            }
        }
        return answer;
    }

    /** Each time the work comes to another step, chance decides whether it goes wrong there. */
    private void arrive(State state) {
        String here = state.card().isPresent() ? "card" : state.current().step().id();
        if (!here.equals(visited)) {
            visited = here;
            due = chance.nextDouble() < probability;
        }
    }

    private static Optional<Field> question(State state, Course course) {
        boolean asks = state.card().isEmpty()
                && !state.complete()
                && state.current().open().isEmpty()
                && !state.current().missing().isEmpty();
        return asks ? course.field(state.current().missing().get(0)) : Optional.empty();
    }

    /** Slips now, or later in the step; a step whose last question is reached without an occasion goes well after all. */
    private Optional<Answer> slip(Field field, State state, Course course) {
        Step step = state.current().step();
        boolean last = state.current().missing().size() == 1;
        if (!last && chance.nextInt(state.current().missing().size()) > 0) {
            return Optional.empty();
        }
        List<Slip> possible = new ArrayList<>(SlipPlaces.at(field, step));
        if (chance.nextDouble() > WALKING_AWAY) {
            possible.remove(Slip.NEXT_DAY);
        }
        while (!possible.isEmpty()) {
            Slip slip = possible.remove(chance.nextInt(possible.size()));
            int harm = piece.bench.harm();
            Optional<Answer> wrong = deeds.commit(slip, field, state, course);
            if (wrong.isPresent()) {
                due = false;
                Case made = new Case(slip, step.id(), field.id(), harm);
                cases.add(made);
                justMade = Optional.of(made);
                return wrong;
            }
            Optional<Answer> afterAll = deeds.afterAll();
            if (afterAll.isPresent()) {
                return afterAll;
            }
        }
        return Optional.empty();
    }

    // ---- hearing ----

    @Override
    public void hear(Answer answer, Verdict verdict, State after) {
        hand.hear(answer, verdict, after);
        answering = answered(answer);
        Optional<Case> made = justMade;
        justMade = Optional.empty();
        Optional<String> objection = objection(verdict);
        if (objection.isPresent() && made.isPresent() && atOnce(made.get())) {
            caught(made.get(), objection.get());
            deeds.found();
            return;
        }
        retyped(verdict, made);
        alarm(after).ifPresent(key -> {
            lastAlarm = key;
            suspect(key, after);
        });
    }

    /** The answer itself was wrong, so an objection to it is an objection to the slip. */
    private static boolean atOnce(Case made) {
        Slip slip = made.slip;
        return slip == Slip.WRONG_LEG && made.field.equals("solder.leg")
                || slip.onPaper()
                || slip == Slip.NO_COLD_START
                || slip == Slip.OVERSHOOT
                || slip == Slip.MISSED_FAULT;
    }

    private static Optional<String> objection(Verdict verdict) {
        List<railtrim.quantity.Message> says = verdict instanceof Verdict.AskAgain again
                ? again.says()
                : verdict instanceof Verdict.Refuse refuse ? refuse.says() : List.of();
        return says.stream()
                .map(railtrim.quantity.Message::key)
                .filter(key -> !NO_OBJECTION.contains(key))
                .reduce((one, other) -> other);
    }

    /** A question that had a wrong answer was answered anew after something had been found wrong. */
    private void retyped(Verdict verdict, Optional<Case> made) {
        if (verdict instanceof Verdict.Accept) {
            open(Slip::onPaper)
                    .filter(each -> each.field.equals(answering)
                            && !each.suspicion.isEmpty()
                            && made.filter(now -> now == each).isEmpty())
                    .forEach(each -> caught(each, each.suspicion));
        }
    }

    private static String answered(Answer answer) {
        if (answer instanceof Answer.Typed typed) {
            return typed.field();
        }
        return answer instanceof Answer.Picked picked ? picked.field() : "";
    }

    /** What the procedure makes of everything so far: a card, or a step that does not add up. */
    private static Optional<String> alarm(State after) {
        if (after.card().isPresent()) {
            State.Card card = after.card().get();
            if (card instanceof State.Card.MakeSafe safe) {
                return Optional.of(safe.reason().key());
            }
            if (card instanceof State.Card.Stop stop) {
                return Optional.of(stop.reason().key());
            }
            return Optional.of("card.resume");
        }
        return after.current().findings().stream()
                .filter(Step.Finding::blocks)
                .map(finding -> finding.message().key())
                .findFirst();
    }

    private void suspect(String key, State after) {
        if (key.equals("card.resume")) {
            open(slip -> slip == Slip.NEXT_DAY).forEach(each -> caught(each, key));
            return;
        }
        if (key.equals("alarm.fault") || key.equals("verdict.fault-after-margin")) {
            open(slip -> slip == Slip.MISSED_FAULT || slip == Slip.NO_COLD_START && key.startsWith("verdict"))
                    .forEach(each -> caught(each, key));
            return;
        }
        open(Slip::onPaper).forEach(each -> each.suspicion = key);
        open(slip -> !slip.onPaper() && slip != Slip.MISSED_FAULT && slip != Slip.NO_COLD_START)
                .filter(each -> deeds.shows(each.slip))
                .forEach(each -> {
                    caught(each, key);
                    deeds.putRight(each.slip);
                    if (each.slip.inWiring()) {
                        back.add(wiringStep(after));
                    } else if (each.slip == Slip.SWAPPED_RESISTOR) {
                        back.add("hand");
                    }
                });
    }

    private static String wiringStep(State after) {
        boolean fitted = after.job().entries().stream()
                .map(entry -> entry.fact())
                .anyMatch(fact ->
                        fact instanceof Fact.Choice choice && choice.field().equals("fit.pair"));
        return fitted ? "fit" : "solder";
    }

    private java.util.stream.Stream<Case> open(java.util.function.Predicate<Slip> which) {
        return cases.stream().filter(each -> each.open() && which.test(each.slip)).toList().stream();
    }

    private void caught(Case made, String key) {
        made.noticed =
                piece.bench.harm() > made.harmBefore ? SlipMade.Noticed.AFTER_HARM : SlipMade.Noticed.BEFORE_HARM;
        made.key = key;
        made.at = answering;
    }

    // ---- mending ----

    /** What was found wrong with the wiring is mended with the power off, and proven again. A stop that a slip brought about is gone back from. */
    private Optional<Answer> mend(State state) {
        if (!back.isEmpty() || deeds.hasWork()) {
            if (state.card().filter(card -> !(card instanceof State.Card.Stop)).isPresent()) {
                return Optional.empty();
            }
            if (piece.bench.isOn() && state.power() == State.Power.ON) {
                return Optional.of(new Answer.Alarmed("pressed"));
            }
            deeds.work();
            if (!back.isEmpty()) {
                return Optional.of(new Answer.Reopened(back.remove(0), "The wiring was wrong; mended."));
            }
        }
        if (state.card().isPresent() && state.card().get() instanceof State.Card.Stop stop) {
            boolean doubtful = open(Slip::onPaper).findAny().isPresent();
            if (doubtful && stopped++ < 2) {
                return Optional.of(new Answer.Reopened(stop.backTo(), "Perhaps a reading was wrong; measuring again."));
            }
        }
        return Optional.empty();
    }
}
