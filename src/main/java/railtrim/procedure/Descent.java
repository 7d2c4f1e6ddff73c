package railtrim.procedure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.threshold.Trial;

/**
 * The ways down, read from the facts in order: which voltages were held and what was seen, whether the present way down has ended, and where
 * the next decrement should land.
 */
final class Descent {
    static final Set<String> FAULTS = Set.of("glitch", "reset", "errors", "smoke");

    private static final Set<String> SAID =
            Set.of("first.seen", "down.seen", "down.end", "soak.seen", "cold.seen", "fit.seen", "fault.again");

    private final Given given;
    private List<Entry> entries = List.of();
    private final List<Trial> trials = new ArrayList<>();
    private int run = 1;
    private boolean cold;
    private int at;
    private boolean anotherLoad;
    private String otherLoad = "";
    private boolean ended;
    private boolean faulted;
    private boolean endOfTravel;
    private int rounds;
    private double pending = Double.NaN;
    private double position = Double.NaN;
    private double aimedFrom = Double.NaN;
    private boolean fine;
    private double lastRead = Double.NaN;
    private long roundBase;
    private long terminal;
    private long lateFault;

    /**
     * What it rests on besides the facts in order.
     *
     * @param since sequence number of the stock reading: what came before is no way down
     * @param step one decrement of the first way down, volts; {@code fineStep} of the later ones
     */
    private record Given(
            long since,
            OptionalDouble stock,
            OptionalDouble floor,
            OptionalDouble start,
            double step,
            double fineStep,
            String load) {
        static Given of(Figures figures) {
            return new Given(
                    figures.entry("stock.volts").map(Entry::sequence).orElse(Long.MAX_VALUE),
                    figures.stock(),
                    figures.floor(),
                    figures.start(),
                    figures.stepVolts(),
                    figures.fineStepVolts(),
                    figures.text("load.name").orElse(""));
        }
    }

    private Descent(Given given) {
        this.given = given;
    }

    /** One that stands where another does, to read on from there. */
    private Descent(Descent other) {
        given = other.given;
        trials.addAll(other.trials);
        run = other.run;
        cold = other.cold;
        anotherLoad = other.anotherLoad;
        otherLoad = other.otherLoad;
        ended = other.ended;
        faulted = other.faulted;
        endOfTravel = other.endOfTravel;
        rounds = other.rounds;
        pending = other.pending;
        position = other.position;
        aimedFrom = other.aimedFrom;
        fine = other.fine;
        lastRead = other.lastRead;
        roundBase = other.roundBase;
        terminal = other.terminal;
        lateFault = other.lateFault;
    }

    static Descent of(Figures figures, Recall recall) {
        Given given = Given.of(figures);
        List<Entry> entries = figures.job().entries();
        Descent now = recall.descent()
                .filter(last -> last.given.equals(given) && FactsByStep.goesOn(last.entries, entries))
                .map(last -> last.on(entries))
                .orElseGet(() -> recall.onceInThisJob(
                        List.of("descent", given, lastMove(entries)), () -> new Descent(given).read(entries)));
        recall.keep(now);
        return now;
    }

    /** The same way read on; facts that cannot change anything need not be read. */
    private Descent on(List<Entry> longer) {
        for (int i = entries.size(); i < longer.size(); i++) {
            if (movedBy(longer.get(i).fact())) {
                return new Descent(this).read(longer, entries.size());
            }
        }
        return this;
    }

    private Descent read(List<Entry> all) {
        return read(all, 0);
    }

    private Descent read(List<Entry> all, int from) {
        entries = all;
        for (int i = from; i < all.size(); i++) {
            if (all.get(i).sequence() > given.since()) {
                at = i;
                take(all.get(i));
            }
        }
        return this;
    }

    /** Seconds the voltage had been held, by the record, when what was seen was said. */
    private double dwelt() {
        return Dwell.passed(entries, at, entries.get(at).fact().step());
    }

