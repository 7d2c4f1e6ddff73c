package railtrim.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Where the packages are made from, and where they go.
 *
 * @param project the source tree
 * @param target what Maven builds into; it holds the program's jar and {@code lib}
 */
record Build(Path project, Path target) {
    enum System {
        LINUX,
        WINDOWS,
        MAC;

        static System here() {
            String name = java.lang.System.getProperty("os.name").toLowerCase(Locale.ROOT);
            return name.contains("win") ? WINDOWS : name.contains("mac") ? MAC : LINUX;
        }
    }

    Path jar() {
        return target.resolve("railtrim.jar");
    }

    /** The program's own jar and every library it is shipped with. */
    List<Path> jars() {
        try (Stream<Path> libraries = Files.list(target.resolve("lib"))) {
            return Stream.concat(Stream.of(jar()), libraries.filter(file -> file.toString().endsWith(".jar")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path resource(String name) {
        return project.resolve("resources").resolve(name);
    }

    /** Where the application image is put. */
    Path image() {
        return target.resolve("image");
    }

    Path installers() {
        return target.resolve("installers");
    }

    /** A folder for one stage of the work, empty. */
    Path fresh(String name) {
        return emptied(target.resolve("package").resolve(name));
    }

    static Path emptied(Path folder) {
        try {
            if (Files.exists(folder)) {
                try (Stream<Path> inside = Files.walk(folder)) {
                    for (Path file : inside.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            }
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
