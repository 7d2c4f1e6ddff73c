package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A Java with only what the program needs, the program itself inside, and an archive of its loaded classes. */
final class TrimmedJava {
    private TrimmedJava() {}

    static Path link(Build build, Path modules) throws IOException {
        Path java = build.target().resolve("package").resolve("java");
        Files.deleteIfExists(Build.emptied(java));
        Tool.kit(
                "jlink",
                "--module-path",
                modules.toString(),
                "--add-modules",
                // The second lets the PDF writer give its buffers back.
                "railtrim,jdk.unsupported",
                "--no-header-files",
                "--no-man-pages",
                // Squeezed class files load slower, but the classes that a start needs come from the archive.
                "--compress=2",
                "--output",
                java.toString());
        return java;
    }

    /**
     * Takes the place of the archive that Java brings for itself, so no option has to name it, and as all classes are
     * inside this one Java, it holds wherever the program is moved to.
     *
     * @param classes the names to archive, see {@link Training}
     */
    static void archive(Path java, Path classes) {
        // Only this collector’s heap can be archived; any other can use it afterwards.
        Tool.program(
                Map.of(),
                List.of(Tool.java(java), "-Xshare:dump", "-XX:+UseG1GC", "-XX:SharedClassListFile=" + classes));
    }
}
