package railtrim.window.bench;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import railtrim.practice.Bench;
import railtrim.practice.Node;
import railtrim.practice.Part;
import railtrim.practice.Shown;
import railtrim.procedure.Words;
import railtrim.quantity.Unit;

/** The bench as one person works on it: where the probes are, what the meter is set to, and which parts were fetched. */
final class Workbench {
    enum Mode {
        VOLTS,
        OHMS
    }

    /** What the two probes are held to. */
    enum Held {
        BOARD,
        CELL,
        TOGETHER,
        TRIMMER,
        RESISTOR
    }

    /** Holding still until the digits rest, seconds. */
    private static final double REST = 3;

    private final Bench bench;
    private final Words words;
    private final Set<Bench.Manner> careless = EnumSet.noneOf(Bench.Manner.class);
    private Mode mode = Mode.VOLTS;
    private Held held = Held.BOARD;
    private Optional<Node> red = Optional.empty();
    private Optional<Node> black = Optional.empty();
    private Optional<Mounted<Part.Trimmer>> trimmer = Optional.empty();
    private Optional<Mounted<Part.Fixed>> resistor = Optional.empty();
    private String display = "";
    private int harmSeen;
    private Optional<Bench.Mishap> mishap = Optional.empty();

    /** A part and where it is: in the hand, or across two places, perhaps with one lead lifted. */
    record Mounted<P extends Part>(P part, String name, Optional<Node.Pair> across, boolean lifted) {}

    Workbench(Bench bench, Words words) {
        this.bench = bench;
        this.words = words;
        measure();
    }

    Bench bench() {
        return bench;
    }

    String display() {
        return display;
    }

    Mode mode() {
        return mode;
    }

    Held held() {
        return held;
    }

    Optional<Node> red() {
        return red;
    }

    Optional<Node> black() {
        return black;
    }

    Optional<Mounted<Part.Trimmer>> trimmer() {
        return trimmer;
    }

    Optional<Mounted<Part.Fixed>> resistor() {
        return resistor;
    }

    /** What has gone wrong so far, each kind once. */
    Set<Bench.Mishap> mishaps() {
        return bench.mishaps();
    }

    /** The two probes change places. */
    void swap() {
        Optional<Node> was = red;
        red = black;
        black = was;
        hold(Held.BOARD);
    }

    /** Every part of the user's that is on the board. */
    List<Mounted<? extends Part>> mounted() {
        return Stream.concat(trimmer.stream(), resistor.stream())
                .filter(each -> each.across().isPresent())
                .<Mounted<? extends Part>>map(each -> each)
                .toList();
    }

    /** Where the trimmer, or else the fixed resistor, is soldered. */
    Optional<Node.Pair> soldered() {
        return trimmer.flatMap(Mounted::across).or(() -> resistor.flatMap(Mounted::across));
    }

    /** What has just gone wrong, until the next deed that does no harm. A dead chip stays in sight. */
    Optional<Bench.Mishap> mishap() {
        return bench.mishaps().contains(Bench.Mishap.DAMAGED) ? Optional.of(Bench.Mishap.DAMAGED) : mishap;
    }

    void mode(Mode chosen) {
        mode = chosen;
        bench.meter().rangeByItself();
        measure();
    }

    Unit unit() {
        return mode == Mode.VOLTS ? Unit.VOLT : Unit.OHM;
    }

    void nextRange() {
        bench.meter().nextRange(unit());
        measure();
    }

    void hold(Held where) {
        held = where;
        measure();
    }

    void red(Node node) {
        red = Optional.of(node);
        hold(Held.BOARD);
    }

    void black(Node node) {
        black = Optional.of(node);
        hold(Held.BOARD);
    }

    void power(boolean on) {
        if (on) {
            bench.switchOn();
        } else {
            bench.switchOff();
        }
        measure();
    }

    void load(boolean run) {
        if (run) {
            bench.runLoad(1);
        } else {
            bench.stopLoad();
        }
        measure();
    }

    void otherLoad() {
        bench.runOther(1);
        measure();
    }

    void pass(double seconds) {
        bench.waitSeconds(seconds);
        measure();
    }

