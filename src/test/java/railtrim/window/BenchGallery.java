package railtrim.window;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.practice.Bench;
import railtrim.quantity.Meter;

/**
 * Draws the practice bench in what can become of it, for people to look at, to {@code target/gallery/bench}. Not run with the tests:
 * {@code mvn test -Dtest=BenchGallery}, with {@code -Dgallery.looks=1024x700-21,1280x800-14-dark} for other windows.
 */
class BenchGallery {
    private static final Path FOLDER = Path.of("target", "gallery", "bench");
    private static final String LOOKS =
            System.getProperty("gallery.looks", "1280x800-14,1280x800-14-dark,1024x700-21,1024x700-21-dark");

    @TempDir
    Path folder;

    private Opened window;
    private String look;

    @Test
    void whatCanBecomeOfTheBench() throws Exception {
        for (String each : LOOKS.split(",")) {
            look = each;
            String[] parts = each.split("[x-]");
            try (Opened opened = Opened.in(Files.createTempDirectory(folder, "own"))) {
                window = opened;
                window.size(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
                window.fx(() -> {
                    window.shell.theme().dark(each.endsWith("dark"));
                    return null;
                });
                harmless();
                careless();
                stopped();
                finished();
            }
        }
    }

    private BenchHand begin(String board, String step) throws Exception {
        Bench bench = new Bench(Practice.board(board), Meter.middle(), new Random(11));
        return new BenchHand(window, BenchHand.sitDown(window, bench, step), bench.board());
    }

    private void harmless() throws Exception {
        BenchHand hand = begin("studio-clock", "");
        keep("fresh", "");
        press(hand, "bench-hint", "meter-ohms", "hold-together");
        keep("hint and tips together", "");
        press(hand, "bench-power", "pad-adjust", "pad-ground");
        keep("ohms on a live board", "");
        press(hand, "meter-volts", "pad-output", "pad-ground", "meter-range");
        keep("too small a range", "");
        press(hand, "meter-range", "meter-range", "meter-range", "meter-range", "bench-other-load");
        for (int i = 0; i < 20; i++) {
            hand.press("bench-minute");
        }
        keep("hot", "pad-ground");
        press(hand, "pad-input", "pad-ground");
        keep("input", "pad-ground");
        keep("power", "bench-warmth");
    }

    private void careless() throws Exception {
        BenchHand hand = begin("sound-board", "solder");
        hand.press("trimmer-fetch");
        keep("in the hand", "trimmer-solder");
        press(hand, "trimmer-first-adjust", "trimmer-second-output", "trimmer-manner-plenty");
        keep("choosing leads", "trimmer-solder");
        press(hand, "trimmer-solder", "bench-look");
        keep("bridge, board", "pad-ground");
        keep("bridge, parts", "bench-joints");
        press(hand, "bench-clean", "trimmer-remove");
        press(
                hand,
                "trimmer-first-adjust",
                "trimmer-second-ground",
                "trimmer-manner-touch",
                "trimmer-solder",
                "bench-look");
        keep("dry joint, board", "pad-ground");
        keep("dry joint, parts", "bench-joints");
        press(hand, "trimmer-remove");
        press(hand, "trimmer-first-input", "trimmer-second-ground", "trimmer-manner-plenty", "trimmer-solder");
        press(hand, "bench-power", "meter-volts", "pad-output", "pad-ground");
        keep("blown", "");
        keep("blown, board", "pad-ground");
    }

    private void stopped() throws Exception {
        BenchHand hand = begin("playout-module", "");
        hand.work();
        keep("lesson", "");
    }

    private void finished() throws Exception {
        BenchHand hand = begin("sound-board", "record");
        press(hand, "bench-power", "meter-ohms", "hold-board", "pad-output", "pad-ground", "bench-power");
        hand.work();
        keep("lesson of a finished job", "");
        press(hand, "tab-papers");
        keep("papers", "");
    }

    private static void press(BenchHand hand, String... ids) throws Exception {
        for (String id : List.of(ids)) {
            hand.press(id);
        }
    }

    /** @param inSight what the bench is scrolled to; empty for the top */
    private void keep(String state, String inSight) throws Exception {
        window.settle();
        window.layOut();
        window.fx(() -> {
            if (!inSight.isEmpty()) {
                scrollTo(window.node(inSight));
            }
            return null;
        });
        window.layOut();
        BufferedImage picture =
                window.fx(() -> SwingFXUtils.fromFXImage(window.shell.scene().snapshot(null), null));
        Path file = FOLDER.resolve(look).resolve(state.replaceAll("[^a-z]+", "-") + ".png");
        Files.createDirectories(file.getParent());
        ImageIO.write(picture, "png", file.toFile());
    }

    private static void scrollTo(Node node) {
        Node each = node;
        while (!(each instanceof ScrollPane)) {
            each = each.getParent();
        }
        ScrollPane pane = (ScrollPane) each;
        double content = pane.getContent().getLayoutBounds().getHeight();
        double view = pane.getViewportBounds().getHeight();
        double bottom = pane.getContent()
                .sceneToLocal(node.localToScene(node.getBoundsInLocal()))
                .getMaxY();
        pane.setVvalue(Math.max(0, Math.min(1, (bottom + 8 - view) / Math.max(1, content - view))));
    }
}
