package railtrim.benchmark;

import static railtrim.benchmark.Commands.JAVA;
import static railtrim.benchmark.Commands.with;

import java.awt.AWTException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** From the start of the process to the finished first picture, memory and idling, each against an empty window in turn. */
final class Windows {
    /** As the packages start it, with the pictures drawn by the processor. */
    static final List<String> AS_PACKAGED = List.of(
            "-Dprism.order=sw",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-XX:CompileThresholdScaling=3",
            "-XX:-UsePerfData",
            "-Xmx1g",
            "-Xmn32m",
            "-XX:MetaspaceSize=64m");

    /** As the packages start it, with the graphics card's software tried first. */
    private static final List<String> CARD_FIRST = AS_PACKAGED.subList(1, AS_PACKAGED.size());

    private static final List<String> PLAIN = List.of("-Dprism.order=sw");
    private static final int PAIRS = 7;
    private static final int IDLE_SECONDS = 20;

    private final Launch launch = new Launch();
    private final Path target;
    private final Path folder = Files.createTempDirectory("railtrim-bench");

    private Windows(Path target) throws AWTException, IOException {
        this.target = target;
    }

    public static void main(String[] arguments) throws AWTException, IOException, InterruptedException {
        new Windows(Path.of(arguments[0])).measure();
        System.exit(0);
    }

    private void measure() throws IOException, InterruptedException {
        List<String> emptyPlain = empty(PLAIN);
        pairs("window, started plainly", ours(PLAIN), "empty window, the same way", emptyPlain, "1.25 at most");
        List<String> ourArchive = with(AS_PACKAGED, archive("ours", ours(AS_PACKAGED)));
        List<String> emptyArchive = with(AS_PACKAGED, archive("empty", empty(AS_PACKAGED)));
        pairs(
                "window, class archive and one compiler",
                ours(ourArchive),
                "empty window, the same way",
                empty(emptyArchive),
                "1.25 at most");
        Path image = target.resolve("image/railtrim/bin/railtrim");
        if (Files.isExecutable(image)) {
            pairs("window, packaged", List.of(image.toString()), "empty window, plainly", emptyPlain, "1.0 at most");
            List<String> emptyPackaged = with(CARD_FIRST, archive("empty-card-first", empty(CARD_FIRST)));
            pairs(
                    "window, packaged",
                    List.of(image.toString()),
                    "empty window, the same way",
                    empty(emptyPackaged),
                    "1.25 at most");
        }
        double idleEmpty = 100 * launch.of(emptyPlain, IDLE_SECONDS).idle();
        double idle = 100 * launch.of(ours(PLAIN), IDLE_SECONDS).idle();
        Row.print("window left alone", idle, "% of a core", "empty window", idleEmpty, "0.5 % at most");
    }

    private void pairs(String what, List<String> ours, String against, List<String> other, String wished)
            throws IOException, InterruptedException {
        double[] times = new double[PAIRS];
        double[] otherTimes = new double[PAIRS];
        double[] ratios = new double[PAIRS];
        double[] work = new double[PAIRS];
        double[] otherWork = new double[PAIRS];
        double[] memory = new double[PAIRS];
        double[] otherMemory = new double[PAIRS];
        for (int i = -1; i < PAIRS; i++) {
            Launch.Seen there = launch.of(other);
            Launch.Seen here = launch.of(ours);
            if (i >= 0) {
                otherTimes[i] = there.milliseconds();
                times[i] = here.milliseconds();
                ratios[i] = times[i] / otherTimes[i];
                work[i] = here.processor();
                otherWork[i] = there.processor();
                memory[i] = here.mebibytes();
                otherMemory[i] = there.mebibytes();
            }
        }
        Row.print(what, Row.median(times), "ms", against, Row.median(otherTimes), Row.median(ratios), wished);
        Row.print("    processor time", Row.median(work), "ms", against, Row.median(otherWork), "");
        Row.print("    resident memory", Row.median(memory), "MiB", against, Row.median(otherMemory), "1.3 at most");
    }

    private List<String> empty(List<String> flags) throws IOException {
        return with(
                with(List.of(JAVA), flags),
                List.of("-cp", libraries() + java.io.File.pathSeparator + own(), EmptyWindow.class.getName()));
    }

    private List<String> ours(List<String> flags) {
        return with(
                with(List.of(JAVA), flags),
                List.of(
                        "-Drailtrim.home=" + folder,
                        "-jar",
                        target.resolve("railtrim.jar").toString()));
    }

    /** Only what an empty window needs: the toolkit and the theme. */
    private String libraries() throws IOException {
        try (Stream<Path> jars = Files.list(target.resolve("lib"))) {
            return jars.map(Path::toString)
                    .filter(jar -> jar.matches(".*/(javafx-(base|graphics|controls)|atlantafx).*"))
                    .sorted()
                    .collect(Collectors.joining(java.io.File.pathSeparator));
        }
    }

    /** A jar, because classes in a folder go into no archive. */
    private String own() {
        Path jar = folder.resolve("empty.jar");
        if (!Files.exists(jar)) {
            List<String> arguments = new ArrayList<>(List.of("--create", "--file", jar.toString()));
            Path classes = target.resolve("test-classes");
            for (String name : List.of("EmptyWindow.class", "EmptyWindow$Empty.class")) {
                arguments.addAll(List.of("-C", classes.toString(), "railtrim/benchmark/" + name));
            }
            java.util.spi.ToolProvider.findFirst("jar")
                    .orElseThrow()
                    .run(System.err, System.err, arguments.toArray(String[]::new));
        }
        return jar.toString();
    }

    /** @return the option that uses what was loaded in one start of a command */
    private List<String> archive(String name, List<String> command) throws IOException, InterruptedException {
        Path file = folder.resolve(name + ".jsa");
        List<String> training = new ArrayList<>(command);
        training.add(1, "-XX:ArchiveClassesAtExit=" + file);
        launch.of(training);
        if (!Files.exists(file)) {
            throw new IllegalStateException("no class archive was written");
        }
        return List.of("-XX:SharedArchiveFile=" + file);
    }
}
