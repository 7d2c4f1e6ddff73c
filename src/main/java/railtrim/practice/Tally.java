package railtrim.practice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Outcome figures over many rehearsals. */
public record Tally(List<Outcome> outcomes) {
    public Tally {
        outcomes = List.copyOf(outcomes);
    }

    public int boards() {
        return outcomes.size();
    }

    public int finished() {
        return count(Outcome::finished);
    }

    public int stopped() {
        return count(Outcome::stopped);
    }

    /** Boards whose chip had more than its stock voltage, or would at a corner of the resistors' tolerance. */
    public int aboveStock() {
        return count(Outcome::aboveStock);
    }

    /** Boards whose fixed resistor can hold the chip where it may fail. */
    public int belowFail() {
        return count(Outcome::belowFail);
    }

    public int slips() {
        return outcomes.stream().mapToInt(Outcome::slips).sum();
    }

    public int slipsCaught() {
        return outcomes.stream().mapToInt(Outcome::slipsCaught).sum();
    }

    /** The figures by name, ready to be written as a JSON object. */
    public Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("boards", boards());
        values.put("finished", finished());
        values.put("stopped", stopped());
        values.put("aboveStock", aboveStock());
        values.put("belowFail", belowFail());
        values.put("slips", slips());
        values.put("slipsCaught", slipsCaught());
        return values;
    }

    private int count(Predicate<Outcome> which) {
        return (int) outcomes.stream().filter(which).count();
    }
}
