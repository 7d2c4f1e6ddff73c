package railtrim.window;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import railtrim.window.kit.Aside;
import railtrim.window.print.PdfPages;
import railtrim.window.print.Printing;

/** Keeps the pages that were sent to it; takes them beside the window’s thread, as a printer does. */
final class TestPrinting implements Printing {
    final List<Image> sheets = new CopyOnWriteArrayList<>();
    private final boolean ready;

    TestPrinting(boolean ready) {
        this.ready = ready;
    }

    @Override
    public boolean ready() {
        return ready;
    }

    @Override
    public void print(Stage owner, PdfPages pages, Consumer<Outcome> done) {
        Aside.run(
                "printing",
                () -> {
                    for (int page = 0; page < pages.count(); page++) {
                        sheets.add(pages.picture(page, 1));
                    }
                },
                () -> done.accept(Outcome.PRINTED));
    }
}
