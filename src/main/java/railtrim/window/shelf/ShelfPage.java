package railtrim.window.shelf;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.PlainText;
import railtrim.report.shelf.Comparison;
import railtrim.report.shelf.Piece;
import railtrim.report.shelf.Shelf;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** All jobs of a folder at a glance: search them, open one, plan another board from one, share one, and compare where they fail. */
public final class ShelfPage {
    private final Words words;
    private final ShelfDeeds deeds;
    private final Reading reading;
    private final TextField folder = new TextField();
    private final TextField search = new TextField();
    private final JobTable table;
    private final Node where;
    private final Label about = Build.prose("", "shelf-about");
    private final Button open;
    private final Button plan;
    private final Button share;
    private final Button compare;
    private final Button write;
    private final Button list;
    private final BorderPane page = new BorderPane();
    private Shelf shelf = new Shelf(List.of());
    private Comparison comparison;

    public ShelfPage(Words words, ShelfDeeds deeds, Path start) {
        this.words = words;
        this.deeds = deeds;
        this.reading = new Reading(deeds);
        this.table = new JobTable(words, piece -> deeds.open(piece.file()));
        this.comparison = new Comparison(shelf, words);
        open = Build.button("shelf-open", words.of("window.shelf.open"), () -> one(deeds::open), "primary");
        plan = Build.button("shelf-plan", words.of("window.plan"), () -> one(deeds::plan), "plain");
        share = Build.button("shelf-share", words.of("window.share"), () -> one(deeds::share), "plain");
        compare = Build.button("shelf-compare", words.of("window.shelf.compare"), this::compare, "plain");
        write = Build.button("shelf-write", words.of("window.shelf.write"), this::write, "plain");
        list = Build.button("shelf-list", words.of("window.shelf.list"), this::showList, "plain");
        where = where();
        folder.setText(start.toString());
        Handle.give(about, "shelf-about");
        lay();
        table.onPick(this::showPicked);
        read();
    }

    public Node node() {
        return page;
    }

    private void lay() {
        page.getStyleClass().add("shelf");
        page.setTop(Build.column("shelf-top", title(), where));
        FlowPane buttons = new FlowPane(open, plan, share, compare, write, list);
        buttons.getStyleClass().add("shelf-buttons");
        page.setBottom(Build.column("shelf-bottom", about, buttons));
        showList();
    }

    private Node title() {
        Button leave = Build.button("shelf-leave", words.of("window.shelf.leave"), this::leave, "plain");
        return Build.row(
                "shelf-title",
                Icon.FOLDER.draw(28),
                Build.label(words.of("window.shelf.title"), "sheet-title"),
                Build.spring(),
                leave);
    }

    private Node where() {
        Handle.give(folder, "shelf-folder");
        Handle.give(search, "shelf-search");
        search.setPromptText(words.of("window.shelf.search.prompt"));
        folder.setOnAction(event -> read());
        search.textProperty().addListener((of, was, is) -> showFound());
        Button browse = Build.button("shelf-browse", words.of("window.new.browse"), this::browse, "plain");
        HBox.setHgrow(folder, Priority.ALWAYS);
        HBox.setHgrow(search, Priority.ALWAYS);
        return Build.row(
                "shelf-where",
                named("window.shelf.folder", folder),
                folder,
                browse,
                named("window.shelf.search", search),
                search);
    }

    private Label named(String key, TextField field) {
        Label label = Build.label(words.of(key), "field-label");
        label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        label.setLabelFor(field);
        field.setAccessibleText(words.of(key));
        return label;
    }

    private void browse() {
        deeds.askForFolder(Path.of(folder.getText())).ifPresent(chosen -> {
            folder.setText(chosen.toString());
            read();
        });
    }

    /** Looks at the folder anew, as after a job was added to it. */
    public void read() {
        shelf = new Shelf(List.of());
        table.show(List.of(), words.of("window.shelf.reading"));
        try {
            reading.read(Path.of(folder.getText().strip()), this::found, this::refused);
        } catch (InvalidPathException bad) {
            refused(BadInput.of("shelf.no-folder", folder.getText()));
        }
    }

    private void found(Shelf there) {
        shelf = there;
        showFound();
        // Whoever began to search meanwhile goes on typing there.
        if (!search.isFocused()) {
            table.table().requestFocus();
        }
    }

    private void refused(BadInput bad) {
        table.show(List.of(), words.of(bad.told()));
    }

    private Shelf sought() {
        return shelf.find(search.getText());
    }

    private void showFound() {
        String otherwise = words.of(shelf.pieces().isEmpty() ? "window.shelf.empty" : "window.shelf.none");
        table.show(sought().pieces(), otherwise);
        showPicked();
    }

    /** Of one job what the table has no room for; of several, that they can be compared. */
    private void showPicked() {
        List<Piece> picked = table.picked();
        boolean single = picked.size() == 1;
        boolean readable = single && picked.get(0).standing() != Piece.Standing.UNREADABLE;
        open.setDisable(!readable);
        plan.setDisable(!readable);
        share.setDisable(!readable);
        compare.setDisable(shelf.pieces().isEmpty());
        about.setText(
                single
                        ? told(picked.get(0))
                        : picked.isEmpty() ? "" : words.of("window.shelf.several", Integer.toString(picked.size())));
    }

    private String told(Piece piece) {
        String file = piece.file().getFileName().toString();
        String first = piece.chip().isEmpty()
                ? words.of("window.shelf.about.file", file, table.state(piece))
                : words.of(
                        "window.shelf.about.one",
                        PlainText.of(piece.chip()),
                        PlainText.of(piece.load()),
                        file,
                        table.state(piece));
        String problems = piece.problems().stream().map(words::of).collect(Collectors.joining(" "));
        String elsewhere = piece.elsewhere() ? words.of("window.shelf.elsewhere") : "";
        return String.join(" ", first, elsewhere, problems).strip();
    }

    private void one(java.util.function.Consumer<Path> deed) {
        table.picked().stream().findFirst().map(Piece::file).ifPresent(deed);
    }

    /** Those picked out; where that is one alone, all that are shown. */
    private void compare() {
        Shelf wanted = table.picked().size() > 1 ? new Shelf(table.picked()) : sought();
        comparison = new Comparison(wanted, words);
        page.setCenter(new CompareView(words, comparison).node());
        comparing(true);
        list.requestFocus();
    }

    private void write() {
        deeds.write(comparison, Path.of(folder.getText().strip()));
    }

    private void showList() {
        page.setCenter(table.node());
        comparing(false);
    }

    private void comparing(boolean is) {
        List.of(open, plan, share, compare).forEach(button -> Build.present(button, !is));
        Build.present(write, is && !comparison.pieces().isEmpty());
        Build.present(list, is);
        Build.present(about, !is);
        Build.present(where, !is);
    }

    /** From the comparison to the jobs, from the jobs to where the shelf was reached from. */
    public void back() {
        if (page.getCenter() == table.node()) {
            leave();
        } else {
            showList();
            table.table().requestFocus();
        }
    }

    private void leave() {
        deeds.leave();
    }
}
