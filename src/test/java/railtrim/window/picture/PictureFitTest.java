package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;

/** Nothing written in a picture may touch other writing or leave the picture, at any size. */
class PictureFitTest {
    private static final double[][] SIZES = {{260, 260}, {340, 420}, {300, 700}, {700, 300}, {900, 900}};
    /** Line boxes are taller than the letters in them: this much of two boxes may meet without letters touching. */
    private static final double SLACK = 2.5;

    @Test
    void noWritingTouchesOtherWritingOrLeavesThePicture() {
        List<String> wrong = Screen.on(() -> {
            Screen.dark(false);
            List<String> found = new ArrayList<>();
            for (Map.Entry<String, Drawing> each : Samples.all().entrySet()) {
                for (double[] size : SIZES) {
                    PictureView view = Screen.laidOut(each.getValue(), size[0], size[1]);
                    found.addAll(problems(each.getKey() + " " + size[0] + "x" + size[1], view));
                }
            }
            return found;
        });
        assertEquals(List.of(), wrong, String.join("\n", wrong));
    }

    private static List<String> problems(String where, PictureView view) {
        List<String> found = new ArrayList<>();
        List<Text> texts = Screen.texts(view);
        for (int i = 0; i < texts.size(); i++) {
            Bounds one = Screen.on(view, texts.get(i));
            if (one.getMinX() < -0.5
                    || one.getMinY() < -SLACK
                    || one.getMaxX() > view.getWidth() + 0.5
                    || one.getMaxY() > view.getHeight() + SLACK) {
                found.add(where + ": “" + texts.get(i).getText() + "” leaves the picture");
            }
            for (int j = i + 1; j < texts.size(); j++) {
                if (touch(one, Screen.on(view, texts.get(j)))) {
                    found.add(where + ": “" + texts.get(i).getText() + "” touches “"
                            + texts.get(j).getText() + "”");
                }
            }
        }
        return found;
    }

    private static boolean touch(Bounds one, Bounds two) {
        double wide = Math.min(one.getMaxX(), two.getMaxX()) - Math.max(one.getMinX(), two.getMinX());
        double high = Math.min(one.getMaxY(), two.getMaxY()) - Math.max(one.getMinY(), two.getMinY());
        return wide > 0 && high > SLACK;
    }
}
