package railtrim.window.picture;

/** Sizes of writing, in units of the sheet. */
enum Type {
    SMALL(11.5, false),
    PLAIN(12.5, false),
    STRONG(12.5, true),
    BIG(16, true);

    private final double size;
    private final boolean bold;

    Type(double size, boolean bold) {
        this.size = size;
        this.bold = bold;
    }

    double size() {
        return size;
    }

    boolean bold() {
        return bold;
    }

    /** From one line of writing to the next. */
    double lead() {
        return size * 1.3;
    }
}
