package railtrim.window.kit;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.Method;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;

/**
 * The frame that shows what a deed did, as soon as the deed is done. The toolkit’s clock strikes sixty times a second whatever happens, so a deed would
 * wait for it eight milliseconds on average, half of the time until the next step is seen; a faster clock would wake a window left alone more often.
 * The toolkit has no public way to do this: it is asked by name to do once what it does at each stroke. Where it knows no such name, or does not let
 * itself be asked, the clock strikes as before.
 */
public final class PromptFrame {
    private static final Optional<MethodHandle> STROKE = stroke();

    private PromptFrame() {}

    /** After all that is already waiting for the window’s thread, such as the focus, which moves when a deed is done. */
    public static void afterDeed() {
        Platform.requestNextPulse();
        Platform.runLater(PromptFrame::strike);
    }

    /** Whether the toolkit lets itself be asked. */
    public static boolean known() {
        return STROKE.isPresent();
    }

    private static void strike() {
        STROKE.ifPresent(stroke -> {
            try {
                stroke.invoke();
            } catch (Throwable refused) {
                Logger.getLogger(PromptFrame.class.getName()).log(Level.FINE, "the clock strikes as before", refused);
            }
        });
    }

    /** What the toolkit does sixty times a second: draws a frame if one is asked for and none is being drawn. */
    private static Optional<MethodHandle> stroke() {
        try {
            Object toolkit = Class.forName("com.sun.javafx.tk.Toolkit")
                    .getMethod("getToolkit")
                    .invoke(null);
            Method stroke = toolkit.getClass().getDeclaredMethod("postPulse");
            stroke.setAccessible(true);
            return Optional.of(MethodHandles.lookup().unreflect(stroke).bindTo(toolkit));
        } catch (ReflectiveOperationException | RuntimeException unknown) {
            return Optional.empty();
        }
    }
}
