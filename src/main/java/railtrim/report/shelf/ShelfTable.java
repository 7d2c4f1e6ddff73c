package railtrim.report.shelf;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.Unit;

/** The jobs of a shelf at a glance, in words: one line each, the same in the window and in a terminal. */
public final class ShelfTable {
    /** What each column is about; part of its key in the text bundle. */
    public enum Column {
        NAME,
        BOARD,
        CHIP,
        STATE,
        STEP,
        STOCK,
        NEW,
        FAIL,
        SAVED;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private final Words words;

    public ShelfTable(Words words) {
        this.words = words;
    }

    public List<String> head() {
        return Stream.of(Column.values()).map(this::head).toList();
    }

    public String head(Column column) {
        return words.of("shelf.column." + column.id());
    }

    public List<String> row(Piece piece) {
        return Stream.of(Column.values()).map(column -> cell(piece, column)).toList();
    }

    /** Empty where it is not known. */
    public String cell(Piece piece, Column column) {
        return switch (column) {
            case NAME -> PlainText.of(piece.name());
            case BOARD -> PlainText.of(piece.board());
            case CHIP -> PlainText.of(piece.chip());
            case STATE -> words.of("shelf.standing." + piece.standing().id());
            case STEP -> step(piece);
            case STOCK -> rail(piece, piece.stock());
            case NEW -> rail(piece, piece.fitted());
            case FAIL -> fail(piece);
            case SAVED -> saved(piece);
        };
    }

    private String step(Piece piece) {
        return piece.standing() == Piece.Standing.UNDER_WAY ? words.of("step." + piece.step() + ".title") : "";
    }

    private String fail(Piece piece) {
        return piece.fail()
                .map(fail -> words.of(
                        fail.faultSeen() ? "shelf.fail.seen" : "shelf.fail.below",
                        piece.sign().volts(fail.fail())))
                .orElse("");
    }

    static String saved(Piece piece) {
        return piece.wattsSaved().isPresent() ? Display.of(piece.wattsSaved().getAsDouble(), Unit.WATT) : "";
    }

    /** A voltage of the board's rail, as the meter shows it. */
    static String rail(Piece piece, OptionalDouble magnitude) {
        return volts(piece.sign().shown(magnitude));
    }

    static String volts(OptionalDouble volts) {
        return volts.isPresent() ? Display.volts(volts.getAsDouble()) : "";
    }
}
