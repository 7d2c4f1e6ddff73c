package railtrim.procedure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The steps in order, with what is asked about each of them after every fact told once. */
final class Route {
    private final List<Step> steps;
    private final Map<String, Integer> places = new HashMap<>();
    private final int[][] rests;

    Route(List<Step> steps) {
        this.steps = List.copyOf(steps);
        this.rests = new int[steps.size()][];
        for (int i = 0; i < steps.size(); i++) {
            rests[i] = steps.get(i).restsOn().stream()
                    .filter(places::containsKey)
                    .mapToInt(places::get)
                    .toArray();
            places.put(steps.get(i).id(), i);
        }
    }

    List<Step> steps() {
        return steps;
    }

    Step step(int place) {
        return steps.get(place);
    }

    int size() {
        return steps.size();
    }

    /** Where a step comes, from 0; −1 for one that is none of these, as a card's or one that only a file made by hand can name. */
    int place(String step) {
        return places.getOrDefault(step, -1);
    }

    /** Places of the earlier steps that a step rests on; not to be changed. */
    int[] restsOn(int place) {
        return rests[place];
    }
}
