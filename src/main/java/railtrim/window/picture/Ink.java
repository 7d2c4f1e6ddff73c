package railtrim.window.picture;

import java.util.Locale;

/** What a mark stands for; the colours belonging to it are in {@code style/pictures.css}, never here. */
enum Ink {
    /** Plain writing. */
    TEXT,
    /** Writing that stands back. */
    QUIET,
    /** A conductor. */
    WIRE,
    /** A thin help line. */
    FINE,
    /** A thin dashed help line. */
    DASH,
    /** A broad band under a conductor that carries current, and the arrow head that says which way. */
    FLOW,
    FLOW_ARROW,
    /** A part that was on the board. */
    PART,
    /** The moulded body of a package. */
    BODY,
    /** Bare metal: pins and tabs. */
    METAL,
    /** A soft patch behind other things. */
    PATCH,
    /** The part that is added. */
    ADDED,
    ADDED_WIRE,
    ADDED_FILL,
    /** The added part where it is not fitted yet. */
    GHOST,
    REFERENCE,
    REFERENCE_FILL,
    GOOD,
    GOOD_FILL,
    BAD,
    BAD_FILL,
    WARM,
    WARM_FILL,
    /** The red probe and the writing on it. */
    RED_PROBE,
    RED_PROBE_RING,
    ON_RED_PROBE,
    BLACK_PROBE,
    BLACK_PROBE_RING,
    ON_BLACK_PROBE,
    RESISTOR_BODY,
    BAND_BLACK,
    BAND_BROWN,
    BAND_RED,
    BAND_ORANGE,
    BAND_YELLOW,
    BAND_GREEN,
    BAND_BLUE,
    BAND_VIOLET,
    BAND_GREY,
    BAND_WHITE,
    BAND_GOLD,
    BAND_SILVER,
    BAND_PINK;

    /** The style class: {@code ink-red-probe}. */
    String styleClass() {
        return "ink-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
