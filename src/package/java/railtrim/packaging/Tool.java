package railtrim.packaging;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** Runs a tool of the development kit inside this process, or a program beside it; what goes wrong stops the build with all that was printed. */
final class Tool {
    private Tool() {}

    static void kit(String name, String... arguments) {
        StringWriter printed = new StringWriter();
        PrintWriter out = new PrintWriter(printed);
        ToolProvider tool = ToolProvider.findFirst(name)
                .orElseThrow(() -> new IllegalStateException("this development kit has no " + name));
        if (tool.run(out, out, arguments) != 0) {
            throw new IllegalStateException(name + " " + List.of(arguments) + "\n" + printed);
        }
    }

    /** @return what it printed */
    static String program(Map<String, String> environment, List<String> command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
            builder.environment().clear();
            builder.environment().putAll(environment);
            Process process = builder.start();
            process.getOutputStream().close();
            String printed = new String(process.getInputStream().readAllBytes());
            if (process.waitFor() != 0) {
                throw new IllegalStateException(String.join(" ", command) + "\n" + printed);
            }
            return printed;
        } catch (IOException e) {
            throw new IllegalStateException(String.join(" ", command), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Whether a program of that name would be found. */
    static boolean onPath(String name) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
    }

    static List<String> with(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }

    /** A program of a Java installation. */
    static String java(Path home) {
        return home.resolve("bin").resolve("java").toString();
    }
}
