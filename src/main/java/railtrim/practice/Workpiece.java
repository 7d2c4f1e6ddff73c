package railtrim.practice;

import java.util.Locale;
import java.util.Optional;
import railtrim.circuit.Place;

/** The bench as one hand works on it, with the parts it has fetched so far. */
final class Workpiece {
    /** Long enough for every rail to drain after switching off, seconds. */
    private static final double DRAIN = 60;

    final Bench bench;
    Optional<Part.Trimmer> trimmer = Optional.empty();
    Optional<Part.Fixed> resistor = Optional.empty();

    Workpiece(Bench bench) {
        this.bench = bench;
    }

    Board board() {
        return bench.board();
    }

    /** The two places the added resistor goes across. */
    Node.Pair leg() {
        return Node.Pair.of(place().loweringLeg());
    }

    Node.Pair otherLeg() {
        return Node.Pair.of(place().loweringLeg().other());
    }

    Node.Pair reference() {
        return Node.Pair.reference(place());
    }

    private Place place() {
        return board().divider().place();
    }

    Shown volts(Node.Pair pair) {
        bench.waitSeconds(5);
        return bench.volts(pair.first(), pair.second());
    }

    Shown rail() {
        return volts(Node.Pair.RAIL);
    }

    Shown ohms(Node.Pair pair) {
        bench.waitSeconds(5);
        return bench.ohms(pair.first(), pair.second());
    }

    Shown swapped(Node.Pair pair) {
        return ohms(new Node.Pair(pair.second(), pair.first()));
    }

    void switchTo(boolean on) {
        if (on) {
            bench.switchOn();
            bench.waitSeconds(5);
        } else {
            bench.switchOff();
            bench.waitSeconds(DRAIN);
        }
    }

    /** The leg as it came: nothing across it. */
    void takeOff() {
        trimmer.ifPresent(bench::remove);
        resistor.ifPresent(bench::remove);
    }

    /** Where the trimmer goes back in its place. */
    void resistorOff() {
        resistor.filter(bench::isSoldered).ifPresent(bench::remove);
    }

    void trimmerToMaximum() {
        trimmer.ifPresent(part -> turnAll(part, 1));
    }

    /** To an end of travel, the fine trimmer too where there is one. */
    void turnAll(Part.Trimmer part, double travel) {
        bench.turn(part, travel);
        bench.turnFine(part, travel);
    }

    static String volts(double volts) {
        return String.format(Locale.ROOT, "%.3f V", volts);
    }

    static String celsius(double celsius) {
        return String.format(Locale.ROOT, "%.1f °C", celsius);
    }
}
