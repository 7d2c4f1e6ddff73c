package railtrim.window.print;

import javafx.stage.Stage;

/** Puts pages on paper. Tests hand in another than the system's. */
public interface Printing {
    /** Whether this computer knows a printer. May be slow. */
    boolean ready();

    /**
     * Asks on which printer, then prints. On the window's thread; what came of it is told there too, once the printer has all pages.
     *
     * @param pages not closed here
     */
    void print(Stage owner, PdfPages pages, java.util.function.Consumer<Outcome> done);

    /** What came of it. */
    enum Outcome {
        PRINTED,
        LEFT,
        FAILED
    }
}
