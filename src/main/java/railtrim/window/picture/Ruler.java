package railtrim.window.picture;

/** Says how wide a line of writing is. */
interface Ruler {
    double width(String text, Type type);
}
