package railtrim.report.pdf;

/** Sizes of writing in points. */
enum Type {
    TITLE(19, true),
    MARK(15, true),
    PART(13, true),
    STEP(10.5, true),
    TEXT(9.5, false),
    STRONG(9.5, true),
    NOTE(8.3, false),
    CELL(7.6, false),
    HEAD(7.6, true),
    EDGE(7.6, false);

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

    /** From one line of writing to the next; at least a quarter more than the letters are high, so that lines keep apart on paper. */
    double lead() {
        return size * 1.3;
    }
}
