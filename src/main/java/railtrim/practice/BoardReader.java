package railtrim.practice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.heat.Heat;
import railtrim.quantity.BadInput;

/** From a board file to a {@link Board}; the format is told in demo-data/README.md. */
final class BoardReader {
    private static final String FORMAT = "railtrim practice board 1";

    private BoardReader() {}

    static Board read(String json) {
        BoardText text = BoardText.read(json);
        text.oneOf("format", FORMAT);
        Board board = new Board(
                label(text),
                feed(text.part("feed")),
                chip(text.part("chip")),
                regulator(text.part("regulator")),
                divider(text.part("divider")),
                load(text.part("load")),
                warmth(text.part("warmth")),
                failing(text.part("failing")));
        text.nothingElse();
        return sensible(board);
    }

    private static Board.Label label(BoardText text) {
        return new Board.Label(
                text.text("name", 80), text.text("maker", 80), text.text("story", 2000), text.text("teaches", 1000));
    }

    private static Board.Feed feed(BoardText text) {
        Board.Feed feed = new Board.Feed(
                text.oneOf("kind", "adapter", "bench", "inside", "mains"), text.number("highest-rail", 0.5, 400));
        text.nothingElse();
        return feed;
    }

    private static Board.Chip chip(BoardText text) {
        Optional<Board.Range> rated = Optional.empty();
        if (text.has("rated-low") || text.has("rated-high")) {
            rated = Optional.of(new Board.Range(text.number("rated-low", 0.3, 60), text.number("rated-high", 0.3, 60)));
        }
        Board.Chip chip = new Board.Chip(text.text("name", 80), rated);
        text.nothingElse();
        return chip;
    }

    private static Board.Regulator regulator(BoardText text) {
        Outline outline = Outline.of(text.text("outline", 20));
        List<PinRole> pins = text.texts("pins").stream().map(PinRole::of).toList();
        if (pins.size() != outline.pins()) {
            throw BadInput.of(
                    "practice.pins-do-not-fit",
                    Integer.toString(pins.size()),
                    outline.id(),
                    Integer.toString(outline.pins()));
        }
        Optional<PinRole> tab =
                outline.hasTab() ? Optional.of(PinRole.of(text.text("tab", 20))) : Optional.<PinRole>empty();
        String family = text.text("family", 60);
        Optional<Board.Sheet> sheet =
                family.equals("other") ? Optional.of(sheet(text.part("sheet"))) : Optional.<Board.Sheet>empty();
        Board.Regulator regulator = new Board.Regulator(
                text.text("marking", 60),
                family,
                sheet,
                outline,
                pins,
                tab,
                control(text.oneOf("control", "adjustable", "fixed", "coded")),
                text.yesOrNo("switching"));
        text.nothingElse();
        return regulator;
    }

    private static Board.Control control(String id) {
        return Board.Control.valueOf(id.toUpperCase(java.util.Locale.ROOT));
    }

    private static Board.Sheet sheet(BoardText text) {
        Board.Sheet sheet = new Board.Sheet(
                text.number("reference-low", 0.1, 30),
                text.number("reference", 0.1, 30),
                text.number("reference-high", 0.1, 30),
                text.number("bias", 0, 0.01),
                text.number("dropout", 0, 10),
                text.number("minimum-load", 0, 1),
                text.number("input-highest", 1, 60));
        text.nothingElse();
        return sheet;
    }

    private static Board.Divider divider(BoardText text) {
        Board.Divider divider = new Board.Divider(
                Place.of(text.text("place", 20)),
                real(text.part("reference"), 0.1, 30),
                real(text.part("upper"), 1, 10_000_000),
                real(text.part("lower"), 1, 10_000_000),
                text.number("bias", 0, 0.01),
                text.number("input", 0.5, 60),
                text.number("dropout", 0, 10),
                optional(text, "input-ohms", 0, 10, 0),
                optional(text, "minimum-load", 0, 1, 0),
                optional(text, "unloaded-rise", 0, 0.5, 0),
                text.has("control-supply")
                        ? OptionalDouble.of(text.number("control-supply", 0.5, 60))
                        : OptionalDouble.empty(),
                text.number("output-ohms", 0, 1),
                text.number("rail-ohms", 0.1, 10_000_000),
                text.number("decay-seconds", 0.01, 60));
        text.nothingElse();
        return divider;
    }

    private static double optional(BoardText text, String key, double low, double high, double otherwise) {
        return text.has(key) ? text.number(key, low, high) : otherwise;
    }

    private static Board.Real real(BoardText text, double low, double high) {
        Board.Real real = new Board.Real(text.number("marked", low, high), text.number("off", -0.5, 0.5));
        text.nothingElse();
        return real;
    }

    private static Board.Load load(BoardText text) {
        String kind = text.oneOf("kind", "digital", "constant-current");
        Board.Load load = new Board.Load(
                text.text("name", 200),
                text.number("stock-amperes", 0.001, 50),
                text.number("idle", 0, 1),
                kind.equals("digital") ? Heat.LoadKind.DIGITAL : Heat.LoadKind.CONSTANT_CURRENT,
                optional(text, "leakage", 0, 0.9, 0),
                optional(text, "clock", 0.01, 4, 1),
                text.has("other") ? Optional.of(other(text.part("other"))) : Optional.empty());
        text.nothingElse();
        return load;
    }

    private static Board.Other other(BoardText text) {
        Board.Other other = new Board.Other(
                text.text("name", 200), text.number("share", 0, 2), text.number("fails-higher", -10, 10));
        text.nothingElse();
        return other;
    }

    private static Board.Warmth warmth(BoardText text) {
        Board.Warmth warmth = new Board.Warmth(
                text.number("chip", 0, 200),
                text.number("regulator", 0, 200),
                text.number("seconds", 1, 3600),
                text.has("regulator-seconds")
                        ? text.number("regulator-seconds", 1, 3600)
                        : text.number("seconds", 1, 3600),
                text.number("room", 0, 45));
        text.nothingElse();
        return warmth;
    }

    private static Board.Failing failing(BoardText text) {
        String shows = text.oneOf("shows", "glitch", "reset", "errors");
        Board.Failing failing = new Board.Failing(
                text.number("hot", 0.1, 60),
                text.number("cold", 0.1, 60),
                text.number("spread", 0, 1),
                text.number("damage", 0.1, 100),
                Seen.valueOf(shows.toUpperCase(java.util.Locale.ROOT)));
        text.nothingElse();
        return failing;
    }

    /** A board that would fail or die as the maker left it teaches nothing. */
    private static Board sensible(Board board) {
        Board.Divider divider = board.divider();
        if (board.mostAtStock() >= divider.ceiling(board.amperes(board.stock()))) {
            throw BadInput.of("practice.board-starved");
        }
        if (board.stock() <= board.worstFail()) {
            throw BadInput.of("practice.board-fails-at-stock");
        }
        if (board.mostAtStock() >= board.failing().damage()) {
            throw BadInput.of("practice.board-dies-at-stock");
        }
        return board;
    }
}
