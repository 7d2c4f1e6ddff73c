package railtrim.window.kit;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A column that remembers its heights. */
final class Column extends VBox {
    private final Heights preferred = new Heights();
    private final Heights least = new Heights();

    Column(Node... children) {
        super(children);
    }

    @Override
    protected double computePrefHeight(double width) {
        return preferred.at(width, super::computePrefHeight);
    }

    @Override
    protected double computeMinHeight(double width) {
        return least.at(width, super::computeMinHeight);
    }

    @Override
    public void requestLayout() {
        // Already asked for while the toolkit’s own part is being made.
        if (least != null) {
            preferred.forget();
            least.forget();
        }
        super.requestLayout();
    }
}
