package railtrim.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Turns the jars into modules that can be linked into a trimmed Java. A jar without a descriptor gets one; the window
 * toolkit’s native libraries, which travel inside its jar, are laid beside Java’s own, so that nothing has to be
 * unpacked into the person’s home at the first start.
 */
final class Modules {
    private final Build build;
    private final Path modules;

    private Modules(Build build) {
        this.build = build;
        this.modules = build.fresh("modules");
    }

    /** @return a folder with one module for each jar */
    static Path of(Build build) throws IOException {
        Modules made = new Modules(build);
        for (Path jar : build.jars()) {
            if (hasClasses(jar)) {
                made.add(jar);
            }
        }
        return made.modules;
    }

    /** The window toolkit has an empty jar beside each that is for one system. */
    private static boolean hasClasses(Path jar) throws IOException {
        return contents(jar).stream().anyMatch(name -> name.endsWith(".class"));
    }

    private void add(Path jar) throws IOException {
        ModuleDescriptor descriptor = descriptor(jar);
        if (contents(jar).stream().anyMatch(Modules::isNative)) {
            addWithNatives(jar, descriptor.name());
            return;
        }
        Path copy = Files.copy(jar, modules.resolve(jar.getFileName()));
        if (descriptor.isAutomatic()) {
            describe(copy, descriptor.name());
        }
    }

    private void addWithNatives(Path jar, String name) throws IOException {
        Path classes = build.fresh("natives/" + name + "/classes");
        Path natives = build.fresh("natives/" + name + "/libraries");
        try (FileSystem inside = FileSystems.newFileSystem(jar)) {
            for (String entry : contents(jar)) {
                Path to = (isNative(entry) ? natives : classes).resolve(entry.substring(1));
                Files.createDirectories(to.getParent());
                Files.copy(inside.getPath(entry), to);
            }
        }
        Tool.kit(
                "jmod",
                "create",
                "--class-path",
                classes.toString(),
                "--libs",
                natives.toString(),
                modules.resolve(name + ".jmod").toString());
    }

    private void describe(Path jar, String name) throws IOException {
        Path source = build.fresh("descriptors/" + name + "/source");
        Path compiled = build.fresh("descriptors/" + name + "/compiled");
        String path = String.join(
                java.io.File.pathSeparator,
                build.jars().stream().map(Path::toString).toList());
        Tool.kit(
                "jdeps",
                "--ignore-missing-deps",
                "--multi-release",
                "17",
                "--module-path",
                path,
                "--generate-open-module",
                source.toString(),
                jar.toString());
        Path written = descriptorIn(source);
        if (name.equals("railtrim")) {
            // Only a module that exports something is there when the class archive is made.
            Files.writeString(written, Files.readString(written).replace("{", "{ exports railtrim;"));
        }
        Tool.kit(
                "javac",
                "--release",
                "17",
                "-Xlint:none",
                "--module-path",
                path,
                "--patch-module",
                name + "=" + jar,
                "-d",
                compiled.toString(),
                written.toString());
        Tool.kit("jar", "--update", "--file", jar.toString(), "-C", compiled.toString(), "module-info.class");
        if (name.equals("railtrim")) {
            // With its main class known, the module graph is worked out when it is linked, not at each start.
            Tool.kit("jar", "--update", "--file", jar.toString(), "--main-class", "railtrim.Main");
        }
    }

    private static Path descriptorIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.endsWith("module-info.java"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static ModuleDescriptor descriptor(Path jar) {
        return ModuleFinder.of(jar).findAll().iterator().next().descriptor();
    }

    private static boolean isNative(String name) {
        return name.endsWith(".so") || name.endsWith(".dll") || name.endsWith(".dylib");
    }

    static List<String> contents(Path jar) {
        try (FileSystem inside = FileSystems.newFileSystem(jar);
                Stream<Path> files = Files.walk(inside.getPath("/"))) {
            return files.filter(Files::isRegularFile).map(Path::toString).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
