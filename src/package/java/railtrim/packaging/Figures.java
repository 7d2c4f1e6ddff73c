package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Prints, for each package, how many lines and branches the tests run through, and how many changed sums they notice. */
public final class Figures {
    private static final String LINE = "%-28s %8s %10s %12s%n";
    /** Columns of the list of classes that the coverage tool writes. */
    private static final int PACKAGE = 1;

    private static final int BRANCHES = 5;
    private static final int LINES = 7;
    private static final Pattern CHANGE = Pattern.compile("<mutation detected='(true|false)'");

    private Figures() {}

    /** @param arguments Maven’s build folder */
    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[0]);
        Map<String, long[]> covered = covered(Files.readAllLines(target.resolve("site/jacoco/jacoco.csv")));
        System.out.printf(LINE, "package", "lines", "branches", "noticed");
        for (Map.Entry<String, long[]> each : covered.entrySet()) {
            Path changes = target.resolve("mutation")
                    .resolve(each.getKey().replace("railtrim.", ""))
                    .resolve("mutations.xml");
            String noticed = Files.exists(changes) ? noticed(Files.readString(changes)) : "";
            System.out.printf(
                    LINE, each.getKey(), part(each.getValue(), LINES), part(each.getValue(), BRANCHES), noticed);
        }
    }

    /** @return missed and covered, at the columns they have in the list, summed over each package and over all */
    static Map<String, long[]> covered(List<String> classes) {
        Map<String, long[]> packages = new TreeMap<>();
        long[] all = new long[classes.get(0).split(",").length];
        for (String line : classes.subList(1, classes.size())) {
            String[] cells = line.split(",");
            long[] sums = packages.computeIfAbsent(cells[PACKAGE], name -> new long[cells.length]);
            for (int i = PACKAGE + 2; i < cells.length; i++) {
                sums[i] += Long.parseLong(cells[i]);
                all[i] += Long.parseLong(cells[i]);
            }
        }
        Map<String, long[]> withAll = new LinkedHashMap<>(packages);
        withAll.put("all", all);
        return withAll;
    }

    /** The column holds what was missed, the next one what was covered. */
    static String part(long[] sums, int column) {
        return percent(sums[column + 1], sums[column] + sums[column + 1]);
    }

    static String noticed(String changes) {
        List<Boolean> detected = CHANGE.matcher(changes)
                .results()
                .map(found -> Boolean.valueOf(found.group(1)))
                .toList();
        Stream<Boolean> there = detected.stream().filter(Boolean::booleanValue);
        return percent(there.count(), detected.size());
    }

    private static String percent(long part, long whole) {
        return whole == 0 ? "" : String.format(Locale.ROOT, "%.1f %%", 100.0 * part / whole);
    }
}
