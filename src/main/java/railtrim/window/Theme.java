package railtrim.window;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;

/** Light or dark, and the size of text. All colours are in the style sheets. */
final class Theme {
    private static final double[] SIZES = {12, 14, 16, 18, 21, 24, 28};
    private static final int USUAL = 1;

    private final Scene scene;
    private boolean dark;
    private int size = USUAL;

    Theme(Scene scene) {
        this.scene = scene;
        apply();
    }

    void dark(boolean dark) {
        this.dark = dark;
        apply();
    }

    boolean dark() {
        return dark;
    }

    void bigger() {
        size = Math.min(size + 1, SIZES.length - 1);
        apply();
    }

    void smaller() {
        size = Math.max(size - 1, 0);
        apply();
    }

    void usual() {
        size = USUAL;
        apply();
    }

    /** Pixels of the root font; every other measure follows from it. */
    double pixels() {
        return SIZES[size];
    }

    private void apply() {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getStylesheets().setAll(dark ? List.of(sheet("railtrim"), sheet("dark")) : List.of(sheet("railtrim")));
        scene.getRoot().setStyle("-fx-font-size: " + pixels() + "px;");
    }

    private static String sheet(String name) {
        return Theme.class.getResource("/railtrim/style/" + name + ".css").toExternalForm();
    }
}
