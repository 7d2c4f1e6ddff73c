package railtrim.practice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import railtrim.circuit.Leg;
import railtrim.job.Time;
import railtrim.quantity.Meter;

/**
 * A practice board on a bench, with a meter, an iron and a clock of its own: everything a person can do to the board, right or wrong.
 * The bench is the clock: waiting takes no time. All chance comes from the generator handed in, so the same seed gives the same bench.
 */
public final class Bench implements Time {
    /** The bench's day begins here; only differences mean something. */
    private static final Instant MORNING = Instant.parse("2026-01-10T09:00:00Z");

    /** A rail below this is dead. Volts. */
    private static final double DEAD = 0.1;

    /** Length of one step of the bench's clock while something warms, seconds. */
    private static final double TICK = 5;

    /** Joined by less than this, the rail is held at nothing by the regulator's own current limit. Ohms. */
    private static final double CRUSHED = 0.5;

    /** How a part is soldered. */
    public enum Manner {
        CARE,
        /** Touched too briefly: the joint is dry. */
        TOUCH,
        /** Far too much solder. */
        PLENTY
    }

    /** Things that ought not to happen on a bench. */
    public enum Mishap {
        /** A part was soldered, moved or taken off with the board on or its rail still charged. */
        SOLDERED_LIVE,
        /** Ohms were measured on a live or charged board: the reading means nothing. */
        OHMS_LIVE,
        /** The chip had more than its stock voltage. */
        ABOVE_STOCK,
        /** The chip had more than it can stand. */
        DAMAGED
    }

    private final Board board;
    private final VirtualMeter meter;
    private final RandomGenerator chance;
    private final Wiring wiring = new Wiring();
    private final Joints joints = new Joints(wiring);
    private final Strays strays;
    private final Fate fate;
    private final Draw draw;
    private final Set<Mishap> mishaps = EnumSet.noneOf(Mishap.class);
    private final double cellVolts;
    private final double mostAtStock;

    private double seconds;
    private boolean on;
    private Board.Work work = Board.Work.IDLE;
    private double railAtSwitchOff;
    private double switchedOffAt;
    private Optional<Node.Pair> clipped = Optional.empty();
    /** Where the meter draws its own current from while it reads volts. */
    private Optional<Node.Pair> probed = Optional.empty();

    private int harm;
    private Optional<Mishap> lastMishap = Optional.empty();
    /** The output while on, worked out once for as long as nothing changes; NaN when something did. */
    private double outputOn = Double.NaN;

    public Bench(Board board, Meter meter, RandomGenerator chance) {
        this.board = board;
        this.chance = chance;
        this.strays = new Strays(board.divider(), wiring);
        this.draw = new Draw(board);
        this.fate = new Fate(board, draw);
        this.mostAtStock = board.mostAtStock();
        this.meter = new VirtualMeter(meter, chance);
        // A fresh alkaline cell shows 1.55 to 1.62 V without load (common practice, no source).
        this.cellVolts = 1.55 + 0.07 * chance.nextDouble();
    }

    public Board board() {
        return board;
    }

    public VirtualMeter meter() {
        return meter;
    }

    // ---- time ----

    @Override
    public Instant now() {
        return MORNING.plusMillis(ticks());
    }

    @Override
    public long ticks() {
        return Math.round(seconds * 1000);
    }

    /** Lets time pass: things warm up or cool down, charge drains, and a running load may fail. */
    public void waitSeconds(double wanted) {
        double left = wanted;
        while (left > 0) {
            double step = Math.min(TICK, left);
            seconds += step;
            left -= step;
            fate.warm(step, on ? output() : 0, on ? drawn() : 0, on ? inputVolts() : 0);
            if (on && joints.strain(step) || board.load().leakage() > 0) {
                outputOn = Double.NaN;
            }
            look();
        }
    }

    // ---- power and load ----

    public boolean isOn() {
        return on;
    }

    /** Switches on. A fault seen earlier is gone, as it is when a board starts afresh; a dead chip stays dead. */
    public void switchOn() {
        if (on) {
            return;
        }
        on = true;
        work = Board.Work.IDLE;
        fate.powerUp(chance);
        changed();
    }

    public void switchOff() {
        if (!on) {
            return;
        }
        railAtSwitchOff = output();
        switchedOffAt = seconds;
        on = false;
        work = Board.Work.IDLE;
    }

    /** Runs the named load for so long and tells what a person sees at the end. The load keeps running. */
    public Seen runLoad(double wanted) {
        return run(Board.Work.NAMED, wanted);
    }

    /** The same with the board's other program, where it has one. */
    public Seen runOther(double wanted) {
        return run(Board.Work.OTHER, wanted);
    }

