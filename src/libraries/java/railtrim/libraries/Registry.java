package railtrim.libraries;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.aether.RepositoryException;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.resolution.ArtifactDescriptorRequest;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.VersionRangeRequest;
import org.eclipse.aether.supplier.RepositorySystemSupplier;
import org.eclipse.aether.supplier.SessionBuilderSupplier;
import org.eclipse.aether.version.Version;

/**
 * Asks the registry about every library that travels with the program: the newest version of the line in use and of all, and whether the newest
 * says that it moved to another name, or that it is retired. A registry knows no more; for advisories ask a database of them.
 */
public final class Registry {
    private static final Pattern LINE =
            Pattern.compile("\\s*\\((?<licence>.+?)\\) .+ \\((?<what>[^: ]+:[^: ]+):(?<version>[^: ]+) - .*\\)");
    private static final Pattern NOT_FINISHED =
            Pattern.compile("(?i).*([.-](alpha|beta|b|rc|m|cr|ea|snapshot|pre)[.\\d+-]*).*|.*-jre.*|\\d{8}.*");
    /** Said of the library as a whole; the same word in a name of a part would not be. */
    private static final Pattern RETIRED = Pattern.compile(
            "(?i)\\b(deprecated|retired|discontinued|end[- ]of[- ]life|no longer (maintained|supported|developed))\\b");

    private final RepositorySystem system = new RepositorySystemSupplier().get();
    private final RepositorySystemSession session;
    private final List<RemoteRepository> registry;

    private Registry(Path local, String address) {
        session = new SessionBuilderSupplier(system)
                .get()
                .withLocalRepositoryBaseDirectories(local)
                .setSystemProperties(System.getProperties())
                .build();
        registry = List.of(new RemoteRepository.Builder("central", "default", address).build());
    }

    /** @param arguments the list of libraries that the build wrote, the local repository, the registry's address */
    public static void main(String[] arguments) throws IOException, RepositoryException {
        Registry asked = new Registry(Path.of(arguments[1]), arguments[2]);
        int bad = 0;
        System.out.printf("%-58s %-12s %-12s %-12s %s%n", "library", "in use", "its line", "newest", "licence; notice");
        for (String line : Files.readAllLines(Path.of(arguments[0]))) {
            Matcher library = LINE.matcher(line);
            if (library.matches()) {
                Optional<String> notice =
                        asked.tell(library.group("what"), library.group("version"), library.group("licence"));
                bad += notice.isPresent() ? 1 : 0;
            }
        }
        System.out.println(bad == 0 ? "None has moved or is retired." : bad + " moved or retired.");
        System.exit(bad == 0 ? 0 : 1);
    }

    private Optional<String> tell(String what, String used, String licence) throws RepositoryException, IOException {
        List<String> finished = finished(what);
        String newest = finished.isEmpty() ? used : finished.get(finished.size() - 1);
        String line = finished.stream()
                .filter(version -> major(version).equals(major(used)))
                .reduce(used, (earlier, later) -> later);
        Optional<String> notice = notice(new DefaultArtifact(what + ":pom:" + used))
                .or(() -> quietly(new DefaultArtifact(what + ":pom:" + newest)));
        System.out.printf(
                "%-58s %-12s %-12s %-12s %s%n",
                what,
                used,
                line,
                newest,
                licence + notice.map(said -> "; " + said).orElse(""));
        return notice;
    }

    private List<String> finished(String what) throws RepositoryException {
        List<String> finished = new ArrayList<>();
        VersionRangeRequest all = new VersionRangeRequest(new DefaultArtifact(what + ":[0,)"), registry, null);
        for (Version version : system.resolveVersionRange(session, all).getVersions()) {
            if (!NOT_FINISHED.matcher(version.toString()).matches()) {
                finished.add(version.toString());
            }
        }
        return finished;
    }

    private Optional<String> quietly(Artifact pom) {
        try {
            return notice(pom);
        } catch (RepositoryException | IOException e) {
            return Optional.of("its newest description cannot be had");
        }
    }

    /** What the library's own description says against using it. */
    private Optional<String> notice(Artifact pom) throws RepositoryException, IOException {
        List<Artifact> moved = system.readArtifactDescriptor(
                        session, new ArtifactDescriptorRequest(pom, registry, null))
                .getRelocations();
        if (!moved.isEmpty()) {
            return Optional.of(pom.getVersion() + " moved: " + moved);
        }
        Path file = system.resolveArtifact(session, new ArtifactRequest(pom, registry, null))
                .getArtifact()
                .getPath();
        String text = Files.readString(file, StandardCharsets.UTF_8);
        Matcher described =
                Pattern.compile("(?s)<(?:name|description)>(.*?)</").matcher(text.replaceAll("(?s)<dependenc.*", ""));
        while (described.find()) {
            if (RETIRED.matcher(described.group(1)).find()) {
                return Optional.of(
                        pom.getVersion() + " says: " + described.group(1).strip());
            }
        }
        return Optional.empty();
    }

    private static String major(String version) {
        return version.replaceAll("[.-].*", "");
    }
}
