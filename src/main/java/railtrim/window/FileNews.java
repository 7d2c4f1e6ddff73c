package railtrim.window;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import railtrim.job.Origin;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.window.JobPage.Kept;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** What there is to tell of the job's file, and how to go on where it takes no entries. */
final class FileNews {
    private final Words words;
    private final Desk desk;
    private final Kept kept;
    private final Copies copies;
    private final Label trouble = Build.prose("", "band-trouble");
    private final Label movedOn = Build.prose("", "band-news");
    private final Node ways;
    private final VBox box = new VBox();

    FileNews(Shell shell, Desk desk, Kept kept) {
        this.words = shell.words();
        this.desk = desk;
        this.kept = kept;
        this.copies = new Copies(shell);
        this.ways = Build.row("band-ways", wayOn());
        Handle.give(trouble, "trouble");
        Handle.give(movedOn, "moved-on");
        kept.problems().forEach(problem -> box.getChildren().add(problem(problem)));
        box.getChildren().addAll(trouble, movedOn, ways);
    }

    Node node() {
        return box;
    }

    void show() {
        trouble.setText(desk.trouble().map(words::of).orElse(""));
        Build.present(trouble, desk.trouble().isPresent());
        movedOn.setText(desk.movedOn().map(words::of).orElse(""));
        Build.present(movedOn, desk.movedOn().isPresent());
        boolean stuck = kept.readOnly() || desk.trouble().isPresent();
        Build.present(ways, stuck && kept.journal().isPresent());
    }

    private Node problem(Message problem) {
        Label told = Build.prose(words.of(problem), "band-trouble");
        if (!problem.key().equals("job.kept.better")) {
            return told;
        }
        Path earlier = Path.of(problem.values().get(0));
        Button open = Build.button("open-earlier", words.of("window.earlier"), () -> copies.earlier(earlier), "plain");
        return new VBox(told, Build.row("band-ways", open));
    }

    private Node wayOn() {
        return desk.state().job().origin() == Origin.ELSEWHERE
                ? Build.button("take-over", words.of("window.plan.elsewhere"), () -> copies.plan(desk), "plain")
                : Build.button("save-elsewhere", words.of("window.copy"), this::copy, "plain");
    }

    private void copy() {
        kept.journal().ifPresent(journal -> copies.whole(journal, desk));
    }
}
