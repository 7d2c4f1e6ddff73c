package railtrim.packaging;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Lays the licence texts of all that is inside beside those of Java: {@code legal/NAME} for each library. */
final class Licences {
    private static final Pattern TEXT = Pattern.compile("/META-INF/(LICENSE|NOTICE)(\\.txt|\\.md)?");
    private static final Pattern LIBRARY = Pattern.compile("(.+?)-\\d.*\\.jar");

    private final Build build;
    private final Path legal;

    private Licences(Build build, Path java) {
        this.build = build;
        this.legal = java.resolve("legal");
    }

    static void lay(Build build, Path java) throws IOException {
        Licences licences = new Licences(build, java);
        licences.ownTexts();
        for (Path jar : build.jars()) {
            if (!jar.equals(build.jar())) {
                licences.textsOf(jar);
            }
        }
    }

    private void ownTexts() throws IOException {
        Path own = Files.createDirectories(legal.resolve("railtrim"));
        Files.copy(build.project().resolve("LICENSE"), own.resolve("LICENSE"));
        Files.copy(build.target().resolve("LIBRARIES.txt"), own.resolve("LIBRARIES.txt"));
        Files.copy(build.resource("fonts/README.md"), own.resolve("FONTS.md"));
    }

    /** Those that travel in the jar, or else those kept in {@code resources/licences}. */
    private void textsOf(Path jar) throws IOException {
        String library = library(jar);
        Path folder = Files.createDirectories(legal.resolve(library));
        List<String> inJar = inside(jar);
        try (FileSystem inside = FileSystems.newFileSystem(jar)) {
            for (String name : inJar) {
                Files.copy(
                        inside.getPath(name),
                        folder.resolve(Path.of(name).getFileName().toString()));
            }
        }
        if (inJar.isEmpty()) {
            // The window toolkit has two jars for each part, one of them empty, so the text may be there already.
            Files.copy(kept(build, library), folder.resolve("LICENSE.txt"), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    static List<String> inside(Path jar) {
        return Modules.contents(jar).stream()
                .filter(name -> TEXT.matcher(name).matches())
                .toList();
    }

    /** @return where the text of a library is kept that brings none; the file may be missing */
    static Path kept(Build build, String library) {
        return build.resource("licences/" + (library.startsWith("javafx-") ? "javafx" : library) + ".txt");
    }

    static String library(Path jar) {
        var name = LIBRARY.matcher(jar.getFileName().toString());
        if (!name.matches()) {
            throw new IllegalArgumentException(jar.toString());
        }
        return name.group(1).toLowerCase(Locale.ROOT);
    }

    /** Libraries for which an image has no text. */
    static List<String> missing(Build build, Path java) throws IOException {
        return build.jars().stream()
                .filter(jar -> !jar.equals(build.jar()))
                .map(Licences::library)
                .filter(library -> !Files.isDirectory(java.resolve("legal").resolve(library)))
                .toList();
    }
}
