package railtrim.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import railtrim.job.Job;
import railtrim.job.Journal;
import railtrim.job.JournalProblem;
import railtrim.job.Mark;
import railtrim.job.RecentJobs;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.window.kit.Aside;
import railtrim.window.kit.Build;
import railtrim.window.kit.Frames;
import railtrim.window.kit.Keys;
import railtrim.window.shelf.ShelfPage;

/** The one window: the start page, or one job. */
final class Shell {
    static final double WIDTH = 1240;
    static final double HEIGHT = 820;

    private final Stage stage;
    private final Surroundings surroundings;
    private final Words words;
    private final RecentJobs recent;
    private final StackPane page = new StackPane();
    private final StackPane root = new StackPane(page);
    private final Sheet sheet = new Sheet(root, page);
    private final Scene scene = new Scene(root, WIDTH, HEIGHT);
    private final Theme theme;
    private final WindowPlace place;
    private Optional<JobPage> job = Optional.empty();
    private Optional<ShelfPage> shelf = Optional.empty();
    private Optional<Path> waiting = Optional.empty();
    private Optional<Doorbell.Door> door = Optional.empty();
    private boolean askedForDark;

    Shell(Stage stage, Surroundings surroundings, Words words) {
        this.stage = stage;
        this.surroundings = surroundings;
        this.words = words;
        this.recent = new RecentJobs(surroundings.ownFolder());
        Remembered before = Remembered.in(surroundings.ownFolder());
        this.theme = new Theme(scene, before, this::lookChanged);
        this.place = new WindowPlace(stage, before);
        root.getStyleClass().add("shell");
        stage.setOnCloseRequest(this::closing);
        stage.setOnHidden(event -> hidden());
        sheet.onOpen(theme::whole);
        sheet.onClosed(this::openWaiting);
        stage.setMinWidth(720);
        stage.setMinHeight(560);
    }

    void show() {
        show(Optional.empty());
    }

    /** @param made the start page, where it is made already */
    void show(Optional<StartPage> made) {
        Trouble.catchAll(words, sheet);
        stage.setTitle(words.of("window.title"));
        stage.setScene(scene);
        put(made.orElseGet(this::startPage).in(this).node());
        place.settle(WIDTH, HEIGHT);
        Frames.whenLaidOut(scene, () -> Platform.runLater(this::listen));
        stage.show();
    }

    /** While the first picture is being painted, which all this would hold up; before there is one, nobody presses a key. */
    private void listen() {
        Keys.install(scene, this::enter, this::escape);
        shortcut("F1", this::help);
        Keys.undo(scene, this::takeBack);
        new CopyNumber(scene, words).watch();
        shortcut("Shortcut+PLUS", theme::bigger);
        shortcut("Shortcut+EQUALS", theme::bigger);
        shortcut("Shortcut+MINUS", theme::smaller);
        shortcut("Shortcut+DIGIT0", theme::usual);
        new DroppedJob(this).watch(scene);
        WarmUp.wait(this);
    }

    /** Behind the first picture: what it did not need. */
    void complete() {
        theme.whole();
        askForDark();
    }

    /** Once, and only where it matters: it takes a program of the system. */
    private void askForDark() {
        if (!askedForDark && theme.look() == Look.SYSTEM) {
            askedForDark = true;
            surroundings.askForDark(dark -> Platform.runLater(() -> theme.systemIs(dark)));
        }
    }

    private void hidden() {
        remember();
        door.ifPresent(Doorbell.Door::close);
    }

    /** Closed together with the window. */
    void closeWithIt(Doorbell.Door opened) {
        door = Optional.of(opened);
    }

    private void lookChanged() {
        job.ifPresent(JobPage::fit);
        remember();
        askForDark();
    }

    private void remember() {
        new Remembered(theme.look(), theme.size(), place.last(), stage.isMaximized(), theme.systemDark())
                .keepIn(surroundings.ownFolder());
    }

    Scene scene() {
        return scene;
    }

    Theme theme() {
        return theme;
    }

    Sheet sheet() {
        return sheet;
    }

    Stage stage() {
        return stage;
    }

