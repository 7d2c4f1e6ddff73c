package railtrim.report.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.procedure.Procedure;
import railtrim.quantity.BadInput;

/** All jobs in a folder. Looking at them changes none. */
public record Shelf(List<Piece> pieces) {
    /** More jobs than anybody has; a folder with more is not searched to its end. */
    private static final int MOST = 2000;

    public Shelf {
        pieces = List.copyOf(pieces);
    }

    /**
     * In the order of the files' names; a file that is no sound job is on the shelf too, and says why.
     *
     * @throws BadInput where there is no such folder, or it cannot be read
     */
    public static Shelf of(Path folder, Procedure procedure, Mark mark) {
        try (Stream<Path> files = Files.list(folder)) {
            return new Shelf(files.filter(file -> file.getFileName().toString().endsWith(Journal.ENDING))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .limit(MOST)
                    .map(file -> Piece.read(file, procedure, mark))
                    .toList());
        } catch (IOException | java.io.UncheckedIOException e) {
            throw BadInput.of("shelf.no-folder", folder.toString());
        }
    }

    /** Those whose name, board, chip, load or file mention the words, in capitals or not. */
    public Shelf find(String words) {
        return new Shelf(pieces.stream().filter(piece -> piece.mentions(words)).toList());
    }
}
