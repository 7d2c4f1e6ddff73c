package railtrim.report.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.report.Checklist;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;
import railtrim.threshold.FailVoltage;

/**
 * Several jobs beside each other: specimens of one board, or one board at several clocks or loads. Only those where a fail voltage is known are
 * compared.
 */
public final class Comparison {
    /** The last of the columns that hold words and not a number. */
    public static final int LAST_TEXT = 3;

    private final List<Piece> pieces;
    private final Words words;

    public Comparison(Shelf shelf, Words words) {
        this.pieces = shelf.pieces().stream()
                .filter(piece -> piece.fail().isPresent())
                .toList();
        this.words = words;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    /** As a document that can be written like a checklist. */
    public Checklist document() {
        List<Block> blocks = new ArrayList<>();
        if (pieces.isEmpty()) {
            blocks.add(new Block.Says(words.of("shelf.compare.none")));
        } else {
            blocks.add(new Block.Says(words.of("shelf.compare.differs")));
            blocks.add(new Block.Grid(head(), rows()));
            picture().ifPresent(blocks::add);
        }
        return new Checklist(
                words.of("shelf.compare.title"),
                "",
                List.of(),
                List.of(new Section(2, words.of("shelf.compare.part"), "", blocks)));
    }

    /** The plot, where there is more than one. */
    public Optional<Block.Picture> picture() {
        return pieces.size() > 1 ? Optional.of(new ComparisonDrawing(pieces, words).picture()) : Optional.empty();
    }

    public List<String> head() {
        return Stream.of(
                        "number", "name", "chip", "load", "clock", "stock", "new", "fail", "margin", "bracket", "runs",
                        "saved")
                .map(column -> words.of("shelf.column." + column))
                .toList();
    }

    public List<List<String>> rows() {
        return pieces.stream()
                .map(piece -> row(pieces.indexOf(piece) + 1, piece))
                .toList();
    }

    private List<String> row(int number, Piece piece) {
        var fail = piece.fail().orElseThrow();
        return List.of(
                Integer.toString(number),
                PlainText.of(piece.name()),
                PlainText.of(piece.chip()),
                PlainText.of(piece.load()),
                clock(piece.clock()),
                ShelfTable.rail(piece, piece.stock()),
                ShelfTable.rail(piece, piece.fitted()),
                words.of(
                        fail.faultSeen() ? "shelf.fail.seen" : "shelf.fail.below",
                        piece.sign().volts(fail.fail())),
                ShelfTable.volts(piece.margin()),
                bracket(piece.sign(), fail),
                Integer.toString(fail.runs()),
                ShelfTable.saved(piece));
    }

    /** Where the threshold lies; a fault with nothing good above it leaves the upper end open. */
    private String bracket(RailSign sign, FailVoltage fail) {
        if (!fail.faultSeen()) {
            return "";
        }
        return fail.bracketHigh() > fail.bracketLow()
                ? words.of("shelf.fail.bracket", sign.volts(fail.bracketLow()), sign.volts(fail.bracketHigh()))
                : words.of("shelf.fail.open", sign.volts(fail.bracketLow()));
    }

    static String clock(OptionalDouble hertz) {
        if (hertz.isEmpty()) {
            return "";
        }
        double value = hertz.getAsDouble();
        String unit = value >= 1e9 ? "GHz" : value >= 1e6 ? "MHz" : "kHz";
        double scaled = value / (value >= 1e9 ? 1e9 : value >= 1e6 ? 1e6 : 1e3);
        return Display.of(scaled, Unit.COUNT) + " " + unit;
    }
}
