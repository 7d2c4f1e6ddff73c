package railtrim.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.openjdk.jmh.runner.RunnerException;
import railtrim.window.NextToPainted;

/** Measures everything and prints one table. */
public final class Bench {
    private Bench() {}

    /** @param arguments Maven’s build folder, with the jar, {@code lib} and, if it was made, the application image */
    public static void main(String[] arguments) throws IOException, InterruptedException, RunnerException {
        Row.head();
        Commands.measure(Path.of(arguments[0]));
        try (Screen screen = Screen.open()) {
            onScreen(screen, List.of(), Windows.class, arguments[0]);
            onScreen(screen, Windows.AS_PACKAGED, NextToPainted.class);
        }
        Ratios.measure();
    }

    private static void onScreen(Screen screen, List<String> flags, Class<?> main, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Commands.JAVA));
        command.addAll(flags);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        builder.environment().put("DISPLAY", screen.name());
        builder.environment().remove("WAYLAND_DISPLAY");
        if (builder.start().waitFor() != 0) {
            throw new IllegalStateException(main + " failed");
        }
    }
}
