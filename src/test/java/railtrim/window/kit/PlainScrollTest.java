package railtrim.window.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SkinBase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

class PlainScrollTest {
    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void nothingOfItIsPaintedIntoAPictureFirst() {
        SkinBase<?> skin = (SkinBase<?>) new PlainScroll(new Label("1")).createDefaultSkin();
        List<Node> parts = skin.getChildren();
        assertEquals(
                1,
                parts.stream()
                        .filter(part -> part.getStyleClass().contains("viewport"))
                        .count());
        parts.forEach(part -> assertFalse(part.isCache(), part.toString()));
    }
}