    Words words() {
        return words;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    RecentJobs recent() {
        return recent;
    }

    /** Of the job that is open. */
    Optional<Desk> desk() {
        return job.map(JobPage::desk);
    }

    void toStart() {
        job.ifPresent(JobPage::close);
        job = Optional.empty();
        stage.setTitle(words.of("window.title"));
        put(startPage().in(this).node());
    }

    private StartPage startPage() {
        return new StartPage(words, recent.files());
    }

    /** All jobs of a folder; reached where no job is open. */
    void toShelf() {
        stage.setTitle(words.of("window.title"));
        ShelfPage opened = new ShelfPage(words, new Shelving(this), surroundings.jobFolder());
        shelf = Optional.of(opened);
        theme.whole();
        put(opened.node());
    }

    /** The program was started once more: the window comes to the front. Its job waits for the answer to a question that stands on the window. */
    void summon(Optional<Path> file) {
        stage.setIconified(false);
        stage.toFront();
        stage.requestFocus();
        waiting = file.or(() -> waiting);
        openWaiting();
    }

    private void openWaiting() {
        if (!sheet.open() && waiting.isPresent()) {
            Path file = waiting.get();
            waiting = Optional.empty();
            open(file);
        }
    }

    /** Opens a job from anywhere in the program. One whose board has power is not left without asking; the one on the page stays as it is. */
    void open(Path file) {
        if (job.flatMap(JobPage::file).filter(shown -> same(shown, file)).isPresent()) {
            return;
        }
        if (powered()) {
            askBeforeLeaving(() -> openNow(file));
        } else {
            openNow(file);
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException gone) {
            return false;
        }
    }

    private void openNow(Path file) {
        withWords(
                () -> begin(Journal.open(file, surroundings.time(), Mark.keptIn(surroundings.ownFolder())), Map.of()));
    }

    /** @param file must not exist yet */
    void create(Path file, String name) {
        begin(Journal.create(file, name, surroundings.time(), Mark.keptIn(surroundings.ownFolder())), Map.of());
    }

    /** Goes on with the job in a new file, with what was typed and not yet taken. */
    void copy(Journal journal, Path file, Map<String, String> drafts) {
        Mark mark = Mark.keptIn(surroundings.ownFolder());
        begin(Journal.copy(journal, file, surroundings.time(), mark), drafts);
    }

    /** A new job with the plan of another one. */
    void plan(Job other, Path file, String name) {
        Mark mark = Mark.keptIn(surroundings.ownFolder());
        begin(Journal.begin(file, name, TakeOver.plan(other), surroundings.time(), mark), Map.of());
    }

    void show(JobPage opened) {
        job.ifPresent(JobPage::close);
        job = Optional.of(opened);
        stage.setTitle(words.of("window.title.job", opened.name()));
        theme.whole();
        put(opened.node());
        opened.enter();
    }

    private void begin(Journal journal, Map<String, String> drafts) {
        remember(journal.file());
        JobPage opened = JobPage.of(this, journal, new Course(Procedure.builtIn(), journal));
        drafts.forEach(opened.desk()::draft);
        show(opened);
    }

    /** An earlier state that was kept is not what the person will want to go on with the next time. */
    void remember(Path file) {
        if (file.toString().endsWith(Journal.ENDING)) {
            recent.remember(file);
        }
    }

    private void withWords(Runnable work) {
        try {
            work.run();
        } catch (JournalProblem problem) {
            tell(words.of("window.open.failed"), words.of(problem.told()));
        } catch (BadInput problem) {
            tell(words.of("window.open.failed"), words.of(problem.told()));
        }
    }

    /** Writes, and tells what came of it. Until then a sheet says so and stays; Make safe is free under it. */
    void write(Supplier<Told> writing) {
        Label text = Build.prose(words.of("window.writing.text"), "sheet-text");
        Button wait = Build.button("sheet-wait", words.of("window.sheet.close"), () -> {}, "primary");
        wait.setDisable(true);
        sheet.ask(words.of("window.writing"), text, wait);
        Aside.run("writing", writing, told -> {
            if (text.getScene() != null) {
                tell(told.title(), told.text());
            }
        });
    }

    /** A sheet with something to read. */
    record Told(String title, String text) {}

    void tell(String title, String text) {
        Button close = Build.button("sheet-close", words.of("window.sheet.close"), sheet::close, "primary");
        sheet.ask(title, Build.prose(text, "sheet-text"), close);
    }

    /** About the field the focus is in, else about the step on the page. */
    private void help() {
        if (!sheet.open()) {
            HelpSheet.ofField(scene.getFocusOwner()).ifPresentOrElse(Button::fire, this::helpOnStep);
        }
    }

    void helpOnStep() {
        HelpSheet help = new HelpSheet(this);
        job.ifPresentOrElse(open -> help.step(open.desk()), help::glossary);
    }

    void takeBack() {
        if (!sheet.open()) {
            job.ifPresent(open -> new TakeBack(words, open.desk(), sheet).ask());
        }
    }

    /** It gets its size first: a page that fits itself to it in the middle of a layout is painted once as it was before. */
    private void put(Node node) {
        shelf = shelf.filter(opened -> opened.node() == node);
        size(node);
        page.getChildren().setAll(node);
        sheet.over(job);
    }

    /** All the room there is for a page. */
    void size(Node node) {
        node.resize(page.getWidth(), page.getHeight());
    }

    private void enter() {
        if (!sheet.open()) {
            job.ifPresent(JobPage::next);
        }
    }

    private void escape() {
        if (sheet.open()) {
            sheet.leave();
        } else {
            job.ifPresent(JobPage::back);
            // Here and not on the page: after a sheet was closed the focus may be on nothing.
            shelf.ifPresent(ShelfPage::back);
        }
    }

    private void closing(WindowEvent event) {
        if (powered()) {
            event.consume();
            askBeforeLeaving(stage::hide);
        } else {
            job.ifPresent(JobPage::close);
        }
    }

    private boolean powered() {
        return job.filter(open -> open.power() == State.Power.ON).isPresent();
    }

    /** Leaving with the board powered is never silent. */
    void askBeforeLeaving(Runnable leave) {
        Button stay = Build.button("stay", words.of("window.leave.stay"), sheet::close, "primary");
        Button safe = Build.button(
                "leave-make-safe",
                words.of("window.leave.make-safe"),
                () -> {
                    sheet.close();
                    job.ifPresent(JobPage::makeSafe);
                },
                "make-safe");
        Button anyway = Build.button(
                "leave-anyway",
                words.of("window.leave.anyway"),
                () -> {
                    sheet.close();
                    job.ifPresent(JobPage::close);
                    job = Optional.empty();
                    leave.run();
                },
                "plain");
        sheet.ask(
                words.of("window.leave.title"),
                Build.prose(words.of("window.leave.text"), "sheet-text"),
                stay,
                anyway,
                safe);
    }

    private void shortcut(String keys, Runnable work) {
        scene.getAccelerators().put(KeyCombination.valueOf(keys), work);
    }
}
