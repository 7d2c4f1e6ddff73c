package railtrim.window.shelf;

import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import railtrim.procedure.Words;
import railtrim.report.shelf.Comparison;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.PlainScroll;

/** Where several jobs fail, beside each other: the plot, and the same figures as a table. */
final class CompareView {
    /** Room for a scroll bar that lies along the bottom, in pixels. */
    private static final double BAR = 14;

    private final Words words;
    private final Comparison comparison;

    CompareView(Words words, Comparison comparison) {
        this.words = words;
        this.comparison = comparison;
    }

    Node node() {
        VBox column = Build.column("shelf-compare");
        if (comparison.pieces().isEmpty()) {
            column.getChildren().add(Build.prose(words.of("shelf.compare.none"), "shelf-nothing"));
            return column;
        }
        column.getChildren().add(Build.prose(words.of("shelf.compare.differs"), "sheet-text"));
        comparison.picture().ifPresent(picture -> column.getChildren().add(new DrawnView(picture)));
        column.getChildren().add(wide(table()));
        ScrollPane scroll = new PlainScroll(column);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("step-scroll");
        Handle.give(scroll, "shelf-compared");
        scroll.setAccessibleText(words.of("shelf.compare.part"));
        return scroll;
    }

    /** Words take more lines before the table grows wider than the window; the plot above it is not to grow with it. */
    private Node wide(Region table) {
        ScrollPane scroll = new PlainScroll(table);
        scroll.setFitToWidth(true);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        // As high as the lines it really takes, and the bar below them.
        scroll.minHeightProperty().bind(table.heightProperty().add(BAR));
        scroll.setAccessibleText(words.of("shelf.compare.part"));
        scroll.getStyleClass().add("step-scroll");
        return scroll;
    }

    private Region table() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("shelf-grid");
        List<List<String>> rows = comparison.rows();
        // A column in which nothing stands, such as the clock where none was named, takes the room of those that
        // matter.
        int[] kept = IntStream.range(0, comparison.head().size())
                .filter(i -> rows.stream().anyMatch(row -> !row.get(i).isEmpty()))
                .toArray();
        row(grid, 0, comparison.head(), kept, "shelf-head");
        for (int i = 0; i < rows.size(); i++) {
            row(grid, i + 1, rows.get(i), kept, "shelf-cell");
        }
        return grid;
    }

    private static void row(GridPane grid, int index, List<String> cells, int[] kept, String styleClass) {
        for (int i : kept) {
            Label cell = Build.label(cells.get(i), styleClass);
            boolean wraps = i > 0 && i <= Comparison.LAST_TEXT;
            cell.setWrapText(wraps);
            if (wraps) {
                cell.getStyleClass().add("shelf-words");
            } else {
                cell.setMinWidth(Region.USE_PREF_SIZE);
            }
            GridPane.setHalignment(cell, i <= Comparison.LAST_TEXT ? HPos.LEFT : HPos.RIGHT);
            grid.add(cell, i, index);
        }
    }
}
