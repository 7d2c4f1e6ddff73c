package railtrim.window.kit;

import java.util.function.DoubleUnaryOperator;

/**
 * The heights a node was last found to want, until it has to be laid out again. The toolkit remembers them only for nodes that are as high at
 * any width; with running text inside, each box on the way up would ask all that lies in it two or three times, and so would the box around it.
 */
final class Heights {
    /** A box is asked for the width it has, for the one it would have beside a scroll bar, and for any width. */
    private static final int WIDTHS = 3;

    private final double[] widths = new double[WIDTHS];
    private final double[] heights = new double[WIDTHS];
    private int known;
    private int next;

    /** @param width pixels, -1 for any */
    double at(double width, DoubleUnaryOperator reckoning) {
        for (int i = 0; i < known; i++) {
            if (widths[i] == width) {
                return heights[i];
            }
        }
        double height = reckoning.applyAsDouble(width);
        widths[next] = width;
        heights[next] = height;
        next = (next + 1) % WIDTHS;
        known = Math.min(known + 1, WIDTHS);
        return height;
    }

    void forget() {
        known = 0;
        next = 0;
    }
}
