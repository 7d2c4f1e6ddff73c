package railtrim.window.kit;

import javafx.scene.control.Label;

/** Running text that may take several lines, is never cut short, and remembers its heights. */
final class Prose extends Label {
    private final Heights preferred = new Heights();

    Prose(String text) {
        super(text);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        keepTogether(text);
        textProperty().addListener((of, was, is) -> keepTogether(is));
    }

    private void keepTogether(String text) {
        String together = Together.of(text);
        if (!together.equals(text)) {
            setText(together);
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return preferred.at(width, super::computePrefHeight);
    }

    @Override
    public void requestLayout() {
        // Already asked for while the toolkit’s own part is being made.
        if (preferred != null) {
            preferred.forget();
        }
        super.requestLayout();
    }
}