    /** Whether a fact can change where the way down stands, or where the trimmer does. */
    static boolean movedBy(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            return RailFields.isLowered(reading.field()) || TrimmerFigures.AT_MAXIMUM.contains(reading.field());
        }
        if (fact instanceof Fact.Choice choice) {
            return SAID.contains(choice.field());
        }
        boolean named = fact instanceof Fact.Note note && note.field().equals("run.load");
        return named || fact instanceof Fact.Alarm || fact instanceof Fact.Resumed || fact instanceof Fact.Power;
    }

    /** Sequence number of the last fact that moves the way down or the trimmer, 0 for none. */
    static long lastMove(List<Entry> entries) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (movedBy(entries.get(i).fact())) {
                return entries.get(i).sequence();
            }
        }
        return 0;
    }

    private void take(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.Reading reading) {
            read(reading, entry.sequence());
        } else if (fact instanceof Fact.Note note && note.field().equals("run.load")) {
            otherLoad = note.text();
        } else if (fact instanceof Fact.Choice choice) {
            seen(choice, entry.sequence());
        } else if (fact instanceof Fact.Alarm || fact instanceof Fact.Resumed) {
            interrupted(entry.sequence());
        } else if (fact instanceof Fact.Power change && !change.on()) {
            position = Double.NaN;
        }
    }

    private void read(Fact.Reading reading, long sequence) {
        if (RailFields.isLowered(reading.field())) {
            lastRead = Math.abs(reading.value());
        }
        if (reading.field().equals("down.volts")) {
            pending = Math.abs(reading.value());
        }
    }

    private void seen(Fact.Choice choice, long sequence) {
        boolean fault = FAULTS.contains(choice.option());
        switch (choice.field()) {
            case "first.seen" -> atStart(fault, sequence);
            case "down.seen" -> held(choice.option(), fault, sequence);
            case "down.end" -> {
                if (choice.option().equals("at-end") && !ended) {
                    pending = Double.NaN;
                    endOfTravel = true;
                    end(true, false, sequence);
                }
            }
            case "soak.seen", "cold.seen", "fit.seen" -> {
                if (fault && !Double.isNaN(lastRead)) {
                    trials.add(new Trial(run, lastRead, true, choice.field().equals("cold.seen"), load(), dwelt()));
                    lateFault = sequence;
                }
            }
            case "fault.again" -> {
                if (!choice.option().equals("enough") && ended) {
                    run++;
                    fine = trials.stream().anyMatch(Trial::fault);
                    cold = choice.option().equals("cold");
                    anotherLoad = choice.option().equals("load");
                    ended = false;
                    endOfTravel = false;
                    rounds = 0;
                    position = Double.NaN;
                    aimedFrom = Double.NaN;
                    roundBase = sequence;
                }
            }
            default -> {}
        }
    }

    /** The start voltage is the first one held; met again after rework it changes nothing, unless it now fails. */
    private void atStart(boolean fault, long sequence) {
        if (Double.isNaN(lastRead)) {
            return;
        }
        position = lastRead;
        if (trials.isEmpty() || fault) {
            trials.add(new Trial(run, lastRead, fault, cold, load(), dwelt()));
            end(fault, fault, sequence);
        }
    }

    private void held(String option, boolean fault, long sequence) {
        if (Double.isNaN(pending) || ended) {
            return;
        }
        // What was aimed at stays what it was: this very trial must not move the aim it is judged by.
        aimedFrom = Double.isNaN(position) ? reentry() + step() : position;
        trials.add(new Trial(run, pending, fault, cold, load(), dwelt()));
        rounds++;
        boolean last = fault || option.equals("enough") || atFloor(pending);
        if (!last) {
            roundBase = sequence;
        }
        position = pending;
        pending = Double.NaN;
        end(last, fault, sequence);
    }

    private void end(boolean last, boolean fault, long sequence) {
        ended = last;
        faulted = fault;
        if (last) {
            terminal = sequence;
        }
    }

    private void interrupted(long sequence) {
        if (!ended && !Double.isNaN(pending)) {
            pending = Double.NaN;
            roundBase = sequence;
        }
        position = Double.NaN;
    }

    private String load() {
        return anotherLoad ? otherLoad : given.load();
    }

    private boolean atFloor(double volts) {
        return volts - given.floor().orElse(0) < step() / 2;
    }

    List<Trial> trials() {
        return Collections.unmodifiableList(trials);
    }

    /** Whether this run is to be made with another program than the first. */
    boolean anotherLoad() {
        return anotherLoad;
    }

    boolean ended() {
        return ended;
    }

    boolean faulted() {
        return ended && faulted;
    }

    /** The trimmer could go no lower. */
    boolean endOfTravel() {
        return endOfTravel;
    }

    /** Voltages held on the present way down. */
    int rounds() {
        return rounds;
    }

    int run() {
        return run;
    }

    /** Facts of the step-down steps count when they are newer than this. */
    long roundBase() {
        return roundBase;
    }

    /** When the last way down ended. */
    long terminal() {
        return terminal;
    }

    /** When a fault was seen after the margin was chosen; 0 if never. */
    long lateFault() {
        return lateFault;
    }

    OptionalDouble lastGood() {
        return trials.stream()
                .filter(trial -> trial.run() == run && !trial.fault())
                .mapToDouble(Trial::volts)
                .min();
    }

    /** Where the present round (or, when the way down has ended, its last one) should land. */
    OptionalDouble target() {
        if (given.stock().isEmpty() || given.floor().isEmpty()) {
            return OptionalDouble.empty();
        }
        double from = ended ? aimedFrom : position;
        double aim = Double.isNaN(from) ? reentry() : from - step();
        return OptionalDouble.of(Math.max(given.floor().getAsDouble(), aim));
    }

    /** The voltage held last on the present way down; empty with the trimmer at its maximum. */
    OptionalDouble position() {
        return Double.isNaN(position) ? OptionalDouble.empty() : OptionalDouble.of(position);
    }

    /** The first way down looks for the fault in whole decrements; the others know where it lies and measure it in small ones. */
    double step() {
        return fine ? given.fineStep() : given.step();
    }

    /** From the trimmer's maximum: back to where it was good before, or, on a repeat, one whole decrement above the highest fault. */
    private double reentry() {
        double highest = given.start().orElse(given.stock().orElseThrow()) - given.step();
        OptionalDouble good = lastGood();
        if (good.isPresent()) {
            return Math.min(highest, good.getAsDouble());
        }
        double fault = trials.stream()
                .filter(Trial::fault)
                .mapToDouble(Trial::volts)
                .max()
                .orElse(highest);
        return Math.min(highest, fault + given.step());
    }
}
