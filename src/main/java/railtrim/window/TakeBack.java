package railtrim.window;

import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import railtrim.job.Fact;
import railtrim.procedure.Course.TakingBack;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Words;
import railtrim.quantity.PlainText;
import railtrim.window.kit.Build;

/** Asks before the last entry is taken back, and first says which it is and what has to be done again because of it. */
final class TakeBack {
    private final Words words;
    private final Desk desk;
    private final Sheet sheet;

    TakeBack(Words words, Desk desk, Sheet sheet) {
        this.words = words;
        this.desk = desk;
        this.sheet = sheet;
    }

    void ask() {
        Optional<TakingBack> offered = desk.course().takingBack();
        if (offered.isPresent()) {
            ask(offered.get());
        } else {
            Button close = Build.button("take-back-none", words.of("window.sheet.close"), sheet::close, "primary");
            sheet.ask(
                    words.of("window.take-back.nothing"),
                    Build.prose(words.of("verdict.nothing-to-take-back"), "sheet-text"),
                    close);
        }
    }

    private void ask(TakingBack offered) {
        Fact fact = offered.entry().fact();
        VBox body = Build.column("sheet-body", Build.prose(said(fact), "take-back-entry"));
        if (words.has("step." + fact.step() + ".title")) {
            body.getChildren()
                    .add(Build.prose(
                            words.of("window.take-back.step", words.of("step." + fact.step() + ".title")),
                            "sheet-text"));
        }
        String falls = offered.again().stream()
                .map(step -> words.of("step." + step.id() + ".title"))
                .collect(Collectors.joining("; "));
        body.getChildren()
                .add(Build.prose(
                        falls.isEmpty() ? words.of("window.take-back.none") : words.of("window.take-back.falls", falls),
                        "sheet-text"));
        if (offered.proveDead()) {
            body.getChildren().add(Build.prose(words.of("window.take-back.power"), "sheet-alert"));
        }
        body.getChildren().add(Build.prose(words.of("window.take-back.record"), "help"));
        Button keep = Build.button("take-back-keep", words.of("window.take-back.keep"), sheet::close, "plain");
        Button go = Build.button(
                "take-back-go",
                words.of("window.take-back.go"),
                () -> {
                    sheet.close();
                    desk.takeBack();
                },
                "primary");
        sheet.ask(words.of("window.take-back.title"), body, keep, go);
    }

    /** The entry as the person made it; a first reading that must not be seen now stays hidden. */
    private String said(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            boolean hidden = desk.hidden().contains(reading.field());
            return answer(reading.field(), hidden ? words.of("window.hidden") : reading.typed());
        } else if (fact instanceof Fact.Choice choice) {
            return answer(choice.field(), option(choice));
        } else if (fact instanceof Fact.Note note) {
            return answer(note.field(), note.text());
        } else if (fact instanceof Fact.Acknowledged acknowledged) {
            String hazard =
                    desk.course().procedure().caution(acknowledged.caution()).hazard(words);
            return words.of("window.take-back.caution", hazard);
        } else if (fact instanceof Fact.Skipped skipped) {
            return words.of("window.take-back.skipped", words.of("step." + skipped.step() + ".title"));
        }
        return words.of(((Fact.Power) fact).on() ? "window.take-back.on" : "window.take-back.off");
    }

    private String answer(String field, String text) {
        return words.of("window.take-back.answer", Labels.of(words, field), PlainText.of(text));
    }

    private String option(Fact.Choice choice) {
        return desk.state().steps().stream()
                .flatMap(step -> step.step().fields().stream())
                .filter(field -> field instanceof Field.Choice && field.id().equals(choice.field()))
                .flatMap(field ->
                        ((Field.Choice) field).options().apply(desk.state().figures()).stream())
                .filter(option -> option.id().equals(choice.option()))
                .findFirst()
                .map(option -> words.of(option.label()))
                .orElse(choice.option());
    }
}
