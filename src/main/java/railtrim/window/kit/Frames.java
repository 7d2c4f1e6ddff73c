package railtrim.window.kit;

import javafx.application.Platform;
import javafx.scene.Scene;

/** Work that belongs to the coming frame. */
public final class Frames {
    private Frames() {}

    /** Once all is styled and laid out and before it is painted; doing both by hand would style the whole page a second time. */
    public static void whenLaidOut(Scene scene, Runnable work) {
        Runnable[] once = new Runnable[1];
        once[0] = () -> {
            scene.removePostLayoutPulseListener(once[0]);
            work.run();
        };
        scene.addPostLayoutPulseListener(once[0]);
        Platform.requestNextPulse();
    }

    /** As above, and once more a frame later: a line that comes below what scrolls takes some of its room only then. */
    public static void whenSettled(Scene scene, Runnable work) {
        whenLaidOut(scene, () -> {
            work.run();
            whenLaidOut(scene, work);
        });
    }
}
