package railtrim.report;

/** What a checklist can be written as. */
public enum Format {
    HTML("html", "html"),
    MARKDOWN("md", "md"),
    CSV("csv", "csv"),
    PDF("pdf", "pdf"),
    /** A small sticker for the board. */
    LABEL("label", "pdf");

    private final String id;
    private final String ending;

    Format(String id, String ending) {
        this.id = id;
        this.ending = ending;
    }

    /** The name used on the command line. */
    public String id() {
        return id;
    }

    public String ending() {
        return ending;
    }
}
