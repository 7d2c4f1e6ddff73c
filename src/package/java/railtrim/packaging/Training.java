package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds out which classes a start needs: starts the very jars that are shipped, on a screen that is only in memory, once
 * with nothing, once with a finished job, and once for a sum on the command line, and lists what was loaded.
 */
final class Training {
    private static final Pattern OF_THE_TRAINING_ALONE =
            Pattern.compile(".*(com/sun/glass/ui/monocle|com/sun/glass/ui/headless|railtrim/packaging).*");
    /** What stands on the real screen, in the place of the one in memory. */
    private static final Pattern REAL_SCREEN = Pattern.compile("/(com/sun/glass/ui/(gtk|win|mac)/[^/]+)\\.class");

    /** Read without the option parser; with one more option it is read with it, as most commands are. */
    private static final List<String> SUM = List.of(
            "railtrim.Main", "predict", "--place", "out-adj", "--reference", "1.25V", "--stock", "3.555V", "--leg", "220R", "--added", "1k");

    private final Build build;
    private final Path folder;

    private Training(Build build) {
        this.build = build;
        this.folder = build.fresh("training");
    }

    /** @return a file with one class name a line */
    static Path classes(Build build) throws IOException {
        Training training = new Training(build);
        Set<String> names = new LinkedHashSet<>();
        List<String> window = List.of(Rehearsed.class.getName());
        names.addAll(training.loaded("start", window));
        names.addAll(training.loaded("job", Tool.with(window, build.project().resolve("demo-data/finished-job.railtrim").toString())));
        names.addAll(training.loaded("sum", SUM));
        names.addAll(training.loaded("parsed", Tool.with(SUM, "--json")));
        names.removeIf(line -> OF_THE_TRAINING_ALONE.matcher(line).matches());
        names.addAll(training.realScreen());
        return Files.write(training.folder.resolve("classes"), names);
    }

    private List<String> loaded(String name, List<String> started) throws IOException {
        Path list = folder.resolve(name);
        List<String> command = new ArrayList<>(List.of(
                Tool.java(Path.of(System.getProperty("java.home"))),
                "-Xshare:off",
                "-XX:DumpLoadedClassList=" + list,
                "-Drailtrim.home=" + folder.resolve("own"),
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dprism.order=sw",
                "-cp",
                classPath()));
        command.addAll(started);
        Tool.program(Map.of(), command);
        return Files.readAllLines(list);
    }

    /** The shipped jars first, then what only the tests have: the screen in memory, and this. */
    private String classPath() {
        Path classes = build.target().resolve("classes");
        Stream<String> rest = Stream.of(System.getProperty("java.class.path").split(java.io.File.pathSeparator))
                .filter(path -> !Path.of(path).equals(classes));
        return String.join(
                java.io.File.pathSeparator,
                Stream.concat(build.jars().stream().map(Path::toString), rest).toList());
    }

    private List<String> realScreen() {
        return build.jars().stream()
                .flatMap(jar -> Modules.contents(jar).stream())
                .map(REAL_SCREEN::matcher)
                .filter(java.util.regex.Matcher::matches)
                .map(name -> name.group(1))
                .toList();
    }
}
