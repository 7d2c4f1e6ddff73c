package railtrim.window.shelf;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import railtrim.procedure.Words;
import railtrim.report.shelf.Piece;
import railtrim.report.shelf.ShelfTable;
import railtrim.report.shelf.ShelfTable.Column;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** One line for each job; several may be picked out to compare them. A click on a column's head puts the jobs in its order. */
final class JobTable {
    /** Widths in heights of a letter. */
    private static final double NUMBER = 6.6;
    /** "below 3.201 V". */
    private static final double LONG_NUMBER = 9.4;

    private static final double ROOMY = 60;

    private final ShelfTable texts;
    private final Map<TableColumn<Piece, Piece>, Double> numbers = new LinkedHashMap<>();
    /** Never seen: tells how large the window's letters are. */
    private final Label sample = new Label();

    private final TableView<Piece> table = new TableView<>();
    private final StackPane place = new StackPane(sample, table);
    private final Label nothing = Build.prose("", "shelf-nothing");

    JobTable(Words words, Consumer<Piece> open) {
        this.texts = new ShelfTable(words);
        sample.setVisible(false);
        Handle.give(table, "shelf-table");
        table.setAccessibleText(words.of("window.shelf.title"));
        table.setPlaceholder(nothing);
        table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        text(Column.NAME);
        TableColumn<Piece, Piece> board = text(Column.BOARD);
        column(Column.STATE, this::state, Comparator.comparing(this::state));
        number(Column.STOCK, Piece::stock);
        number(Column.NEW, Piece::fitted);
        number(Column.FAIL, JobTable::fail);
        number(Column.SAVED, Piece::wattsSaved);
        table.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && !picked().isEmpty()) {
                event.consume();
                open.accept(picked().get(0));
            }
        });
        table.setRowFactory(each -> row(open));
        sample.fontProperty().addListener((of, was, is) -> fit(board));
        table.widthProperty().addListener((of, was, is) -> fit(board));
    }

    /** No number is cut short; where room is scarce, the board's name is left to the line below the table. */
    private void fit(TableColumn<Piece, Piece> board) {
        double letter = sample.getFont().getSize();
        numbers.forEach((column, wide) -> {
            column.setMinWidth(wide * letter);
            column.setMaxWidth(wide * letter);
        });
        board.setVisible(table.getWidth() > ROOMY * letter);
    }

    TableView<Piece> table() {
        return table;
    }

    Node node() {
        return place;
    }

    void show(List<Piece> pieces, String otherwise) {
        nothing.setText(otherwise);
        table.setItems(FXCollections.observableArrayList(pieces));
        table.sort();
        if (!pieces.isEmpty()) {
            table.getSelectionModel().selectFirst();
        }
    }

    List<Piece> picked() {
        return List.copyOf(table.getSelectionModel().getSelectedItems());
    }

    void onPick(Runnable watcher) {
        table.getSelectionModel().getSelectedItems().addListener((javafx.collections.ListChangeListener<Piece>)
                change -> watcher.run());
    }

    private static TableRow<Piece> row(Consumer<Piece> open) {
        TableRow<Piece> row = new TableRow<>();
        row.addEventHandler(MouseEvent.MOUSE_CLICKED, event -> {
            if (event.getClickCount() == 2 && row.getItem() != null) {
                open.accept(row.getItem());
            }
        });
        return row;
    }

    private TableColumn<Piece, Piece> text(Column column) {
        Function<Piece, String> text = piece -> texts.cell(piece, column);
        return column(column, text, Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER));
    }

    /** In the order of the numbers; those not known come last. */
    private void number(Column column, Function<Piece, OptionalDouble> value) {
        Comparator<Piece> order =
                Comparator.comparingDouble(piece -> value.apply(piece).orElse(Double.POSITIVE_INFINITY));
        TableColumn<Piece, Piece> shown = column(column, piece -> texts.cell(piece, column), order);
        shown.getStyleClass().add("shelf-number");
        numbers.put(shown, column == Column.FAIL ? LONG_NUMBER : NUMBER);
    }

    private static OptionalDouble fail(Piece piece) {
        return piece.fail().map(found -> OptionalDouble.of(found.fail())).orElse(OptionalDouble.empty());
    }

    /** Where it stands; for one under way, the step. */
    String state(Piece piece) {
        String step = texts.cell(piece, Column.STEP);
        String state = texts.cell(piece, Column.STATE);
        return step.isEmpty() ? state : state + ": " + step;
    }

    private TableColumn<Piece, Piece> column(Column column, Function<Piece, String> text, Comparator<Piece> order) {
        TableColumn<Piece, Piece> shown = new TableColumn<>(texts.head(column));
        shown.setCellValueFactory(of -> new ReadOnlyObjectWrapper<>(of.getValue()));
        shown.setCellFactory(of -> cell(text));
        shown.setComparator(order);
        table.getColumns().add(shown);
        return shown;
    }

    private static TableCell<Piece, Piece> cell(Function<Piece, String> text) {
        return new TableCell<>() {
            @Override
            protected void updateItem(Piece piece, boolean empty) {
                super.updateItem(piece, empty);
                setText(empty || piece == null ? "" : text.apply(piece));
            }
        };
    }
}
