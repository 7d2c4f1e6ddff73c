package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;

class TextSizesTest {
    @Test
    void everyTextSizeHasItsRule() {
        String sheet = BuiltIn.text("style/railtrim.css");
        for (int size : Theme.SIZES) {
            String rule = ".text-" + size + " { -fx-font-size: " + size + "px; }";
            assertTrue(sheet.contains(rule), rule);
        }
    }
}
