package railtrim.command;

import java.util.List;
import railtrim.procedure.Words;

/** All commands by name, in the order the help lists them; each is made only when it is asked for. */
final class Commands {
    static final List<String> NAMES = List.of(
            "predict",
            "faults",
            "solve",
            "trimmer",
            "resistor",
            "preferred",
            "mark",
            "margin",
            "heat",
            "accuracy",
            "rehearse",
            "check",
            "report",
            "worksheet",
            "shelf",
            "copy",
            "share",
            "text");

    private Commands() {}

    static Asked of(String name, Terminal terminal, Words words) {
        return switch (name) {
            case "predict" -> new Predict(words);
            case "faults" -> new FaultTable(words);
            case "solve" -> new Solve(words);
            case "trimmer" -> new TrimmerChoice(words);
            case "resistor" -> new ResistorChoice(words);
            case "preferred" -> new Preferred(words);
            case "mark" -> new Mark(words);
            case "margin" -> new Margin(words);
            case "heat" -> new HeatFigures(words);
            case "accuracy" -> new MeterAccuracy(words);
            case "rehearse" -> new Rehearse(words, terminal);
            case "check" -> new Check(words);
            case "report" -> new Report(words);
            case "worksheet" -> new WorksheetCommand(words);
            case "shelf" -> new ShelfCommand(words);
            case "copy" -> new Copy(words);
            case "share" -> new Share(words);
            case "text" -> new TextCommand(terminal, words);
            default -> throw new IllegalArgumentException("no such command: " + name);
        };
    }
}
