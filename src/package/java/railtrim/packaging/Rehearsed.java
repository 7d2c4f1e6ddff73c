package railtrim.packaging;

import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.stage.Window;
import railtrim.window.WindowStart;

/** Opens the window as a person would, waits until it has been drawn, and leaves. */
final class Rehearsed {
    private static final int FRAMES = 30;

    private Rehearsed() {}

    public static void main(String[] arguments) throws InterruptedException {
        Thread leaver = new Thread(Rehearsed::leaveWhenDrawn, "leaver");
        leaver.setDaemon(true);
        leaver.start();
        WindowStart.open(arguments);
    }

    private static void leaveWhenDrawn() {
        try {
            int shown = 0;
            while (shown < FRAMES) {
                TimeUnit.MILLISECONDS.sleep(50);
                shown = Window.getWindows().stream().anyMatch(Window::isShowing) ? shown + 1 : 0;
            }
            Platform.exit();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
