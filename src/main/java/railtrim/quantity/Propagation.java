package railtrim.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Carries the uncertainty of readings through a sum. Each reading is moved by its own standard uncertainty up and down, half the change is its
 * share, and independent shares add as squares (GUM, JCGM 100:2008, 5.1.2 and 5.1.3 note 2). Good to first order: the sum should bend little
 * over one uncertainty.
 *
 * <p>Readings count as independent. Where one meter made several, part of their error is common and may cancel in a difference; that is not
 * relied on, so the result is on the wide side.
 */
public final class Propagation {
    private Propagation() {}

    /**
     * @param id what was read, for naming it
     * @param value SI units; may be infinite where {@code standard} is 0
     * @param standard uncertainty, 0 or more
     */
    public record Input(String id, double value, double standard) {
        public Input {
            if (!(standard >= 0) || Double.isNaN(value)) {
                throw BadInput.of("quantity.uncertainty-impossible", id);
            }
        }
    }

    /** @param effect what this input alone leaves open in the result, standard, in the result's unit; infinite where the sum breaks down */
    public record Share(Input input, double effect) {}

    /** What stays open in a result, and where it comes from. */
    public record Result(double value, double standard, List<Share> shares) {
        /** U = 2u: about 95 % of such intervals hold the true value. */
        public double expanded() {
            return 2 * standard;
        }

        /** The input that leaves most open. */
        public Share largest() {
            return shares.stream()
                    .max(Comparator.comparingDouble(Share::effect))
                    .orElseThrow(() -> new IllegalStateException("a result without inputs"));
        }

        /** Standard uncertainty that would be left if one input were read to {@code better} instead; never more than now. */
        public double standardWith(String id, double better) {
            double squares = 0;
            for (Share share : shares) {
                double effect = share.effect();
                Input input = share.input();
                if (input.id().equals(id) && input.standard() > better) {
                    effect *= better / input.standard();
                }
                squares += effect * effect;
            }
            return Math.sqrt(squares);
        }
    }

    /** @throws BadInput where the sum itself, at the values as read, refuses them */
    public static Result of(ToDoubleFunction<double[]> sum, List<Input> inputs) {
        double[] values = inputs.stream().mapToDouble(Input::value).toArray();
        double value = sum.applyAsDouble(values);
        List<Share> shares = new ArrayList<>();
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double standard = inputs.get(i).standard();
            double effect = standard == 0
                    ? 0
                    : Math.abs(moved(sum, values, i, standard) - moved(sum, values, i, -standard)) / 2;
            shares.add(new Share(inputs.get(i), Double.isNaN(effect) ? Double.POSITIVE_INFINITY : effect));
            squares += shares.get(i).effect() * shares.get(i).effect();
        }
        return new Result(value, Math.sqrt(squares), List.copyOf(shares));
    }

    /** NaN where a reading moved by its own uncertainty no longer gives a result. */
    private static double moved(ToDoubleFunction<double[]> sum, double[] values, int which, double by) {
        double[] near = values.clone();
        near[which] += by;
        try {
            return sum.applyAsDouble(near);
        } catch (BadInput outOfReach) {
            return Double.NaN;
        }
    }
}
