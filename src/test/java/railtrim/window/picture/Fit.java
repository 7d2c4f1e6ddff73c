package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.text.Text;

/** Finds writing that touches other writing or leaves its picture. */
final class Fit {
    /** Line boxes are taller than the letters in them: this much of two boxes may meet without letters touching. */
    private static final double SLACK = 2.5;

    private Fit() {}

    static List<String> problems(String where, PictureView view) {
        List<String> found = new ArrayList<>();
        List<Text> texts = Screen.texts(view);
        if (texts.isEmpty()) {
            found.add(where + ": nothing is written");
        }
        for (int i = 0; i < texts.size(); i++) {
            Bounds one = Screen.on(view, texts.get(i));
            if (leaves(one, view)) {
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

    private static boolean leaves(Bounds one, PictureView view) {
        return one.getMinX() < -0.5
                || one.getMinY() < -SLACK
                || one.getMaxX() > view.getWidth() + 0.5
                || one.getMaxY() > view.getHeight() + SLACK;
    }

    private static boolean touch(Bounds one, Bounds two) {
        double wide = Math.min(one.getMaxX(), two.getMaxX()) - Math.max(one.getMinX(), two.getMinX());
        double high = Math.min(one.getMaxY(), two.getMaxY()) - Math.max(one.getMinY(), two.getMinY());
        return wide > 0 && high > SLACK;
    }
}
