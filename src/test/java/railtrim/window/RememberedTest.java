package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the window looked and where it stood, from one start to the next. */
class RememberedTest {
    private static final Rectangle2D LAPTOP = new Rectangle2D(0, 0, 1366, 740);
    private static final Rectangle2D RIGHT_OF_IT = new Rectangle2D(1366, 0, 1920, 1050);

    @TempDir
    Path folder;

    @Test
    void whatWasKeptIsReadBack() {
        Remembered kept = new Remembered(Look.DARK, 4, Optional.of(new Rectangle2D(-8, 31.5, 1240, 820)), true, true);
        assertTrue(kept.keepIn(folder.resolve("own")));
        assertEquals(kept, Remembered.in(folder.resolve("own")));
    }

    @Test
    void theFirstStartLooksAsTheSystem() {
        assertEquals(Remembered.NOTHING, Remembered.in(folder));
        assertEquals(Look.SYSTEM, Remembered.NOTHING.look());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "look=plaid\ntext=many\nx=1",
                "x=1e9\ny=2\nwidth=NaN\nheight=-3",
                "\\u00",
                "width=0\nx=1\ny=1\nheight=1"
            })
    void aDamagedFileIsAsAtTheFirstStart(String text) throws IOException {
        Files.writeString(folder.resolve("how-it-looked.properties"), text);
        assertEquals(Remembered.NOTHING, Remembered.in(folder));
    }

    @Test
    void whereNothingCanBeWrittenTheWindowGoesOn() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        assertFalse(Remembered.NOTHING.keepIn(file));
    }

    @Test
    void aWindowOnAScreenThatIsStillThereComesBackToIt() {
        Rectangle2D left = new Rectangle2D(1500, 40, 1240, 820);
        assertEquals(Optional.of(left), WindowPlace.on(List.of(LAPTOP, RIGHT_OF_IT), left));
    }

    @Test
    void aWindowLeftOnAScreenThatIsGoneStartsAsUsual() {
        assertEquals(Optional.empty(), WindowPlace.on(List.of(LAPTOP), new Rectangle2D(1500, 40, 1240, 820)));
    }

    @Test
    void aMinimisedWindowsPlaceIsNoPlace() {
        // What Windows reports for a minimised window.
        assertEquals(Optional.empty(), WindowPlace.on(List.of(LAPTOP), new Rectangle2D(-32000, -32000, 160, 28)));
    }

    @Test
    void aTitleBarAboveTheScreenOrAlmostOffItsSideCannotBeTakenHoldOf() {
        assertEquals(Optional.empty(), WindowPlace.on(List.of(LAPTOP), new Rectangle2D(100, -200, 1240, 820)));
        assertEquals(Optional.empty(), WindowPlace.on(List.of(LAPTOP), new Rectangle2D(1300, 40, 1240, 820)));
        assertEquals(Optional.empty(), WindowPlace.on(List.of(LAPTOP), new Rectangle2D(10, 735, 1240, 820)));
    }

    @Test
    void aWindowLargerThanItsScreenIsMadeToFit() {
        assertEquals(
                Optional.of(new Rectangle2D(0, 0, 1366, 740)),
                WindowPlace.on(List.of(LAPTOP), new Rectangle2D(0, 0, 2560, 1440)));
    }
}
