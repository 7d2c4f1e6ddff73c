package railtrim.report.pdf;

import java.io.IOException;
import java.util.List;

/** How wide the columns of a table are: as their text asks for, and where that is too much, so that no word has to be taken apart. */
final class Columns {
    private static final double PAD = 3;

    private Columns() {}

    /** @param rows the head first; all of the same length */
    static double[] of(Fonts fonts, List<List<String>> rows, Type head, Type cell, double room) throws IOException {
        int count = rows.get(0).size();
        double[] least = new double[count];
        double[] wished = new double[count];
        for (int row = 0; row < rows.size(); row++) {
            Type type = row == 0 ? head : cell;
            for (int i = 0; i < count; i++) {
                String text = rows.get(row).get(i);
                least[i] = Math.max(least[i], Breaks.widestWord(fonts, text, type) + 2 * PAD);
                wished[i] = Math.max(wished[i], Breaks.width(fonts, text, type) + 2 * PAD);
            }
        }
        return shared(least, wished, room);
    }

    private static double[] shared(double[] least, double[] wished, double room) {
        double[] widths = new double[least.length];
        double leastSum = sum(least);
        double wishedSum = sum(wished);
        for (int i = 0; i < widths.length; i++) {
            if (wishedSum <= room) {
                widths[i] = wished[i];
            } else if (leastSum >= room) {
                // One word as long as a page is taken apart; it does not press the other columns flat.
                widths[i] = Math.min(least[i], room / 2);
            } else {
                widths[i] = least[i];
            }
        }
        if (wishedSum > room && leastSum < room) {
            grow(widths, wished, room - leastSum);
        } else if (sum(widths) > room) {
            double factor = room / sum(widths);
            for (int i = 0; i < widths.length; i++) {
                widths[i] *= factor;
            }
        }
        return widths;
    }

    /** A text four times as long gets twice the width, so that one long note does not starve the rest. */
    private static void grow(double[] widths, double[] wished, double spare) {
        double[] pull = new double[widths.length];
        for (int i = 0; i < widths.length; i++) {
            pull[i] = Math.sqrt(Math.max(0, wished[i] - widths[i]));
        }
        double all = sum(pull);
        for (int i = 0; i < widths.length; i++) {
            widths[i] += spare * pull[i] / all;
        }
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
