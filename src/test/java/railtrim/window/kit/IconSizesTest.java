package railtrim.window.kit;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;

/** Icons take their size from the style sheet, in parts of the text size, so that they grow with it. */
class IconSizesTest {
    @Test
    void everySizeHasItsRule() {
        String sheet = BuiltIn.text("style/railtrim.css");
        for (int size : Icon.SIZES) {
            // The usual text size is 14 pixels.
            String rule = String.format(Locale.ROOT, ".icon-%d { -fx-min-width: %.3fem;", size, size / 14.0);
            assertTrue(sheet.contains(rule), rule);
        }
    }

    @Test
    void aSizeWithoutARuleIsRefusedRatherThanDrawnAsNothing() {
        assertThrows(IllegalArgumentException.class, () -> Icon.MARK.draw(13));
    }
}