    void fetchTrimmer(Drawer.Trimmer wanted) {
        trimmer.ifPresent(old -> bench.remove(old.part()));
        Part.Trimmer part = bench.takeTrimmers(wanted.ohms(), wanted.fine(), wanted.turns(), 0.10, wanted.stopOhms());
        bench.turn(part, 0.5);
        bench.turnFine(part, 0.5);
        trimmer = Optional.of(new Mounted<>(part, wanted.name(), Optional.empty(), false));
        measure();
    }

    void fetchResistor(Drawer.Resistor wanted) {
        resistor.ifPresent(old -> bench.remove(old.part()));
        Part.Fixed part = bench.takeResistors(wanted.values(), wanted.joined(), wanted.tolerance());
        resistor = Optional.of(new Mounted<>(part, wanted.name(), Optional.empty(), false));
        measure();
    }

    void turn(double travel) {
        trimmer.ifPresent(each -> bench.turn(each.part(), travel));
        measure();
    }

    void turnFine(double travel) {
        trimmer.ifPresent(each -> bench.turnFine(each.part(), travel));
        measure();
    }

    void solderTrimmer(Node.Pair pair, Bench.Manner manner) {
        trimmer = trimmer.map(each -> solder(each, pair, manner));
        measure();
    }

    void solderResistor(Node.Pair pair, Bench.Manner manner) {
        resistor = resistor.map(each -> solder(each, pair, manner));
        measure();
    }

    void liftTrimmer() {
        trimmer = trimmer.map(this::lift);
        measure();
    }

    void heatTrimmer() {
        trimmer = trimmer.map(this::heat);
        measure();
    }

    void heatResistor() {
        resistor = resistor.map(this::heat);
        measure();
    }

    void removeTrimmer() {
        trimmer = trimmer.map(this::remove);
        measure();
    }

    void removeResistor() {
        resistor = resistor.map(this::remove);
        measure();
    }

    void clean() {
        bench.clean();
        measure();
    }

    /** Whether solder was ever used with less care than it needs. */
    boolean careless(Bench.Manner manner) {
        return careless.contains(manner);
    }

    /** Reads the meter again, once the digits rest. */
    void measure() {
        bench.waitSeconds(REST);
        display = shown().map(Shown::text).orElse(words.of("window.bench.no-reading"));
        mishap = bench.harm() == harmSeen ? Optional.empty() : bench.lastMishap();
        harmSeen = bench.harm();
    }

    private Optional<Shown> shown() {
        return switch (held) {
            case CELL -> Optional.of(mode == Mode.VOLTS ? bench.cell() : overload());
            case TOGETHER ->
                Optional.of(
                        mode == Mode.OHMS ? bench.leadsShorted() : bench.meter().volts(0));
            case TRIMMER -> trimmer.map(each -> alone(each.part()));
            case RESISTOR -> resistor.map(each -> alone(each.part()));
            case BOARD -> onBoard();
        };
    }

    private Optional<Shown> onBoard() {
        if (red.isEmpty() || black.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                mode == Mode.VOLTS ? bench.volts(red.get(), black.get()) : bench.ohms(red.get(), black.get()));
    }

    private Shown alone(Part part) {
        return mode == Mode.OHMS ? bench.ohms(part) : bench.meter().volts(0);
    }

    private static Shown overload() {
        return new Shown(Shown.OVERLOAD, Unit.OHM, Double.NaN);
    }

    private <P extends Part> Mounted<P> solder(Mounted<P> part, Node.Pair pair, Bench.Manner manner) {
        bench.solder(part.part(), pair, manner);
        careless.add(manner);
        return new Mounted<>(part.part(), part.name(), Optional.of(pair), false);
    }

    private <P extends Part> Mounted<P> lift(Mounted<P> part) {
        bench.lift(part.part());
        return new Mounted<>(part.part(), part.name(), part.across(), true);
    }

    private <P extends Part> Mounted<P> heat(Mounted<P> part) {
        bench.heat(part.part());
        return new Mounted<>(part.part(), part.name(), part.across(), false);
    }

    private <P extends Part> Mounted<P> remove(Mounted<P> part) {
        bench.remove(part.part());
        return new Mounted<>(part.part(), part.name(), Optional.empty(), false);
    }
}
