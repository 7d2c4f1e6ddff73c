package railtrim.window;

import java.util.List;
import java.util.Random;
import javafx.scene.control.Button;
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
import railtrim.window.kit.Tile;

/** A rehearsal of the whole job on a board that cannot be harmed. */
final class Practice {
    /** The boards that travel with the program, the plainest first. */
    static final List<String> BOARDS = List.of(
            "sound-board", "storage-controller", "network-blade", "delay-unit", "studio-clock", "playout-module");

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
            Tile tile = tile(id, board(id));
            tile.button().getStyleClass().add("first-focus");
            body.getChildren().add(tile);
        }
        Button cancel = Build.button("practice-cancel", words.of("window.cancel"), shell.sheet()::close, "plain");
        shell.sheet().ask(words.of("window.practice.title"), body, cancel);
    }

    /** By its story: what it teaches is told at its end. */
    private Tile tile(String id, Board board) {
        return new Tile("board-" + id, board.label().name(), board.label().story(), () -> begin(board));
    }

    /** The board as its maker left it, on an empty bench. */
    void begin(Board board) {
        shell.sheet().close();
        begin(new Bench(board, Meter.middle(), new Random()));
    }

    /** @param bench is the clock of the job as well */
    void begin(Bench bench) {
        String name = bench.board().label().name();
        Course course = new Course(Procedure.builtIn(), new MemoryLog(name, bench));
        shell.show(JobPage.practice(shell, course, bench));
    }
}
