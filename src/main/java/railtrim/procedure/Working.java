package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** Writes a {@link Sum} line by line. A formula is in symbols; the numbers behind them are put in by itself. */
final class Working {
    /** A symbol begins with a letter: V, Vref, Re, legHigh. Names of functions stay as they are. */
    private static final Pattern SYMBOL = Pattern.compile("(?<![\\w.])\\p{L}\\w*");

    private final Message what;
    private final List<Sum.Line> lines = new ArrayList<>();
    private final List<Sum.Given> given = new ArrayList<>();
    private final List<Message> sources = new ArrayList<>();
    private final Map<String, String> written = new HashMap<>();

    Working(String what, String... values) {
        this.what = Message.of(what, values);
    }

    Working given(String symbol, double value, Unit unit, String says) {
        return given(symbol, value, unit, Message.of(says));
    }

    Working given(String symbol, double value, Unit unit, Message says) {
        written.put(symbol, Display.of(value, unit));
        given.add(new Sum.Given(symbol, written.get(symbol), says));
        return this;
    }

    Working line(String symbol, String formula, double result, Unit unit) {
        String putIn = putIn(formula);
        written.put(symbol, unit == Unit.VOLT ? Display.volts(result) : Display.of(result, unit));
        lines.add(new Sum.Line(symbol, formula, putIn, written.get(symbol)));
        return this;
    }

    private String putIn(String formula) {
        Matcher symbols = SYMBOL.matcher(formula);
        return symbols.replaceAll(
                found -> Matcher.quoteReplacement(written.getOrDefault(found.group(), found.group())));
    }

    Working from(String source, String... values) {
        sources.add(Message.of(source, values));
        return this;
    }

    Sum done() {
        return new Sum(what, lines, given, sources);
    }
}
