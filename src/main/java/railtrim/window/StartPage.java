package railtrim.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.job.Journal;
import railtrim.procedure.Words;
import railtrim.report.Printed;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;
import railtrim.window.kit.SparingScroll;
import railtrim.window.kit.Tile;

/** What the program is, and how to begin: a new job, a job kept earlier, or practice. */
final class StartPage {
    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
    /** So many times as high as its letters is a window with room. */
    private static final double ROOMY = 42;

    private final Shell shell;
    private final Words words;

    StartPage(Shell shell) {
        this.shell = shell;
        this.words = shell.words();
    }

    Node node() {
        VBox about = Build.column(
                "start-about",
                mark(),
                Build.prose(words.of("window.start.promise"), "start-promise"),
                Build.prose(words.of("window.start.is"), "start-text"),
                Build.prose(words.of("window.start.is-not"), "start-text"));
        VBox begin = Build.column("start-begin");
        begin.getChildren()
                .add(tile(
                                "new-job",
                                "window.new",
                                Icon.MARK,
                                () -> new FileSheet(shell, "window.new", "", shell::create).ask())
                        .first()
                        .node());
        begin.getChildren()
                .add(tile("open-job", "window.open", Icon.FOLDER, this::open).node());
        begin.getChildren()
                .add(tile("shelf", "window.shelf", Icon.SHELF, shell::toShelf).node());
        begin.getChildren()
                .add(tile("practice", "window.practice", Icon.METER, () -> new Practice(shell).ask())
                        .node());
        addRecent(begin);
        FlowPane links = new FlowPane(
                Build.button("worksheet", words.of("window.print.blank"), this::worksheet, "link"),
                Build.button("glossary", words.of("window.glossary"), () -> new HelpSheet(shell).glossary(), "link"),
                Build.button("look", words.of("window.look"), () -> new LookSheet(shell).ask(), "link"));
        links.getStyleClass().add("start-links");
        begin.getChildren().add(links);
        HBox.setHgrow(about, Priority.ALWAYS);
        HBox.setHgrow(begin, Priority.ALWAYS);
        HBox columns = Build.row("start", about, begin);
        SparingScroll page = new SparingScroll(columns, "start-scroll");
        fit(columns, shell.scene().getHeight());
        page.heightProperty().addListener(size -> fit(columns, page.getHeight()));
        return page;
    }

    /** In a low window with large text all comes closer together, so that nothing has to be scrolled. */
    private void fit(HBox columns, double height) {
        columns.pseudoClassStateChanged(TIGHT, height < ROOMY * shell.theme().pixels());
    }

    private void worksheet() {
        new PrintSheet(shell, Optional.empty(), shell.surroundings().jobFolder(), Printed.WORKSHEET).ask();
    }

    private Node mark() {
        HBox row = Build.row(
                "start-mark", Icon.MARK.draw(44, "brand"), Build.label(words.of("window.title"), "start-name"));
        return row;
    }

    private Tile tile(String id, String key, Icon icon, Runnable pressed) {
        return new Tile(id, words.of(key), words.of(key + ".about"), pressed, icon.draw(28));
    }

    private void addRecent(VBox column) {
        List<Path> jobs = shell.recent().files().stream().limit(5).toList();
        if (jobs.isEmpty()) {
            return;
        }
        column.getChildren().add(Build.label(words.of("window.recent"), "start-heading"));
        for (int i = 0; i < jobs.size(); i++) {
            Path job = jobs.get(i);
            String name = job.getFileName().toString();
            String shown =
                    name.endsWith(Journal.ENDING) ? name.substring(0, name.length() - Journal.ENDING.length()) : name;
            Button line = Build.dress(
                    new Button(shown),
                    "recent-" + i,
                    words.of("window.recent.say", shown),
                    () -> shell.open(job),
                    "link");
            line.setTooltip(new javafx.scene.control.Tooltip(job.toString()));
            column.getChildren().add(line);
        }
    }

    private void open() {
        shell.surroundings().askForJob(shell.stage(), words).ifPresent(shell::open);
    }
}
