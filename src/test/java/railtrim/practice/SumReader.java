package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Works out a sum as a person with a pocket calculator would, from nothing but its text: "1.250 V + 17.34 mA · (118.2 Ω ∥ 2.000 kΩ)". Knows how far
 * the result may be off because the numbers in it are rounded.
 */
final class SumReader {
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(?:(\\d+(?:\\.(\\d+))?)(?: ?(k|M|m|µ|n)?(V|Ω|A|W|°C|%))?|(max|min|to5mV|up5mV)(?=\\()|([-+−·/∥();]))");

    private record Number(double value, double halfDigit) {}

    private final List<Object> tokens = new ArrayList<>();
    private int at;

    /** Which number is moved by half its last digit, −1 for none; and which way. */
    private int moved = -1;

    private int way;
    private int met;

    private SumReader(String text) {
        Matcher found = TOKEN.matcher(text);
        int end = 0;
        while (end < text.stripTrailing().length()) {
            if (!found.find(end) || found.start() != end) {
                throw new AssertionError("not a sum: " + text + " at " + end);
            }
            end = found.end();
            tokens.add(
                    found.group(1) == null ? found.group(5) == null ? found.group(6) : found.group(5) : number(found));
        }
    }

    private static Number number(Matcher found) {
        double scale = found.group(3) == null
                ? 1
                : switch (found.group(3)) {
                    case "k" -> 1e3;
                    case "M" -> 1e6;
                    case "m" -> 1e-3;
                    case "µ" -> 1e-6;
                    default -> 1e-9;
                };
        scale *= "%".equals(found.group(4)) ? 0.01 : 1;
        boolean rounded = found.group(4) != null;
        int decimals = found.group(2) == null ? 0 : found.group(2).length();
        return new Number(
                Double.parseDouble(found.group(1)) * scale, rounded ? 0.5 * Math.pow(10, -decimals) * scale : 0);
    }

    /** @return the least and the most the sum may come to */
    static double[] range(String text) {
        SumReader reader = new SumReader(text);
        double middle = reader.work(-1, 0);
        double off = 0;
        int numbers =
                (int) reader.tokens.stream().filter(Number.class::isInstance).count();
        for (int i = 0; i < numbers; i++) {
            off += Math.max(Math.abs(reader.work(i, 1) - middle), Math.abs(reader.work(i, -1) - middle));
        }
        return new double[] {middle - off, middle + off};
    }

    private double work(int number, int upOrDown) {
        at = 0;
        met = 0;
        moved = number;
        way = upOrDown;
        double value = sum();
        if (at != tokens.size()) {
            throw new AssertionError("left over: " + tokens.subList(at, tokens.size()));
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (is("+") || is("−")) {
            value = next().equals("+") ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        double value = single();
        while (is("·") || is("/") || is("∥")) {
            Object sign = next();
            double other = single();
            value = sign.equals("·")
                    ? value * other
                    : sign.equals("/") ? value / other : value * other / (value + other);
        }
        return value;
    }

    private double single() {
        Object token = next();
        if (token instanceof Number number) {
            return number.value() + (met++ == moved ? way * number.halfDigit() : 0);
        } else if (token.equals("−")) {
            return -single();
        } else if (token.equals("(")) {
            double value = sum();
            expect(")");
            return value;
        }
        expect("(");
        double value = sum();
        while (is(";")) {
            next();
            double other = sum();
            value = token.equals("max") ? Math.max(value, other) : Math.min(value, other);
        }
        expect(")");
        return token.equals("to5mV")
                ? Math.max(0.005, Math.round(value / 0.005) * 0.005)
                : token.equals("up5mV") ? Math.ceil((value - 1e-9) / 0.005) * 0.005 : value;
    }

    private boolean is(String sign) {
        return at < tokens.size() && tokens.get(at).equals(sign);
    }

    private Object next() {
        if (at == tokens.size()) {
            throw new AssertionError("the sum breaks off: " + tokens);
        }
        return tokens.get(at++);
    }

    private void expect(String sign) {
        if (!next().equals(sign)) {
            throw new AssertionError("expected " + sign + " before " + tokens.subList(at, tokens.size()));
        }
    }
}
