package railtrim.window.print;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SystemPrintingTest {
    @TempDir
    Path folder;

    /** Tried with a print queue that writes files: without the program nothing came out, and Java said that all was well. */
    @Test
    void withoutTheProgramThatHandsPagesOnThereIsNoPrinter() {
        assertFalse(new SystemPrinting(Optional.of(folder.resolve("lpr"))).ready());
    }
}
