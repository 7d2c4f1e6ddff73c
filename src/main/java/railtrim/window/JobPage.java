package railtrim.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import railtrim.job.Journal;
import railtrim.job.Origin;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.window.bench.BenchView;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.PromptFrame;

/** One job in the window: the way, the band, the step, the picture and the foot, always in the same places. */
final class JobPage {
    /** Below this width, in widths of the root font, the way shows its pads only. */
    private static final double NARROW = 66;

    /** Below this width the band has no room for all is well. */
    private static final double TIGHT = 42;

    /** Below this width there is no room for the picture beside the step. */
    private static final double ONE_COLUMN = 42;

    /** Below this height a step that waits for its cautions, or has the stop rule below it, leaves out why it is there. */
    private static final double LOW = 34;

    /** Longer lines than this are hard to read; in a wide window the picture takes the rest, up to the size it can be drawn in. */
    private static final double LINE = 66;

    private static final double PICTURE = 58;

    private static final PseudoClass NARROW_PAGE = PseudoClass.getPseudoClass("narrow");

    /**
     * How a job is kept.
     *
     * @param folder where its checklist is written
     * @param problems what was found when it was opened
     * @param journal empty for practice, which is in memory only
     */
    record Kept(String name, Path folder, List<Message> problems, boolean readOnly, Optional<Journal> journal) {}

    private final Shell shell;
    private final Desk desk;
    private final Kept kept;
    private final BorderPane page = new BorderPane();
    private final Band band;
    private final WayPane way;
    private final StepPane step;
    private boolean drawing;
    private boolean outdated;
    private final Side side;
    private final Foot foot;
    private final VBox bottom;
    private Optional<OneColumn> column = Optional.empty();
    private final Timeline seconds = new Timeline(new KeyFrame(Duration.seconds(1), event -> secondPassed()));

    JobPage(Shell shell, Desk desk, Kept kept) {
        this.shell = shell;
        this.desk = desk;
        this.kept = kept;
        Words words = shell.words();
        Export export = new Export(shell, desk, kept.folder());
        this.band = new Band(words, shell, export, kept, desk);
        this.way = new WayPane(words, desk);
        this.foot = new Foot(words, desk, this::makeSafe, this::askPause);
        this.bottom = new VBox(foot.stopRule(), foot.node());
        this.step = new StepPane(words, desk, shell, export, foot::focusNext);
        this.side = new Side(words, new PicturePane(shell, desk, kept.folder()));
        lay();
        desk.watch(this::refresh);
        kept.journal().ifPresent(journal -> desk.watch(() -> rememberWhere(journal)));
        seconds.setCycleCount(Animation.INDEFINITE);
    }

    static JobPage of(Shell shell, Journal journal, Course course) {
        Desk desk = new Desk(course, shell.surroundings().time(), Optional.empty());
        Path folder = journal.file().toAbsolutePath().getParent();
        Kept kept =
                new Kept(journal.job().name(), folder, journal.problems(), journal.readOnly(), Optional.of(journal));
        return new JobPage(shell, desk, kept);
    }

    /** A rehearsal: kept in memory only, on the time of the bench. */
    static JobPage practice(Shell shell, Course course, Bench bench) {
        BenchView view =
                new BenchView(shell.words(), bench, () -> course, () -> new Practice(shell).begin(bench.board()));
        Desk desk = new Desk(course, bench, Optional.of(view::pass));
        String name = bench.board().label().name();
        Kept kept = new Kept(name, shell.surroundings().jobFolder(), List.of(), false, Optional.empty());
        JobPage page = new JobPage(shell, desk, kept);
        view.onDeed(desk::changed);
        page.side.practice(view, bench);
        return page;
    }

    private void lay() {
        page.getStyleClass().add("job");
        page.setTop(band.node());
        page.setLeft(way.node());
        page.setCenter(step.node());
        page.setRight(side.node());
        page.setBottom(bottom);
        page.widthProperty().addListener((of, was, is) -> fit());
        page.heightProperty().addListener((of, was, is) -> fit());
    }

    /** In a narrow window, or with large text, the step keeps its room and the way folds. */
    void fit() {
        double widths = page.getWidth() / shell.theme().pixels();
        boolean narrow = widths < NARROW;
        page.pseudoClassStateChanged(NARROW_PAGE, narrow);
        band.tight(widths < TIGHT);
        step.low(page.getHeight() < LOW * shell.theme().pixels());
        way.fold(narrow);
        step.narrow(narrow);
        oneColumn(widths < ONE_COLUMN);
        sideWidth(widths, narrow);
    }

    private void oneColumn(boolean is) {
        if (is == column.isPresent()) {
            return;
        }
        column.ifPresent(OneColumn::leave);
        column = is
                ? Optional.of(new OneColumn(shell.words(), step.node(), side.node(), side.word()))
                : Optional.empty();
        step.brief(is);
        showColumn();
        page.setRight(is ? null : side.node());
        page.setCenter(column.map(OneColumn::node).orElse(step.node()));
    }