    private Seen run(Board.Work wanted, double seconds) {
        work = on ? wanted : Board.Work.IDLE;
        changed();
        waitSeconds(seconds);
        return seen();
    }

    public void stopLoad() {
        work = Board.Work.IDLE;
        changed();
    }

    public boolean isLoaded() {
        return work != Board.Work.IDLE;
    }

    public Board.Work work() {
        return work;
    }

    /** What the board shows now. */
    public Seen seen() {
        if (mishaps.contains(Mishap.DAMAGED)) {
            return Seen.SMOKE;
        }
        return fate.failed() ? board.failing().shows() : Seen.WELL;
    }

    // ---- meter ----

    /** DC volts between two probes. The meter's own current moves the output by a few millivolts at most; the chip's fate does not hang on that. */
    public Shown volts(Node red, Node black) {
        meter.at(seconds);
        probed = Optional.of(new Node.Pair(red, black));
        outputOn = Double.NaN;
        Shown shown = meter.volts(sign() * (nodeVolts(red) - nodeVolts(black)));
        probed = Optional.empty();
        outputOn = Double.NaN;
        return shown;
    }

    /** The magnitude the meter on the rail shows, as read while turning. Volts. */
    double glance() {
        meter.at(seconds);
        return Math.abs(meter.glance(sign() * output()));
    }

    /** What {@link #glance} would show with this screw turned so far. Nothing happens to the board. */
    double glance(VirtualTrimmer screw, double travel) {
        double now = screw.travel();
        screw.turnTo(travel);
        outputOn = Double.NaN;
        double shown = glance();
        screw.turnTo(now);
        outputOn = Double.NaN;
        return shown;
    }

    /** Ohms between two probes; nonsense while the board is on or still charged, as on a real bench. */
    public Shown ohms(Node red, Node black) {
        meter.at(seconds);
        if (on || output() > DEAD) {
            happened(Mishap.OHMS_LIVE);
            return meter.ohms(10_000 * chance.nextDouble());
        }
        return meter.ohms(Network.between(branches(), red, black));
    }

    /** Ohms of a part that is not on the board, or has one lead lifted. */
    public Shown ohms(Part part) {
        Optional<Wiring.Joint> joint = wiring.jointOf(part);
        if (joint.isPresent() && !joint.get().lifted()) {
            return ohms(joint.get().pair().first(), joint.get().pair().second());
        }
        return meter.ohms(part.ohms());
    }

    /** A fresh battery cell, to prove the meter. */
    public Shown cell() {
        return meter.volts(cellVolts);
    }

    /** The probes held together, on ohms. */
    public Shown leadsShorted() {
        return meter.ohms(0);
    }

    /** Fixes the probes to two places, so that nobody has to hold them while the board is on. */
    public void clip(Node.Pair pair) {
        clipped = Optional.of(pair);
    }

    public Optional<Node.Pair> clipped() {
        return clipped;
    }

    /** Temperature of the chip's case, °C, to a tenth. */
    public double chipTemperature() {
        return tenth(fate.chipTemperature());
    }

    public double regulatorTemperature() {
        return tenth(fate.regulatorTemperature());
    }

    public double roomTemperature() {
        return tenth(board.warmth().room());
    }

    // ---- iron ----

    /** A trimmer out of the drawer. @param stopOhms resistor in series with it, 0 for none */
    public Part.Trimmer takeTrimmer(double marked, int turns, double tolerance, double stopOhms) {
        return takeTrimmers(marked, 0, turns, tolerance, stopOhms);
    }

    /** The same with a fine trimmer in series. @param fine ohms as marked, 0 for none */
    public Part.Trimmer takeTrimmers(double marked, double fine, int turns, double tolerance, double stopOhms) {
        double stop = stopOhms * (1 + 0.01 * (2 * chance.nextDouble() - 1));
        VirtualTrimmer coarse = new VirtualTrimmer(marked, turns, tolerance, chance);
        return new Part.Trimmer(
                coarse,
                fine > 0 ? Optional.of(new VirtualTrimmer(fine, turns, tolerance, chance)) : Optional.empty(),
                stop);
    }

    /** One or more resistors out of the drawer, joined; each off its marking by at most the tolerance (a fraction). */
    public Part.Fixed takeResistors(List<Double> marked, Part.Joined joined, double tolerance) {
        List<Double> real = new ArrayList<>();
        marked.forEach(ohms -> real.add(ohms * (1 + tolerance * (2 * chance.nextDouble() - 1))));
        return new Part.Fixed(marked.toString(), real.size() == 1 ? real.get(0) : joined.of(real));
    }

