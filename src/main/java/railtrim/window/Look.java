package railtrim.window;

import java.util.Locale;

/** Which colours the window wears. */
enum Look {
    LIGHT,
    DARK,
    /** As the rest of the person's screen. */
    SYSTEM;

    String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
