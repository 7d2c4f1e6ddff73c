package railtrim.window.bench;

import java.util.ArrayList;
import java.util.List;
import railtrim.practice.Bench;
import railtrim.procedure.Words;

/** What a look through a magnifying glass shows of the solder on the board. */
final class JointsSeen {
    private final Words words;
    private final Workbench work;

    JointsSeen(Words words, Workbench work) {
        this.words = words;
        this.work = work;
    }

    String told() {
        Bench bench = work.bench();
        List<String> seen = new ArrayList<>();
        bench.bridged().ifPresent(pair -> seen.add(words.of("window.bench.joints.bridge", Pads.print(words, pair))));
        for (Workbench.Mounted<?> part : work.mounted()) {
            if (bench.isLoose(part.part())) {
                seen.add(words.of("window.bench.joints.loose", part.name()));
            } else if (bench.isDry(part.part())) {
                seen.add(words.of("window.bench.joints.dry", part.name()));
            }
        }
        if (seen.isEmpty()) {
            return words.of(work.mounted().isEmpty() ? "window.bench.joints.none" : "window.bench.joints.good");
        }
        return String.join(" ", seen);
    }
}
