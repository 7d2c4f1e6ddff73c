package railtrim.parts;

import java.util.ArrayList;
import java.util.List;
import railtrim.parts.Resistors.Arrangement;

/**
 * One, two or three resistors joined.
 *
 * @param ohms nominal; {@code least} and {@code greatest} with every part at the end of its tolerance: a resistance rises with each of its parts
 * @param load watts in the part that takes most, for one volt across the whole
 */
record Net(List<Double> values, Arrangement arrangement, double ohms, double least, double greatest, double load) {
    static Net of(Piece piece) {
        return new Net(
                List.of(piece.ohms()),
                Arrangement.SINGLE,
                piece.ohms(),
                piece.least(),
                piece.greatest(),
                1 / piece.ohms());
    }

    Net inSeries(Net other, Arrangement arrangement) {
        double total = ohms + other.ohms;
        return new Net(
                both(other),
                arrangement,
                total,
                least + other.least,
                greatest + other.greatest,
                Math.max(load * square(ohms / total), other.load * square(other.ohms / total)));
    }

    Net inParallel(Net other, Arrangement arrangement) {
        return new Net(
                both(other),
                arrangement,
                parallel(ohms, other.ohms),
                parallel(least, other.least),
                parallel(greatest, other.greatest),
                Math.max(load, other.load));
    }

    private List<Double> both(Net other) {
        List<Double> all = new ArrayList<>(values);
        all.addAll(other.values);
        return List.copyOf(all);
    }

    private static double square(double value) {
        return value * value;
    }

    static double parallel(double a, double b) {
        return a * b / (a + b);
    }
}
