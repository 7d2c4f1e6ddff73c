package railtrim.practice;

import java.util.Optional;
import java.util.random.RandomGenerator;

/** What can be wrong with solder: a joint that is dry, holds for a while and then opens; a blob that runs from pin to pin. */
final class Joints {
    /** Solder from pin to pin, ohms. */
    private static final double BLOB = 0.05;

    /** A dry joint holds for two minutes to half an hour with the power on; our own choice. Seconds. */
    private static final double DRY_LEAST = 120;

    private static final double DRY_MORE = 1680;

    private final Wiring wiring;
    private Optional<Part> dry = Optional.empty();
    private double holdsFor;
    private Optional<Part> loose = Optional.empty();
    private Optional<Part> blob = Optional.empty();

    Joints(Wiring wiring) {
        this.wiring = wiring;
    }

    /** This part is soldered, and well. */
    void solder(Part part, Node.Pair pair) {
        dry = dry.filter(each -> each != part);
        loose = loose.filter(each -> each != part);
        wiring.solder(part, pair);
    }

    void leaveDry(Part part, double seconds) {
        dry = Optional.of(part);
        loose = Optional.empty();
        holdsFor = seconds;
    }

    void leaveDry(Part part, RandomGenerator chance) {
        leaveDry(part, DRY_LEAST + DRY_MORE * chance.nextDouble());
    }

    /** So many seconds with the board on. @return whether a joint opened now */
    boolean strain(double seconds) {
        holdsFor -= seconds;
        if (dry.isEmpty() || holdsFor > 0) {
            return false;
        }
        wiring.lift(dry.get(), true);
        loose = dry;
        dry = Optional.empty();
        return true;
    }

    boolean opened() {
        return loose.isPresent();
    }

    boolean isLoose(Part part) {
        return loose.filter(each -> each == part).isPresent();
    }

    boolean isDry(Part part) {
        return dry.filter(each -> each == part).isPresent() || isLoose(part);
    }

    void bridge(Node.Pair pair) {
        clean();
        blob = Optional.of(new Part.Fixed("solder", BLOB));
        wiring.solder(blob.get(), pair);
    }

    Optional<Node.Pair> bridged() {
        return blob.flatMap(wiring::jointOf).map(Wiring.Joint::pair);
    }

    void clean() {
        blob.ifPresent(wiring::remove);
        blob = Optional.empty();
    }
}
