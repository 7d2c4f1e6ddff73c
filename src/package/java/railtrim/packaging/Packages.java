package railtrim.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the application image, which carries its own trimmed Java, proves that it runs without any other, and wraps it
 * into this system’s kind of installer.
 */
public final class Packages {
    private static final String NO_INSTALLER = "image";
    /**
     * One person’s window: little memory matters more than many collector threads, and the second compiler costs more while
     * the window comes up than it ever gives back. The counts for onlookers wake a window left alone twenty times a second.
     * What is young is collected in small lots, so that no step waits long for it, yet not once before the first picture; and the
     * classes of a whole job set off no collection of everything. A method is compiled after three times as many calls as usual: most of what runs
     * while the window comes up never runs again. The last two let a deed be shown at once ({@code PromptFrame}).
     */
    private static final List<String> JAVA_OPTIONS = List.of(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-XX:CompileThresholdScaling=3",
            "-XX:-UsePerfData",
            "-Xmx1g",
            "-Xmn32m",
            "-XX:MetaspaceSize=64m",
            "--add-exports=javafx.graphics/com.sun.javafx.tk=railtrim",
            "--add-opens=javafx.graphics/com.sun.javafx.tk.quantum=railtrim");

    private final Build build;
    private final String version;
    private final Path icon;

    private Packages(Build build, String version) throws IOException {
        this.build = build;
        this.version = Wrapping.version(Build.System.here(), version);
        this.icon = new Icons(build).forThisSystem();
    }

    /** @param arguments the project’s folder, its build folder, the version, and {@code image} or {@code installer} */
    public static void main(String[] arguments) throws IOException {
        Build build = new Build(Path.of(arguments[0]), Path.of(arguments[1]));
        Packages packages = new Packages(build, arguments[2]);
        Path image = packages.image();
        System.out.println(new Sizes(build).of("application image", image));
        if (!arguments[3].equals(NO_INSTALLER)) {
            List<String> missing = Wrapping.missing(Build.System.here(), Tool::onPath);
            if (!missing.isEmpty()) {
                System.err.println(Wrapping.told(Build.System.here(), missing));
                System.exit(1);
            }
            System.out.println(new Sizes(build).of("installer", packages.installer(image)));
        }
    }

    private Path image() throws IOException {
        Path java = TrimmedJava.link(build, Modules.of(build));
        TrimmedJava.archive(java, Training.classes(build));
        Licences.lay(build, java);
        Path image = Build.emptied(build.image());
        List<String> arguments = common("app-image", image);
        arguments.addAll(List.of(
                "--runtime-image",
                java.toString(),
                "--module",
                "railtrim/railtrim.Main"));
        JAVA_OPTIONS.forEach(option -> arguments.addAll(List.of("--java-options", option)));
        if (Build.System.here() == Build.System.WINDOWS) {
            // The window’s starter has no console there, so the commands get a starter of their own.
            Path console = Files.writeString(build.fresh("starters").resolve("console.properties"), "win-console=true\n");
            arguments.addAll(List.of("--add-launcher", "railtrim-command=" + console));
        }
        jpackage(arguments);
        Starter.replace(build, image, JAVA_OPTIONS);
        Proof.of(build, image);
        return image;
    }

    private Path installer(Path image) throws IOException {
        Path folder = Build.emptied(build.installers());
        List<String> arguments = common(kind(), folder);
        arguments.addAll(List.of(
                "--app-image",
                Proof.program(image).toString(),
                "--license-file",
                build.project().resolve("LICENSE").toString(),
                "--file-associations",
                association().toString()));
        arguments.addAll(forThisSystem());
        jpackage(arguments);
        return folder;
    }

    private static String kind() {
        return switch (Build.System.here()) {
            case LINUX -> "deb";
            case WINDOWS -> "msi";
            case MAC -> "dmg";
        };
    }

    private List<String> common(String kind, Path to) {
        return new ArrayList<>(List.of(
                "--type",
                kind,
                "--name",
                Build.System.here() == Build.System.LINUX ? "railtrim" : "Railtrim",
                "--app-version",
                version,
                "--vendor",
                "Railtrim",
                "--description",
                "Lower the supply of an old board's hot chip, one safe step at a time",
                "--copyright",
                "Apache License 2.0",
                "--dest",
                to.toString(),
                "--icon",
                icon.toString()));
    }

    private List<String> forThisSystem() {
        return switch (Build.System.here()) {
            case LINUX -> List.of(
                    "--resource-dir",
                    build.project().resolve("src/package/linux").toString(),
                    "--linux-package-name",
                    "railtrim",
                    "--linux-app-category",
                    "electronics",
                    "--linux-menu-group",
                    "Education;Electronics;",
                    "--linux-shortcut");
            case WINDOWS -> List.of("--win-per-user-install", "--win-menu", "--win-shortcut", "--win-dir-chooser");
            case MAC -> List.of("--mac-package-identifier", "railtrim");
        };
    }

    /** A job file opens with a double click. */
    private Path association() throws IOException {
        return Files.write(
                build.fresh("association").resolve("job.properties"),
                List.of(
                        "extension=railtrim",
                        "mime-type=application/x-railtrim",
                        "description=Railtrim job",
                        "icon=" + icon.toString().replace('\\', '/')));
    }

    private static void jpackage(List<String> arguments) {
        Tool.kit("jpackage", arguments.toArray(String[]::new));
    }
}
