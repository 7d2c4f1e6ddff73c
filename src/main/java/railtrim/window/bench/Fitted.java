package railtrim.window.bench;

import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Shows a pane of fixed size as wide as there is room, keeping its shape. */
final class Fitted extends Region {
    private static final double MOST = 1.4;

    private final Pane content;
    private final double wide;
    private final double high;
    private final Scale scale = new Scale(1, 1);

    Fitted(Pane content, double wide, double high) {
        this.content = content;
        this.wide = wide;
        this.high = high;
        content.getTransforms().add(scale);
        getChildren().add(content);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 120;
    }

    @Override
    protected double computePrefWidth(double height) {
        return wide;
    }

    @Override
    protected double computePrefHeight(double width) {
        return high * factor(width < 0 ? wide : width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double factor = factor(getWidth());
        scale.setX(factor);
        scale.setY(factor);
        content.resizeRelocate(0, 0, wide, high);
    }

    private double factor(double width) {
        return Math.min(MOST, width / wide);
    }
}
