package railtrim.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is given away carries its licence text: from the library itself, or kept in {@code resources/licences}. */
class LicencesTest {
    private final Build build = new Build(Path.of(""), Path.of("target"));

    @Test
    void everyShippedLibraryHasALicenceText() throws IOException {
        List<Path> shipped = shipped();
        assertTrue(shipped.size() >= 8, "only " + shipped);
        for (Path jar : shipped) {
            Path kept = Licences.kept(build, Licences.library(jar));
            assertTrue(
                    !Licences.inside(jar).isEmpty() || Files.size(kept) > 0, jar + " has no text; put it into " + kept);
        }
    }

    @Test
    void aLibraryIsKnownByItsNameWithoutVersionAndSystem() {
        assertEquals("javafx-graphics", Licences.library(Path.of("lib", "javafx-graphics-21.0.11-linux.jar")));
        assertEquals("commons-numbers-core", Licences.library(Path.of("commons-numbers-core-1.2.jar")));
    }

    /** The jars of the class path that the list of shipped libraries names. */
    private static List<Path> shipped() throws IOException {
        String list = Files.readString(Path.of("target", "LIBRARIES.txt"));
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Path::of)
                .filter(path -> path.toString().endsWith(".jar"))
                .filter(path -> list.contains(":" + Licences.library(path) + ":"))
                .toList();
    }
}
