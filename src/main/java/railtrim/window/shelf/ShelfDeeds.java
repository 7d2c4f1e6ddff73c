package railtrim.window.shelf;

import java.nio.file.Path;
import java.util.Optional;
import railtrim.report.shelf.Comparison;
import railtrim.report.shelf.Shelf;

/** What the shelf asks of the window it stands in. */
public interface ShelfDeeds {
    /** Slow; called on a thread of its own. @throws railtrim.quantity.BadInput where the folder cannot be read */
    Shelf read(Path folder);

    Optional<Path> askForFolder(Path start);

    void open(Path job);

    /** Begins another board with what is printed on this one's parts. */
    void plan(Path job);

    /** Writes a job for others, without what is personal in it. */
    void share(Path job);

    /** Writes a comparison into the folder, for print and for a browser. */
    void write(Comparison comparison, Path folder);

    /** Back to where the shelf was reached from. */
    void leave();
}
