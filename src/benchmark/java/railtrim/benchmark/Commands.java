package railtrim.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A sum on the command line, against a Java that prints one line. */
final class Commands {
    static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final int PAIRS = 15;

    private Commands() {}

    static void measure(Path target) throws IOException, InterruptedException {
        List<String> sum = List.of(
                "predict",
                "--place",
                "out-adj",
                "--reference",
                "1.25V",
                "--stock",
                "3.555V",
                "--leg",
                "220R",
                "--added",
                "1k");
        against(
                "predict",
                with(List.of(JAVA, "-jar", target.resolve("railtrim.jar").toString()), sum),
                "2.0 at most");
        Path image = target.resolve("image/railtrim/bin/railtrim");
        if (image.toFile().canExecute()) {
            against("predict, packaged", with(List.of(image.toString()), sum), "2.0 at most");
        }
    }

    private static void against(String what, List<String> command, String wished)
            throws IOException, InterruptedException {
        List<String> bare = List.of(JAVA, "-cp", System.getProperty("java.class.path"), OneLine.class.getName());
        double[] ours = new double[PAIRS];
        double[] least = new double[PAIRS];
        double[] ratios = new double[PAIRS];
        once(command);
        for (int i = 0; i < PAIRS; i++) {
            least[i] = once(bare);
            ours[i] = once(command);
            ratios[i] = ours[i] / least[i];
        }
        Row.print(what, Row.median(ours), "ms", "Java printing a line", Row.median(least), Row.median(ratios), wished);
    }

    private static double once(List<String> command) throws IOException, InterruptedException {
        long start = System.nanoTime();
        int exit = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        if (exit != 0) {
            throw new IllegalStateException(command + " ended with " + exit);
        }
        return (System.nanoTime() - start) / 1e6;
    }

    static List<String> with(List<String> some, List<String> more) {
        return java.util.stream.Stream.concat(some.stream(), more.stream()).toList();
    }
}
