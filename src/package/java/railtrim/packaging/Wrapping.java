package railtrim.packaging;

import java.util.List;
import java.util.function.Predicate;

/** What each system asks of its installers: tools that make them, and a version they take. */
final class Wrapping {
    private Wrapping() {}

    /** @param there whether a program of that name is found */
    static List<String> missing(Build.System system, Predicate<String> there) {
        return tools(system).stream().filter(there.negate()).toList();
    }

    private static List<String> tools(Build.System system) {
        return switch (system) {
            case LINUX -> List.of("fakeroot", "dpkg-deb", "objcopy");
            case WINDOWS -> List.of("candle.exe", "light.exe");
            case MAC -> List.of("hdiutil");
        };
    }

    /** One line, for the person who builds. */
    static String told(Build.System system, List<String> missing) {
        String install = switch (system) {
            case LINUX -> "Install the packages fakeroot, dpkg and binutils";
            case WINDOWS -> "Install the WiX tools, version 3, and put them on the path";
            case MAC -> "Install the command line tools of Xcode";
        };
        return "No installer was made: there is no " + String.join(", no ", missing) + " here. " + install
                + ", or leave the installer out with -Dpackages=image. The application image is there and works.";
    }

    /** An Apple package takes no version that begins with 0, so what comes before the first release counts as 1 there. */
    static String version(Build.System system, String version) {
        return system == Build.System.MAC && version.startsWith("0.") ? "1" + version.substring(1) : version;
    }
}
