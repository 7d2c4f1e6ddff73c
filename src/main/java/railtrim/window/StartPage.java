package railtrim.window;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import railtrim.job.Journal;
import railtrim.procedure.Words;
import railtrim.report.Printed;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;
import railtrim.window.kit.Passage;
import railtrim.window.kit.SparingScroll;
import railtrim.window.kit.Tile;

/**
 * What the program is, and how to begin: a new job, a job kept earlier, or practice. It may be made on any thread, before there is a window; its
 * buttons do something from {@link #in} on.
 */
final class StartPage {
    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
    /** So many times as high as its letters is a window with room. */
    private static final double ROOMY = 42;

    private static final int MOST_RECENT = 5;

    private final Words words;
    private final Map<Button, Path> recent = new LinkedHashMap<>();
    private final HBox columns;
    private final SparingScroll page;
    private Shell shell;

    /** @param jobs opened lately, newest first */
    StartPage(Words words, List<Path> jobs) {
        this.words = words;
        VBox about = Build.column(
                "start-about",
                Build.row(
                        "start-mark", Icon.MARK.draw(44, "brand"), new Passage(words.of("window.title"), "start-name")),
                new Passage(words.of("window.start.promise"), "start-promise"),
                new Passage(words.of("window.start.is"), "start-text"),
                new Passage(words.of("window.start.is-not"), "start-text"));
        VBox begin = Build.column(
                "start-begin",
                tile("new-job", "window.new", Icon.MARK, this::newJob).first(),
                tile("open-job", "window.open", Icon.FOLDER, this::open),
                tile("shelf", "window.shelf", Icon.SHELF, () -> shell.toShelf()),
                tile("practice", "window.practice", Icon.METER, () -> new Practice(shell).ask()));
        addRecent(begin, jobs.subList(0, Math.min(MOST_RECENT, jobs.size())));
        FlowPane links = new FlowPane(
                link("worksheet", "window.print.blank", this::worksheet),
                link("glossary", "window.glossary", () -> new HelpSheet(shell).glossary()),
                link("look", "window.look", () -> new LookSheet(shell).ask()));
        links.getStyleClass().add("start-links");
        begin.getChildren().add(links);
        HBox.setHgrow(about, Priority.ALWAYS);
        HBox.setHgrow(begin, Priority.ALWAYS);
        columns = Build.row("start", about, begin);
        page = new SparingScroll(columns, "start-scroll");
    }

    Region node() {
        return page;
    }

    /** Belongs to this window from now on. */
    StartPage in(Shell window) {
        shell = window;
        recent.forEach((line, job) -> line.setTooltip(new Tooltip(job.toString())));
        fit(shell.scene().getHeight());
        page.heightProperty().addListener(size -> fit(page.getHeight()));
        return this;
    }

    /** In a low window with large text all comes closer together, so that nothing has to be scrolled. */
    private void fit(double height) {
        columns.pseudoClassStateChanged(TIGHT, height < ROOMY * shell.theme().pixels());
    }

    private Tile tile(String id, String key, Icon icon, Runnable pressed) {
        return new Tile(id, words.of(key), words.of(key + ".about"), pressed, icon);
    }

    private Button link(String id, String key, Runnable pressed) {
        return Build.button(id, words.of(key), pressed, "link");
    }

    private void addRecent(VBox column, List<Path> jobs) {
        if (jobs.isEmpty()) {
            return;
        }
        column.getChildren().add(new Passage(words.of("window.recent"), "start-heading"));
        for (Path job : jobs) {
            String name = job.getFileName().toString();
            String shown =
                    name.endsWith(Journal.ENDING) ? name.substring(0, name.length() - Journal.ENDING.length()) : name;
            Button line = Build.dress(
                    new Button(shown),
                    "recent-" + recent.size(),
                    words.of("window.recent.say", shown),
                    () -> shell.open(job),
                    "link");
            recent.put(line, job);
            column.getChildren().add(line);
        }
    }

    private void newJob() {
        new FileSheet(shell, "window.new", "", shell::create).ask();
    }

    private void open() {
        shell.surroundings().askForJob(shell.stage(), words).ifPresent(shell::open);
    }

    private void worksheet() {
        new PrintSheet(shell, Optional.empty(), shell.surroundings().jobFolder(), Printed.WORKSHEET).ask();
    }
}
