package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.PopupWindow;
import javafx.stage.Window;

/** Light or dark, and the size of text. All colours are in the style sheets. */
final class Theme {
    /** Place of the usual size in the list of sizes. */
    static final int USUAL = 1;

    /** Each has a rule in the style sheet, see {@link #TEXT}. */
    static final List<Integer> SIZES = List.of(12, 14, 16, 18, 21, 24, 28);

    private static final String TEXT = "text-";

    private final Scene scene;
    private final Runnable changed;
    private Look look;
    private boolean systemDark;
    private int size;
    private String applied = "";
    private boolean whole;

    /** @param changed called after the person chose something else */
    Theme(Scene scene, Remembered before, Runnable changed) {
        this.scene = scene;
        this.changed = changed;
        this.look = before.look();
        this.systemDark = before.systemDark();
        this.size = Math.max(0, Math.min(SIZES.size() - 1, before.text()));
        apply();
    }

    void look(Look chosen) {
        look = chosen;
        apply();
        changed.run();
    }

    void dark(boolean dark) {
        look(dark ? Look.DARK : Look.LIGHT);
    }

    Look look() {
        return look;
    }

    /** What the rest of the screen looks like; it is asked after the window is up. Until then it looks as it did the last time. */
    void systemIs(boolean dark) {
        if (systemDark != dark) {
            systemDark = dark;
            apply();
        }
    }

    boolean systemDark() {
        return systemDark;
    }

    boolean dark() {
        return look == Look.DARK || look == Look.SYSTEM && systemDark;
    }

    void bigger() {
        size(size + 1);
    }

    void smaller() {
        size(size - 1);
    }

    void usual() {
        size(USUAL);
    }

    int size() {
        return size;
    }

    private void size(int wished) {
        size = Math.max(0, Math.min(SIZES.size() - 1, wished));
        apply();
        changed.run();
    }

    /** Pixels of the root font; every other measure follows from it. */
    double pixels() {
        return SIZES.get(size);
    }

    /** From now on with the rules for all pages. The start page does without: each rule is tried on each kind of node, and the first picture waits for it. */
    void whole() {
        if (!whole) {
            whole = true;
            apply();
        }
    }

    /** Colours are laid anew only where they change: it styles every node of the program again. */
    private void apply() {
        String colours = sheet(dark() ? "theme-dark" : "theme-light");
        List<String> sheets = new ArrayList<>(List.of(sheet("railtrim")));
        if (whole) {
            sheets.add(sheet("pages"));
        }
        if (dark()) {
            sheets.add(sheet("dark"));
        }
        if (!colours.equals(applied)) {
            closePopups();
            applied = colours;
            Application.setUserAgentStylesheet(colours);
        }
        if (!sheets.equals(scene.getStylesheets())) {
            scene.getStylesheets().setAll(sheets);
        }
        scene.getRoot().getStyleClass().removeIf(name -> name.startsWith(TEXT));
        scene.getRoot().getStyleClass().add(TEXT + (int) pixels());
    }

    /** An open menu would be styled before the page it hangs on, and miss its colours. */
    private void closePopups() {
        List.copyOf(Window.getWindows()).stream()
                .filter(PopupWindow.class::isInstance)
                .forEach(Window::hide);
    }

    static String sheet(String name) {
        return Theme.class.getResource("/railtrim/style/" + name + ".css").toExternalForm();
    }
}
