package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * On Linux a few lines of shell start Java, in the place of the packager's own starter: that one asks the system's package
 * manager twice, at each start, which package it came in, and reads the lists of all that is installed for it.
 */
final class Starter {
    private Starter() {}

    static void replace(Build build, Path image, List<String> javaOptions) throws IOException {
        if (Build.System.here() != Build.System.LINUX) {
            return;
        }
        // Under the program's own name, by which people find it in the list of what runs.
        Path bin = Proof.java(image).resolve("bin");
        Files.copy(bin.resolve("java"), bin.resolve("railtrim"), StandardCopyOption.COPY_ATTRIBUTES);
        String text = Files.readString(build.project().resolve("src/package/linux/starter"));
        Path starter = Proof.starter(image);
        Files.delete(starter);
        Files.writeString(starter, text.replace("JAVA_OPTIONS", String.join(" ", javaOptions)));
        if (!starter.toFile().setExecutable(true, false)) {
            throw new IOException(starter + " cannot be made executable");
        }
    }
}
