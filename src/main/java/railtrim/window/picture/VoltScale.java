package railtrim.window.picture;

import java.util.stream.DoubleStream;

/** A straight scale of voltages: {@code high} at {@code top}, {@code low} at {@code bottom}. */
record VoltScale(double low, double high, double top, double bottom) {
    /** A scale that holds all values with some room beyond them, and never so fine that a few millivolts look like much. */
    static VoltScale holding(DoubleStream values, double top, double bottom) {
        double[] all = values.toArray();
        double low = DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(1);
        double least = Math.max(0.05, 0.03 * high);
        double missing = Math.max(0, least - (high - low)) / 2;
        double room = Math.max(high - low, least) * 0.07;
        return new VoltScale(Math.max(0, low - missing - room), high + missing + room, top, bottom);
    }

    /** A scale that holds all values and shows differences of millivolts. */
    static VoltScale near(DoubleStream values, double top, double bottom) {
        double[] all = values.toArray();
        double low = DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(1);
        double room = Math.max(0.005, (high - low) * 0.06);
        return new VoltScale(Math.max(0, low - room), high + room, top, bottom);
    }

    /** Where a voltage stands; one beyond the scale stands at its end. */
    double at(double volts) {
        double within = Math.max(low, Math.min(high, volts));
        return bottom - (within - low) / (high - low) * (bottom - top);
    }

    boolean holds(double volts) {
        return volts >= low && volts <= high;
    }

    double span() {
        return high - low;
    }
}
