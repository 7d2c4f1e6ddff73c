package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderStroke;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.window.kit.Handle;

/**
 * Every page of a whole job in both themes, with the colours that the style sheets really came out at: text at least 4.5 : 1, what can be worked at
 * least 3 : 1 against what it lies on, and a focus that shows (WCAG 2.1: 1.4.3, 1.4.11, 2.4.7). What is disabled is exempt there, and here.
 */
class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double CONTROL = 3;

    @TempDir
    Path folder;

    private final Set<String> faint = new TreeSet<>();
    private final Set<String> focused = new HashSet<>();
    private int texts;
    private double least = 21;

    @Test
    void contrastIsCountedAsThePublishedFormulaDoes() {
        assertEquals(21, Painted.contrast(Color.BLACK, Color.WHITE), 1e-9);
        // #767676 on white is the well-known last grey that passes 4.5 : 1 (4.54).
        assertEquals(4.54, Painted.contrast(Color.web("#767676"), Color.WHITE), 0.005);
        assertEquals(Color.gray(0.5), Painted.over(Color.BLACK, 0.5, Color.WHITE));
    }

    @ParameterizedTest(name = "dark: {0}")
    @ValueSource(booleans = {false, true})
    void allThatIsWrittenCanBeReadAndAllThatCanBeWorkedCanBeSeen(boolean dark) throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(5));
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.theme().dark(dark);
                return null;
            });
            look(window, "start");
            sheets(window);
            Desk desk = window.fx(() -> {
                Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
                JobPage page = JobPage.practice(window.shell, course, bench);
                window.shell.show(page);
                return page.desk();
            });
            walk(window, desk, bench, dark);
        }
        System.out.printf(
                Locale.ROOT,
                "contrast, %s: %d texts, the faintest %.2f : 1; focus looked at on %d kinds of control%n",
                dark ? "dark" : "light",
                texts,
                least,
                focused.size());
        assertEquals(Set.of(), faint);
        assertTrue(texts > 2000 && focused.size() > 15, texts + " texts, " + focused.size() + " kinds of control");
    }

    /** Steps that are done look alike in both themes but for their colours; they are looked at in one. */
    private void walk(Opened window, Desk desk, Bench bench, boolean dark) throws Exception {
        Hand hand = new Hand(bench);
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1500; i++) {
            String page = desk.state()
                            .card()
                            .map(card -> card.getClass().getSimpleName())
                            .orElse("")
                    + desk.shown().step().id()
                    + desk.shown().open().isEmpty()
                    + desk.working();
            if (seen.add(page)) {
                look(window, page);
            }
            Answer answer = hand.next(desk.state(), desk.course());
            if (answer instanceof Answer.Done) {
                break;
            }
            window.fx(() -> {
                Walk.give(desk, answer);
                return null;
            });
            if (!dark && desk.nextOpen() && seen.add(desk.shown().step().id() + " done")) {
                look(window, desk.shown().step().id() + " done");
            }
            window.fx(() -> {
                desk.next();
                return null;
            });
        }
        look(window, "done");
    }

    private void sheets(Opened window) throws Exception {
        for (Runnable sheet : List.<Runnable>of(
                new Practice(window.shell)::ask,
                new LookSheet(window.shell)::ask,
                new HelpSheet(window.shell)::glossary,
                () -> window.shell.askBeforeLeaving(() -> {}))) {
            window.fx(() -> {
                sheet.run();
                return null;
            });
            look(window, "sheet");
            window.fx(() -> {
                window.shell.sheet().close();
                return null;
            });
        }
    }

    private void look(Opened window, String page) throws Exception {
        side(window, page.hashCode() % 3 == 0 ? "tab-bench" : "tab-picture");
        window.layOut();
        window.layOut();
        window.fx(() -> {
            Painted.walk(window.shell.scene().getRoot(), (node, painted) -> look(page, node, painted));
            return null;
        });
    }

    /** On most pages the picture, on some the bench. */
    private static void side(Opened window, String tab) throws Exception {
        if (window.has(tab)) {
            window.fx(() -> {
                ((ToggleButton) window.node(tab)).fire();
                return null;
            });
        }
    }

    private void look(String page, Node node, Painted painted) {
        if (node.isDisabled() || node instanceof ScrollBar) {
            return;
        }
        if (node instanceof Text text && !text.getText().isBlank() && text.getFill() instanceof Color fill) {
            Point2D middle = Painted.middle(node);
            Color ground = painted.under(node, middle);
            double contrast = Painted.contrast(Painted.over(fill, Painted.opacity(node), ground), ground);
            texts++;
            least = Math.min(least, contrast);
            note(contrast < TEXT, page, node, "“" + text.getText() + "”", contrast);
        } else if (node instanceof Control control && control.isFocusTraversable() && !(node instanceof ScrollPane)) {
            lookAtFocus(page, control, painted);
        }
    }

    /** One of each kind; what is only text, such as a link, has its text looked at. */
    private void lookAtFocus(String page, Control control, Painted painted) {
        if (!focused.add(control.getStyleClass()
                + control.getPseudoClassStates().toString().replace("focused", ""))) {
            return;
        }
        Bounds at = control.localToScene(control.getLayoutBounds());
        List<Color> grounds = List.of(
                painted.under(control.getParent(), new Point2D(at.getMinX() - 2, at.getCenterY())),
                painted.under(control.getParent(), new Point2D(at.getCenterX(), at.getMaxY() + 2)));
        List<Object> before = dress(control);
        Node had = control.getScene().getFocusOwner();
        control.requestFocus();
        control.applyCss();
        if (control != had) {
            note(before.equals(dress(control)), page, control, "focus does not show", 0);
        }
        double ring = grounds.stream()
                .mapToDouble(ground -> ring(control, ground))
                .max()
                .orElseThrow();
        note(ring < CONTROL, page, control, "focus ring", ring);
        if (had != null) {
            had.requestFocus();
            control.applyCss();
        }
    }

    private static List<Object> dress(Region region) {
        return java.util.Arrays.asList(region.getBorder(), region.getBackground(), region.getEffect());
    }

    private static double ring(Region region, Color ground) {
        if (region.getBorder() == null) {
            return 1;
        }
        return region.getBorder().getStrokes().stream()
                .map(BorderStroke::getTopStroke)
                .filter(Color.class::isInstance)
                .map(Color.class::cast)
                .filter(Objects::nonNull)
                .mapToDouble(stroke -> Painted.contrast(Painted.over(stroke, 1, ground), ground))
                .max()
                .orElse(1);
    }

    private void note(boolean bad, String page, Node node, String what, double contrast) {
        if (bad) {
            faint.add(String.format(
                            Locale.ROOT,
                            "%.2f %s, %s#%s",
                            contrast,
                            what,
                            node.getParent().getStyleClass(),
                            Handle.of(node))
                    + (faint.size() < 40 ? " on " + page : ""));
        }
    }
}
