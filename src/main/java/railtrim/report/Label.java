package railtrim.report;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;

/**
 * What goes on a sticker for the board, so that nobody takes the change for a fault.
 *
 * @param warning in large letters
 * @param lines below it
 */
public record Label(String warning, String voltage, List<String> lines) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);

    public Label {
        lines = List.copyOf(lines);
    }

    /** Of an unfinished job it says that the board must not be run. */
    public static Label of(State state, Procedure procedure, Words words) {
        Source source = new Source(state, procedure, words, new Replay(procedure, state.job()));
        Figures figures = state.figures();
        List<String> lines = new ArrayList<>();
        lines.add(source.text(figures.text("board.name")));
        boolean fitted = figures.choice("fit.left").equals(Optional.of("resistor-only"));
        if (fitted) {
            lines.add(source.say("report.label.resistor", new ResistorPart(source).fittedInWords()));
            lines.add(source.leg());
        }
        source.ended().map(DAY::format).ifPresent(lines::add);
        if (!state.complete()) {
            return new Label(source.say("report.mark"), source.say("report.label.do-not-run"), lines);
        }
        return new Label(
                source.say("report.label.lowered"),
                source.say("report.label.voltage", source.rail(figures.fitted()), source.rail(figures.stock())),
                lines);
    }
}
