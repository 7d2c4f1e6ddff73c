package railtrim.window;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.job.BuiltIn;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.Meter;
import railtrim.window.kit.Build;

/** A rehearsal of the whole job on a board that cannot be harmed. */
final class Practice {
    /** The boards that travel with the program. */
    static final List<String> BOARDS = List.of("sound-board", "network-blade", "playout-module", "storage-controller");

    private final Shell shell;
    private final Words words;

    Practice(Shell shell) {
        this.shell = shell;
        this.words = shell.words();
    }

    static Board board(String id) {
        return Board.of(BuiltIn.text("demo-data/boards/" + id + ".json"));
    }

    void ask() {
        VBox body = Build.column("sheet-body", Build.prose(words.of("window.practice.text"), "sheet-text"));
        for (String id : BOARDS) {
            body.getChildren().add(tile(id, board(id)));
        }
        body.getChildren().get(1).getStyleClass().add("first-focus");
        Button cancel = Build.button("practice-cancel", words.of("window.cancel"), shell.sheet()::close, "plain");
        shell.sheet().ask(words.of("window.practice.title"), body, cancel);
    }

    private Node tile(String id, Board board) {
        Button tile = Build.button("board-" + id, "", () -> begin(board), "tile");
        VBox text = Build.column(
                "tile-words",
                Build.prose(board.label().name(), "tile-title"),
                Build.prose(board.label().teaches(), "tile-about"));
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox inside = Build.row("tile-row", text);
        inside.getStyleClass().add("tile-wide");
        tile.setGraphic(inside);
        tile.setMaxWidth(Double.MAX_VALUE);
        tile.setAccessibleText(board.label().name() + ". " + board.label().teaches());
        return tile;
    }

    private void begin(Board board) {
        shell.sheet().close();
        begin(new Bench(board, Meter.middle(), new Random()));
    }

    /** @param bench is the clock of the job as well */
    void begin(Bench bench) {
        String name = bench.board().label().name();
        Course course = new Course(Procedure.builtIn(), new MemoryLog(name, bench));
        Desk desk = new Desk(course, bench, Optional.of(bench::waitSeconds));
        shell.show(JobPage.practice(shell, desk, bench, name));
    }
}
