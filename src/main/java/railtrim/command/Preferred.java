package railtrim.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.parts.Series;
import railtrim.procedure.Words;
import railtrim.quantity.Display;

/** {@code preferred}: the preferred values round a resistance. */
@Command(name = "preferred", description = "${bundle:command.preferred.about}")
final class Preferred implements Asked {
    private final Words words;

    @Option(names = "--series", required = true, paramLabel = "E96", description = "${bundle:command.option.series}")
    private String series;

    @Option(names = "--near", required = true, paramLabel = "237.2", description = "${bundle:command.option.near}")
    private String near;

    Preferred(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Series chosen = Named.series("--series", series);
        Series.Near around = chosen.near(ohms(near));
        Json json = Json.object()
                .put("below", around.below())
                .put("nearest", around.nearest())
                .put("above", around.above());
        Sheet sheet = new Sheet()
                .pair(words.of("command.label.below"), Display.part(around.below()))
                .pair(words.of("command.label.nearest"), Display.part(around.nearest()))
                .pair(words.of("command.label.above"), Display.part(around.above()));
        return Answer.done(json.map(), sheet);
    }

    /** Ohms, with or without the letter: a preferred value is often spoken of as a bare number. */
    private static double ohms(String text) {
        String typed = text.strip();
        return Typed.ohms("--near", typed.matches("[0-9.,]*[0-9]") ? typed + "R" : typed);
    }
}
