package railtrim;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import railtrim.window.kit.PlainScroll;

/** The arrows between the packages run one way, and the sums touch nothing but what they are handed. */
@AnalyzeClasses(packages = "railtrim", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<String> BELOW_PROCEDURE =
            List.of("job", "threshold", "heat", "parts", "circuit", "quantity");

    /** Each package, and those it may use besides itself. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            Map.entry("quantity", List.of()),
            Map.entry("circuit", List.of("quantity")),
            Map.entry("parts", List.of("circuit", "quantity")),
            Map.entry("threshold", List.of("quantity")),
            Map.entry("heat", List.of("quantity")),
            Map.entry("job", List.of("threshold", "heat", "parts", "circuit", "quantity")),
            Map.entry("procedure", BELOW_PROCEDURE),
            Map.entry("practice", and(BELOW_PROCEDURE, "procedure")),
            Map.entry("report", and(BELOW_PROCEDURE, "procedure")),
            Map.entry("command", and(BELOW_PROCEDURE, "procedure", "practice", "report")),
            Map.entry("window", and(BELOW_PROCEDURE, "procedure", "practice", "report")));

    /** Packages that compute from what they are given: the same facts in, the same answer out. */
    private static final String[] SUMS = packages("quantity", "circuit", "parts", "threshold", "heat", "procedure");

    private static final Set<String> CLOCKS =
            Set.of("now", "currentTimeMillis", "nanoTime", "systemUTC", "systemDefaultZone");

    @ArchTest
    static void everyPackageHasItsArrows(JavaClasses classes) {
        Set<String> found = new TreeSet<>();
        classes.forEach(type -> {
            String[] names = type.getPackageName().split("\\.");
            if (names.length > 1) {
                found.add(names[1]);
            }
        });
        found.removeAll(MAY_USE.keySet());
        assertEquals(Set.of(), found, "a package that is not in the table above would be held to nothing");
    }

    @ArchTest
    static void theArrowsRunOneWay(JavaClasses classes) {
        MAY_USE.forEach((name, allowed) -> {
            Set<String> forbidden = new HashSet<>(MAY_USE.keySet());
            forbidden.removeAll(allowed);
            forbidden.remove(name);
            noClasses()
                    .that()
                    .resideInAnyPackage(packages(name))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(packages(forbidden.toArray(String[]::new)))
                    .orShould()
                    .dependOnClassesThat()
                    .resideInAPackage("railtrim")
                    .allowEmptyShould(true)
                    .check(classes);
        });
    }

    /** The toolkit’s own keeps a picture of each pane that is gone, until the memory is full. */
    @ArchTest
    static final ArchRule whatScrollsIsPaintedStraightIntoTheWindow = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(PlainScroll.class.getName())
            .should()
            .callConstructor(ScrollPane.class)
            .orShould()
            .callConstructor(ScrollPane.class, Node.class);

    @ArchTest
    static final ArchRule noTwoPackagesUseEachOther =
            slices().matching("railtrim.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyTheWindowKnowsJavaFx = noClasses()
            .that()
            .resideOutsideOfPackage("railtrim.window..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "com.sun.javafx..", "atlantafx..", "org.controlsfx..");

    @ArchTest
    static final ArchRule theSumsReadNoFileAndNoNetwork = noClasses()
            .that()
            .resideInAnyPackage(SUMS)
            .should()
            .dependOnClassesThat(
                    describe(
                            "are files, streams or sockets",
                            type -> type.getPackageName().matches("java\\.(nio\\.file|nio\\.channels|net)(\\..*)?")
                                    || type.getName()
                                            .matches(
                                                    "java\\.io\\.(?!StringReader|StringWriter|IOException|UncheckedIOException|Serializable).*")));

    /** {@code URI} and {@code URL} are names of things; these are what would fetch them. The doorbell is held to sockets of the file system below. */
    @ArchTest
    static final ArchRule nothingTalksToANetwork = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("railtrim.window.Doorbell")
            .should()
            .dependOnClassesThat(
                    describe(
                            "open a connection",
                            type -> type.getName()
                                    .matches(
                                            "java\\.net\\.(http\\..*|.*Socket.*|.*URLConnection|InetAddress|Inet.Address)|java\\.nio\\.channels\\..*Socket.*|java\\.rmi\\..*|javafx\\.scene\\.web\\..*")));

    @ArchTest
    static final ArchRule theDoorbellKnowsNoNetwork = noClasses()
            .that()
            .haveFullyQualifiedName("railtrim.window.Doorbell")
            .should()
            .dependOnClassesThat(
                    describe(
                            "are addresses or sockets of a network",
                            type -> type.getName()
                                    .matches(
                                            "java\\.net\\.(http\\..*|Inet.*|Socket|ServerSocket|Datagram.*|.*URLConnection)|java\\.nio\\.channels\\.(Datagram|Asynchronous).*")))
            .orShould()
            .accessFieldWhere(describe(
                    "names a family of the network",
                    access -> access.getTarget().getName().startsWith("INET")));

    @ArchTest
    static final ArchRule theSumsReadNothingFromInsideTheProgramEither = noClasses()
            .that()
            .resideInAnyPackage(SUMS)
            .should()
            .callMethodWhere(to(
                    "getResource or getResourceAsStream",
                    "java.lang.Class",
                    Set.of("getResource", "getResourceAsStream")));

    @ArchTest
    static final ArchRule theSumsReadNoClock = noClasses()
            .that()
            .resideInAnyPackage(SUMS)
            .should()
            .callMethodWhere(describe(
                    "reads a clock",
                    (JavaCall<?> call) -> CLOCKS.contains(call.getName())
                            && call.getTargetOwner().getName().matches("java\\.(time\\..*|lang\\.System)")))
            .orShould()
            .callConstructorWhere(describe(
                    "makes a date of now",
                    call -> call.getTargetOwner().getName().equals("java.util.Date")
                            && call.getTarget().getRawParameterTypes().isEmpty()));

    @ArchTest
    static final ArchRule theSumsDrawNoLots = noClasses()
            .that()
            .resideInAnyPackage(SUMS)
            .should()
            .callConstructorWhere(describe(
                    "makes a random source without a seed",
                    call -> call.getTargetOwner().isAssignableTo(Random.class)
                            && call.getTarget().getRawParameterTypes().isEmpty()))
            .orShould()
            .callMethodWhere(to("random", "java.lang.Math", Set.of("random")))
            .orShould()
            .callMethodWhere(to("randomUUID", "java.util.UUID", Set.of("randomUUID")))
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom");

    @ArchTest
    static final ArchRule nothingSharedChanges =
            fields().that().areStatic().should().beFinal();

    private static DescribedPredicate<JavaCall<?>> to(String name, String owner, Set<String> methods) {
        return describe(
                "calls " + name,
                call -> methods.contains(call.getName())
                        && call.getTargetOwner().getName().equals(owner));
    }

    private static String[] packages(String... names) {
        return Stream.of(names).map(name -> "railtrim." + name + "..").toArray(String[]::new);
    }

    private static List<String> and(List<String> names, String... more) {
        return Stream.concat(names.stream(), Stream.of(more)).toList();
    }
}
