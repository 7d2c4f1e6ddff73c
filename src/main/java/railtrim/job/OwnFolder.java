package railtrim.job;

import java.nio.file.Path;

/** The folder in the person's home where the program keeps what is its own: the mark, and the jobs opened lately. */
public final class OwnFolder {
    private OwnFolder() {}

    /** {@code .railtrim} in the home folder, or what the system property {@code railtrim.home} names. */
    public static Path path() {
        String other = System.getProperty("railtrim.home", "");
        return other.isEmpty() ? Path.of(System.getProperty("user.home"), ".railtrim") : Path.of(other);
    }
}