    private void showColumn() {
        boolean alone = desk.state().card().isPresent()
                || desk.atEnd()
                || desk.working() && !desk.shown().open().isEmpty();
        String asked = desk.state().card().isPresent() + desk.shown().step().id();
        column.ifPresent(each -> each.show(asked, alone));
    }

    private void sideWidth(double widths, boolean narrow) {
        if (column.isPresent()) {
            side.anyWidth();
            return;
        }
        double shared = widths - (narrow ? 4 : 17);
        double usual = Math.max(14, Math.min(34, shared * 0.42));
        side.width(Math.max(usual, Math.min(PICTURE, shared - LINE))
                * shell.theme().pixels());
    }

    Node node() {
        return page;
    }

    /** What the page is put together of. */
    List<Parent> parts() {
        return List.of(band.node(), way.node(), step.node(), side.node(), bottom);
    }

    /** Of the parts, the one that each step fills anew. */
    Parent middle() {
        return step.node();
    }

    /** One part in its place and no other, so that a page can be made ready in small pieces. */
    void only(Parent part) {
        page.setTop(part == band.node() ? part : null);
        page.setLeft(part == way.node() ? part : null);
        page.setCenter(part == step.node() ? part : null);
        page.setRight(part == side.node() ? part : null);
        page.setBottom(part == bottom ? part : null);
    }

    String name() {
        return kept.name();
    }

    Desk desk() {
        return desk;
    }

    /** Empty for practice. */
    Optional<Path> file() {
        return kept.journal().map(Journal::file);
    }

    /** A board elsewhere is not on this bench, whatever its job says. */
    State.Power power() {
        boolean elsewhere = desk.state().job().origin() == Origin.ELSEWHERE;
        return elsewhere ? State.Power.OFF : desk.state().power();
    }

    /** First shown. */
    void enter() {
        refresh();
        fit();
    }

    void next() {
        if (foot.nextOpen()) {
            desk.next();
        }
    }

    void back() {
        desk.back();
    }

    /** From anywhere: a sheet that is open gives way. */
    void makeSafe() {
        shell.sheet().giveWay();
        desk.alarm("pressed");
    }

    /** A sheet lies over all but the foot, where only Make safe can be pressed. */
    void cover(boolean is) {
        List.of(band.node(), way.node(), step.node(), side.node()).forEach(node -> node.setDisable(is));
        column.ifPresent(each -> each.node().setDisable(is));
        foot.cover(is);
    }

    /** Of the foot with the stop rule above it. */
    ReadOnlyDoubleProperty footHeight() {
        return bottom.heightProperty();
    }

    void close() {
        seconds.stop();
        kept.journal().ifPresent(Journal::close);
    }

    private void secondPassed() {
        step.timePassed();
    }

    /**
     * Draws the state again. What is drawn may itself change the state, as a list that closes because its field leaves: that is drawn next, for boxes
     * whose parts are changed while they change them come apart.
     */
    void refresh() {
        outdated = true;
        if (drawing) {
            return;
        }
        drawing = true;
        try {
            while (outdated) {
                outdated = false;
                draw();
            }
        } finally {
            drawing = false;
        }
        PromptFrame.afterDeed();
    }

    private void draw() {
        band.show(desk);
        way.show();
        step.show();
        side.show(desk.state());
        showColumn();
        foot.show();
        count();
    }

    /** A clock that runs keeps the toolkit painting, so it runs only where there is a wait to be seen. */
    private void count() {
        boolean wait = desk.working() && desk.shown().step().dwellSeconds() > 0;
        if (wait && page.getScene() != null) {
            seconds.play();
        } else {
            seconds.stop();
        }
    }

    private void rememberWhere(Journal journal) {
        if (desk.movedOn().isPresent()) {
            shell.remember(journal.file());
        }
    }

    private void askPause() {
        Words words = shell.words();
        TextArea note = new TextArea();
        Handle.give(note, "pause-note");
        note.setPrefRowCount(3);
        note.setWrapText(true);
        note.getStyleClass().add("first-focus");
        note.setAccessibleText(words.of("window.pause.label"));
        VBox body = Build.column("sheet-body", Build.prose(words.of("window.pause.text"), "sheet-text"));
        body.getChildren()
                .add(
                        power() == State.Power.OFF
                                ? Build.prose(words.of("window.pause.off"), "sheet-text")
                                : Build.prose(words.of("window.pause.powered"), "sheet-alert"));
        body.getChildren().add(note);
        Button stay = Build.button("pause-stay", words.of("window.pause.stay"), shell.sheet()::close, "plain");
        Button keep = Build.button("pause-keep", words.of("window.pause.keep"), () -> pause(note.getText()), "primary");
        shell.sheet().ask(words.of("window.pause.title"), body, stay, keep);
    }

    private void pause(String note) {
        desk.pause(note);
        shell.sheet().close();
        Optional<Message> trouble = desk.trouble();
        if (trouble.isPresent()) {
            return;
        }
        if (power() == State.Power.OFF) {
            Platform.runLater(shell::toStart);
        }
    }
}
