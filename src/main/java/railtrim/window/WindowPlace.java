package railtrim.window;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Where the window stands: as it was left, on the screens that are there now. */
final class WindowPlace {
    /** So much of its top edge has to lie on a screen for the window to be taken hold of, pixels. */
    private static final double GRIP_WIDTH = 120;

    private static final double GRIP_HEIGHT = 30;

    /** After so long a small window is what the person wants, nanoseconds. */
    private static final long WHILE_IT_OPENS = 10_000_000_000L;

    /** A window manager that will not is not asked for ever. */
    private static final int MOST_TIMES_ASKED = 3;

    private final Stage stage;
    private Optional<Rectangle2D> last;

    WindowPlace(Stage stage, Remembered before) {
        this.stage = stage;
        this.last = before.place();
        stage.setMaximized(before.maximized());
        stage.xProperty().addListener((of, was, is) -> note());
        stage.yProperty().addListener((of, was, is) -> note());
        stage.widthProperty().addListener((of, was, is) -> note());
        stage.heightProperty().addListener((of, was, is) -> note());
    }

    /** @param usual width and height where nothing is remembered; a small screen shows less */
    void settle(double usualWidth, double usualHeight) {
        List<Rectangle2D> screens =
                Screen.getScreens().stream().map(Screen::getVisualBounds).toList();
        Optional<Rectangle2D> place = last.flatMap(remembered -> on(screens, remembered));
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        place.ifPresent(at -> {
            stage.setX(at.getMinX());
            stage.setY(at.getMinY());
        });
        stage.setWidth(place.map(Rectangle2D::getWidth).orElse(Math.min(usualWidth, room.getWidth())));
        stage.setHeight(place.map(Rectangle2D::getHeight).orElse(Math.min(usualHeight, room.getHeight())));
        insist(stage.getWidth(), stage.getHeight());
    }

    /** One window manager of Linux gives a new window the least size it may have: then it is asked for its own size once more. */
    private void insist(double width, double height) {
        long opened = System.nanoTime();
        stage.widthProperty().addListener(new ChangeListener<>() {
            private int asked;

            @Override
            public void changed(ObservableValue<? extends Number> of, Number was, Number is) {
                if (asked == MOST_TIMES_ASKED || System.nanoTime() - opened > WHILE_IT_OPENS) {
                    stage.widthProperty().removeListener(this);
                } else if (stage.isShowing() && !stage.isMaximized() && is.doubleValue() <= stage.getMinWidth()) {
                    asked++;
                    Platform.runLater(() -> {
                        stage.setWidth(width);
                        stage.setHeight(height);
                    });
                }
            }
        });
    }

    /** The remembered place, no larger than its screen; empty where it cannot be taken hold of on any of the screens. */
    static Optional<Rectangle2D> on(List<Rectangle2D> screens, Rectangle2D remembered) {
        return screens.stream()
                .filter(screen -> canBeHeld(screen, remembered))
                .findFirst()
                .map(screen -> new Rectangle2D(
                        remembered.getMinX(),
                        remembered.getMinY(),
                        Math.min(remembered.getWidth(), screen.getWidth()),
                        Math.min(remembered.getHeight(), screen.getHeight())));
    }

    private static boolean canBeHeld(Rectangle2D screen, Rectangle2D window) {
        double wide = Math.min(screen.getMaxX(), window.getMaxX()) - Math.max(screen.getMinX(), window.getMinX());
        boolean topIn = window.getMinY() >= screen.getMinY() - 1 && window.getMinY() <= screen.getMaxY() - GRIP_HEIGHT;
        return topIn && wide >= GRIP_WIDTH;
    }

    /** A minimised window reports a place far off every screen, a maximised one the whole screen: neither is where it stood. */
    private void note() {
        boolean own = stage.isShowing() && !stage.isIconified() && !stage.isMaximized() && !stage.isFullScreen();
        if (own && stage.getWidth() > 0 && stage.getHeight() > 0) {
            last = Optional.of(new Rectangle2D(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight()));
        }
    }

    Optional<Rectangle2D> last() {
        return last;
    }
}
