package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import railtrim.job.Entry;

/** The facts of a job by step. A job that goes on from what was read before is only read on; the lists handed out never change. */
final class FactsByStep {
    private final Map<String, List<Entry>> facts = new HashMap<>();

    private List<Entry> read = List.of();

    /** Of each step of the route in its order. */
    @SuppressWarnings("unchecked")
    List<Entry>[] of(Route route, List<Entry> entries) {
        readOn(entries);
        List<Entry>[] steps = new List[route.size()];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = facts.getOrDefault(route.step(i).id(), List.of());
        }
        return steps;
    }

    private void readOn(List<Entry> entries) {
        if (!goesOn(read, entries)) {
            facts.clear();
            read = List.of();
        }
        Map<String, List<Entry>> fresh = new HashMap<>();
        for (int i = read.size(); i < entries.size(); i++) {
            Entry entry = entries.get(i);
            fresh.computeIfAbsent(entry.fact().step(), step -> new ArrayList<>())
                    .add(entry);
        }
        fresh.forEach((step, more) -> {
            List<Entry> all = new ArrayList<>(facts.getOrDefault(step, List.of()));
            all.addAll(more);
            facts.put(step, all);
        });
        read = entries;
    }

    /** Whether a job goes on from these facts: whether they are the first of its own. */
    static boolean goesOn(List<Entry> read, List<Entry> entries) {
        if (read.size() > entries.size()) {
            return false;
        }
        for (int i = read.size() - 1; i >= 0; i--) {
            if (read.get(i) != entries.get(i)) {
                return false;
            }
        }
        return true;
    }
}
