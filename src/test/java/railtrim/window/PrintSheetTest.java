package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.BuiltIn;

/** What goes on paper is looked at first. */
class PrintSheetTest {
    @TempDir
    Path folder;

    @Test
    void whatIsPrintedIsWhatWasLookedAt() throws Exception {
        TestPrinting printer = new TestPrinting(true);
        try (Opened window = Opened.with(new TestSurroundings(folder, printer))) {
            open(window);
            String first = number(window);
            assertTrue(first.matches("Page 1 of \\d+"), first);
            window.press("page-later");
            window.until("the second page", () -> number(window).startsWith("Page 2 "));
            window.press("print-letter");
            window.until("the first page again", () -> !disabled(window, "print-go"));
            window.press("print-go");
            window.until("that it is printed", () -> told(window).equals(window.words.of("window.print.printed")));
            int pages = Integer.parseInt(number(window).replaceAll(".* ", ""));
            assertEquals(pages, printer.sheets.size());
            // US letter, points (ANSI/ASME Y14.1).
            assertEquals(612, printer.sheets.get(0).getWidth(), 1);
            assertEquals(792, printer.sheets.get(0).getHeight(), 1);
            assertTrue(inked(printer.sheets.get(0)));
            window.press("print-label");
            window.until("the label", () -> number(window).equals("Page 1 of 1") && !disabled(window, "print-go"));
            Set<String> nameless = new TreeSet<>();
            NamesTest.look(window, "print", nameless);
            assertEquals(Set.of(), nameless);
        }
    }

    @Test
    void withoutAPrinterTheWorksheetCanStillBeLookedAtAndKept() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.press("worksheet");
            window.until("a page", () -> pageShown(window));
            assertTrue(disabled(window, "print-go"));
            assertEquals(window.words.of("window.print.none"), told(window));
            window.press("print-save");
            window.until("where it is", () -> told(window).contains("blank worksheet.pdf"));
            assertTrue(Files.size(folder.resolve("jobs").resolve("blank worksheet.pdf")) > 0);
            window.press("print-close");
            assertTrue(window.has("new-job"));
        }
    }

    private void open(Opened window) throws Exception {
        Path file = Files.writeString(folder.resolve("demo.railtrim"), BuiltIn.text("demo-data/finished-job.railtrim"));
        window.fx(() -> {
            window.shell.open(file);
            Desk desk = window.shell.desk().orElseThrow();
            new Export(window.shell, desk, folder).print();
            return null;
        });
        window.layOut();
        window.until("a page", () -> pageShown(window));
    }

    private static boolean pageShown(Opened window) {
        StackPane sheet = (StackPane) window.node("preview");
        return ((ImageView) sheet.getChildren().get(0)).getImage() != null;
    }

    private static String number(Opened window) {
        return ((Label) window.node("preview-number")).getText();
    }

    private static String told(Opened window) {
        return ((Label) window.node("print-told")).getText();
    }

    private static boolean disabled(Opened window, String id) {
        return window.node(id).isDisabled();
    }

    private static boolean inked(Image page) {
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (page.getPixelReader().getColor(x, y).getBrightness() < 0.2) {
                    return true;
                }
            }
        }
        return false;
    }
}
