package railtrim.window.shelf;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.application.Platform;
import railtrim.quantity.BadInput;
import railtrim.report.shelf.Shelf;

/** Reads a folder beside the window's own thread. Where another folder is asked for meanwhile, only that one is shown. */
final class Reading {
    private final ShelfDeeds deeds;
    private int asked;

    Reading(ShelfDeeds deeds) {
        this.deeds = deeds;
    }

    /** On the window's thread; so are the answers. */
    void read(Path folder, Consumer<Shelf> found, Consumer<BadInput> refused) {
        int mine = ++asked;
        Thread reading = new Thread(() -> read(folder, mine, found, refused), "shelf");
        reading.setDaemon(true);
        reading.start();
    }

    private void read(Path folder, int mine, Consumer<Shelf> found, Consumer<BadInput> refused) {
        try {
            Shelf shelf = deeds.read(folder);
            answer(mine, () -> found.accept(shelf));
        } catch (BadInput bad) {
            answer(mine, () -> refused.accept(bad));
        }
    }

    private void answer(int mine, Runnable work) {
        Platform.runLater(() -> {
            if (mine == asked) {
                work.run();
            }
        });
    }
}