    /** Solders a part across two places. */
    public void solder(Part part, Node.Pair pair) {
        touchWithIron();
        joints.solder(part, pair);
        changed();
    }

    /** Solders a part in one of the ways a person does it: with care, with a touch that leaves the joint dry, or with so much that it runs to another pin. */
    public void solder(Part part, Node.Pair pair, Manner manner) {
        solder(part, pair);
        if (manner == Manner.TOUCH) {
            joints.leaveDry(part, chance);
        } else if (manner == Manner.PLENTY) {
            bridge(Pins.beside(board.regulator(), pair, chance));
        }
    }

    /** Solder runs from one place to another. */
    void bridge(Node.Pair pair) {
        touchWithIron();
        joints.bridge(pair);
        changed();
    }

    /** Where solder joins what it should not; empty for nowhere. */
    public Optional<Node.Pair> bridged() {
        return joints.bridged();
    }

    /** Takes up the solder that ran too far. */
    public void clean() {
        touchWithIron();
        joints.clean();
        changed();
    }

    /** Whether a joint of this part is dry, or was and has opened: dull, where a good one shines. */
    public boolean isDry(Part part) {
        return joints.isDry(part);
    }

    /** Whether a dry joint of this part has opened. */
    public boolean isLoose(Part part) {
        return joints.isLoose(part);
    }

    /** The last joint of this part was a bad one: it holds for so many seconds with the board on, and then opens. */
    public void leaveDry(Part part, double seconds) {
        joints.leaveDry(part, seconds);
    }

    /** Whether a dry joint has opened by now. */
    boolean opened() {
        return joints.opened();
    }

    boolean isSoldered(Part part) {
        return wiring.jointOf(part).isPresent();
    }

    /** Takes one lead of a part off the board. */
    public void lift(Part part) {
        touchWithIron();
        wiring.lift(part, true);
        changed();
    }

    /** Puts the lifted lead back. */
    public void lower(Part part) {
        touchWithIron();
        wiring.lift(part, false);
        changed();
    }

    /** Heats both joints of a part until they flow: what was dry or loose holds again, and a lifted lead is back. */
    public void heat(Part part) {
        touchWithIron();
        wiring.jointOf(part).ifPresent(joint -> joints.solder(part, joint.pair()));
        changed();
    }

    public void remove(Part part) {
        touchWithIron();
        wiring.remove(part);
        changed();
    }

    /** @param travel from 0, least resistance, to 1, most */
    public void turn(Part.Trimmer part, double travel) {
        part.trimmer().turnTo(travel);
        changed();
    }

    /** Turns the fine trimmer of the part, where it has one. */
    public void turnFine(Part.Trimmer part, double travel) {
        part.fine().ifPresent(fine -> fine.turnTo(travel));
        changed();
    }

    private void touchWithIron() {
        if (on || output() > DEAD) {
            happened(Mishap.SOLDERED_LIVE);
        }
    }

    // ---- what happened to the board ----

    public Set<Mishap> mishaps() {
        return mishaps.isEmpty() ? Set.of() : EnumSet.copyOf(mishaps);
    }

    private void happened(Mishap mishap) {
        mishaps.add(mishap);
        lastMishap = Optional.of(mishap);
        harm++;
    }

    /** Grows with every mishap and for as long as one lasts: the same number twice means that nothing happened in between. */
    public int harm() {
        return harm;
    }

    public Optional<Mishap> lastMishap() {
        return lastMishap;
    }

    /** Highest voltage the chip ever had, volts. */
    public double highestSeen() {
        return fate.highest();
    }

    /** Lowest voltage the chip ever had while on; infinity where it never was. */
    public double lowestSeen() {
        return fate.lowest();
    }

    /** True magnitude of the output now, volts; no meter in between. */
    public double output() {
        if (!on) {
            return railAtSwitchOff
                    * Math.exp(-(seconds - switchedOffAt) / board.divider().decaySeconds());
        }
        if (Double.isNaN(outputOn)) {
            outputOn = wiring.across(Node.Pair.RAIL) < CRUSHED ? 0 : underLoad(work, fate.chipTemperature());
        }
        return outputOn;
    }

    private double underLoad(Board.Work running, double celsius) {
        double open = set();
        double held = strays.divider().given(open, draw.amperes(open, running, celsius));
        if (!strays.any()) {
            return held;
        }
        return strays.starved()
                ? 0
                : strays.fed(held, volts -> draw.amperes(volts, running, celsius) + intoLegs(volts));
    }

