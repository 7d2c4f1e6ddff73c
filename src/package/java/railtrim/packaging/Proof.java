package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** An image counts as made only when it has answered by itself: with no Java to be found, and out of its class archive. */
final class Proof {
    private static final String FROM_THE_ARCHIVE = "railtrim.Main source: shared objects file";
    private static final List<String> SUM = List.of(
            "predict", "--place", "out-adj", "--reference", "1.25V", "--stock", "3.555V", "--leg", "220R", "--added", "1k");
    /** By hand: 1.25 V and (3.555 V − 1.25 V)·(220 Ω ∥ 1 kΩ)/220 Ω = 1.8893 V make 3.1393 V. */
    private static final String ANSWER = "3.139";

    private Proof() {}

    static void of(Build build, Path image) throws IOException {
        String answer = answer(image, Map.of());
        require(answer.contains(ANSWER), "the packaged program answered\n" + answer);
        String loaded = answer(image, Map.of("JAVA_TOOL_OPTIONS", "-Xlog:class+load"));
        require(loaded.contains(FROM_THE_ARCHIVE), "the class archive is not used\n" + loaded);
        List<String> missing = Licences.missing(build, java(image));
        require(missing.isEmpty(), "no licence text for " + missing);
    }

    /** The environment holds only what is given here: no path, no Java. */
    private static String answer(Path image, Map<String, String> environment) throws IOException {
        List<String> command = new java.util.ArrayList<>(List.of(starter(image).toString()));
        command.addAll(SUM);
        return Tool.program(environment, command);
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }

    /** The one folder that {@code jpackage} made. */
    static Path program(Path image) throws IOException {
        try (Stream<Path> made = Files.list(image)) {
            return made.findFirst().orElseThrow();
        }
    }

    static Path starter(Path image) throws IOException {
        Path program = program(image);
        return switch (Build.System.here()) {
            case LINUX -> program.resolve("bin/railtrim");
            case WINDOWS -> program.resolve("railtrim-command.exe");
            case MAC -> program.resolve("Contents/MacOS/Railtrim");
        };
    }

    static Path java(Path image) throws IOException {
        Path program = program(image);
        return switch (Build.System.here()) {
            case LINUX -> program.resolve("lib/runtime");
            case WINDOWS -> program.resolve("runtime");
            case MAC -> program.resolve("Contents/runtime/Contents/Home");
        };
    }
}
