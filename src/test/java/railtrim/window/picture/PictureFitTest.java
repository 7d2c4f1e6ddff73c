package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Nothing written in a picture may touch other writing or leave the picture, at any size. */
class PictureFitTest {
    private static final double[][] SIZES = {{260, 260}, {340, 420}, {300, 700}, {700, 300}, {900, 900}};

    @Test
    void noWritingTouchesOtherWritingOrLeavesThePicture() {
        List<String> wrong = Screen.on(() -> {
            Screen.dark(false);
            List<String> found = new ArrayList<>();
            for (Map.Entry<String, Drawing> each : Samples.all().entrySet()) {
                for (double[] size : SIZES) {
                    PictureView view = Screen.laidOut(each.getValue(), size[0], size[1]);
                    found.addAll(Fit.problems(each.getKey() + " " + size[0] + "x" + size[1], view));
                }
            }
            return found;
        });
        assertEquals(List.of(), wrong, String.join("\n", wrong));
    }

    @Test
    void aWindowWithLargeWritingLeavesThePicturesOwnSizesAlone() {
        // Pictures grow with their space, not with the font of the window: their writing is measured before it is
        // placed.
        List<String> wrong = Screen.on(() -> {
            Screen.dark(false);
            PictureView view = Screen.laidOut(Samples.all().get("ladder-all"), 340, 420);
            view.getScene().getStylesheets().add("data:text/css,.root{-fx-font-size:21px;}");
            view.getScene().getRoot().applyCss();
            view.requestLayout();
            view.getScene().getRoot().layout();
            view.getScene().getRoot().applyCss();
            List<String> found = new ArrayList<>(Fit.problems("large writing", view));
            Screen.texts(view).stream()
                    .filter(text -> text.getFont().getSize() > Type.BIG.size())
                    .forEach(text -> found.add(text.getText() + " has grown"));
            return found;
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void noPictureIsMadeOfMoreThingsThanAWindowDrawsAtOnce() {
        // 150 shapes build and lay out in a few milliseconds; measured, no published limit.
        Screen.on(() -> {
            Samples.all().forEach((name, drawing) -> {
                Sheet sheet = new Sheet(420, 480, new FontRuler("System"), Samples.WORDS);
                drawing.drawOn(sheet);
                assertTrue(
                        sheet.marks().size() <= 150,
                        name + " has " + sheet.marks().size());
            });
            return null;
        });
    }
}
