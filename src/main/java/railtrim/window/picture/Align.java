package railtrim.window.picture;

/** Which part of a line of writing its x belongs to. */
enum Align {
    LEFT,
    CENTRE,
    RIGHT
}