    /** Amperes the divider itself, and a meter on the rail, take from an output of so many volts that nothing regulates. */
    private double intoLegs(double volts) {
        double upper = leg(Leg.UPPER);
        double meter =
                probed.filter(each -> each.usual() == Node.Pair.RAIL).isPresent() ? volts / VirtualMeter.INPUT_OHMS : 0;
        return meter + (upper <= 0 ? 0 : (volts - unregulated(volts, upper, leg(Leg.LOWER))) / upper);
    }

    /** What the regulator is set to by all that is on its legs, volts. */
    private double set() {
        return Regulation.magnitude(strays.divider(), leg(Leg.UPPER), leg(Leg.LOWER), strays.pull());
    }

    /** Current of the chip now, amperes. */
    private double drawn() {
        return draw.amperes(output(), work, fate.chipTemperature());
    }

    /** True magnitude of the output if the board ran its load now, with what is soldered to it, volts. */
    public double trueUnderLoad() {
        return underLoad(Board.Work.NAMED, draw.warmAtStock());
    }

    private double leg(Leg leg) {
        Node.Pair pair = Node.Pair.of(leg);
        double ohms = Regulation.parallel(board.divider().ohms(leg), wiring.across(pair));
        boolean loaded = probed.isPresent() && probed.get().usual() == pair;
        return loaded ? Regulation.parallel(ohms, VirtualMeter.INPUT_OHMS) : ohms;
    }

    private List<Network.Branch> branches() {
        List<Network.Branch> branches = new ArrayList<>();
        branches.add(
                new Network.Branch(Node.OUTPUT, Node.ADJUST, board.divider().ohms(Leg.UPPER)));
        branches.add(
                new Network.Branch(Node.ADJUST, Node.GROUND, board.divider().ohms(Leg.LOWER)));
        branches.add(
                new Network.Branch(Node.OUTPUT, Node.GROUND, board.divider().railOhms()));
        // What hangs on the input; it only shows when a probe is there.
        branches.add(new Network.Branch(Node.INPUT, Node.GROUND, 4700));
        branches.add(new Network.Branch(Node.CONTROL, Node.GROUND, 4700));
        for (Wiring.Joint joint : wiring.joints()) {
            if (!joint.lifted()) {
                branches.add(new Network.Branch(
                        joint.pair().first(),
                        joint.pair().second(),
                        Math.max(1e-3, joint.part().ohms())));
            }
        }
        return branches;
    }

    /** Magnitude at a node against ground. */
    private double nodeVolts(Node node) {
        double output = output();
        return switch (node) {
            case GROUND -> 0;
            case OUTPUT -> output;
            case INPUT -> on ? inputVolts() : output;
            case CONTROL -> on ? strays.supply(Node.CONTROL) : output;
            case ADJUST -> adjustVolts(output);
        };
    }

    /** What arrives at the regulator while the board is on, volts. */
    private double inputVolts() {
        return Math.max(0, strays.supply(Node.INPUT) - strays.divider().inputOhms() * drawn());
    }

    private double adjustVolts(double output) {
        double upper = leg(Leg.UPPER);
        double lower = leg(Leg.LOWER);
        double reference = board.divider().reference().value();
        double open = set();
        double drawn = draw.amperes(open, work, fate.chipTemperature());
        boolean past = strays.any() && output > open;
        boolean regulating = on && open < strays.divider().ceiling(drawn) && output > 0 && !past;
        if (!regulating) {
            return unregulated(output, upper, lower);
        }
        return board.divider().place().loweringLeg() == Leg.LOWER ? output - reference : reference;
    }

    /** The divider alone and the pin's own current, which a floating regulator sends into the leg and one with feedback to ground draws from it. */
    private double unregulated(double output, double upper, double lower) {
        if (upper + lower == 0) {
            return 0;
        }
        double bias = on && !strays.starved() ? board.divider().bias() : 0;
        double into = board.divider().place().loweringLeg() == Leg.LOWER ? bias : -bias;
        Pull pull = on ? strays.pull() : Pull.NONE;
        return (output * lower + (into + pull.amperes()) * upper * lower)
                / (upper + lower + pull.siemens() * upper * lower);
    }

    private double sign() {
        return board.divider().place().negative() ? -1 : 1;
    }

    private void changed() {
        outputOn = Double.NaN;
        look();
    }

    /** The chip feels what is there now. */
    private void look() {
        if (!on) {
            return;
        }
        double volts = output();
        fate.feel(volts, work);
        if (volts > mostAtStock + 0.0005) {
            happened(Mishap.ABOVE_STOCK);
        }
        if (volts > board.failing().damage()) {
            happened(Mishap.DAMAGED);
        }
    }

    private static double tenth(double celsius) {
        return Math.rint(celsius * 10) / 10;
    }
}
