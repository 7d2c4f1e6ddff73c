package railtrim.window.print;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Words;
import railtrim.window.kit.Aside;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.PlainScroll;

/** A document as it will come out of the printer, one page at a time. Pages are drawn beside the window's own thread. */
public final class Preview {
    /** Pixels a point on the screen, and how many times finer the picture is drawn. */
    private static final double SCALE = 1.1;

    private static final double FINER = 1.5;

    private final Words words;
    private final ImageView picture = new ImageView();
    private final StackPane sheet = new StackPane(picture);
    private final ScrollPane scroll = new PlainScroll(new StackPane(sheet));
    private final Label number = Build.label("", "preview-number");
    private final Button earlier;
    private final Button later;
    private final VBox box;
    private Optional<PdfPages> shown = Optional.empty();
    private int page;
    private int asked;

    public Preview(Words words) {
        this.words = words;
        earlier = Build.button("page-earlier", words.of("window.print.earlier"), () -> turn(-1), "plain");
        later = Build.button("page-later", words.of("window.print.later"), () -> turn(1), "plain");
        Handle.give(sheet, "preview");
        sheet.getStyleClass().add("preview-page");
        sheet.setMaxSize(StackPane.USE_PREF_SIZE, StackPane.USE_PREF_SIZE);
        sheet.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        Handle.give(number, "preview-number");
        scroll.setFitToWidth(true);
        scroll.setAccessibleText(words.of("window.print.preview"));
        scroll.getStyleClass().add("preview");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        box = Build.column("preview-box", Build.row("preview-bar", earlier, number, later), scroll);
    }

    public Node node() {
        return box;
    }

    /** The document in view, once it is made. */
    public Optional<PdfPages> pages() {
        return shown;
    }

    /** On the window's thread. @param document slow; @param ready called once it can be printed */
    public void show(Supplier<byte[]> document, Consumer<PdfPages> ready) {
        leave();
        int mine = asked;
        picture.setImage(null);
        tell(words.of("window.print.making"));
        Aside.run("preview", () -> new PdfPages(document.get()), made -> {
            if (mine != asked) {
                made.close();
                return;
            }
            shown = Optional.of(made);
            page = 0;
            turn(0);
            ready.accept(made);
        });
    }

    /** What is still being made is not shown any more. */
    public void leave() {
        asked++;
        // A page may just be drawn from it, and closing waits for that.
        shown.ifPresent(made -> Aside.run("preview", () -> made.close(), () -> {}));
        shown = Optional.empty();
    }

    private void turn(int by) {
        shown.ifPresent(made -> {
            page = Math.max(0, Math.min(made.count() - 1, page + by));
            tell(words.of("report.page", Integer.toString(page + 1), Integer.toString(made.count())));
            earlier.setDisable(page == 0);
            later.setDisable(page == made.count() - 1);
            draw(made, page, ++asked);
        });
    }

    private void draw(PdfPages made, int wanted, int mine) {
        Aside.run("preview", () -> made.picture(wanted, FINER * SCALE), image -> {
            if (mine == asked) {
                picture.setImage(image);
                picture.setFitWidth(made.width() * SCALE);
                picture.setFitHeight(made.height() * SCALE);
                scroll.setVvalue(0);
            }
        });
    }

    private void tell(String text) {
        number.setText(text);
        sheet.setAccessibleText(text);
        earlier.setDisable(true);
        later.setDisable(true);
    }
}
