package railtrim.window.print;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.print.JobSettings;
import javafx.print.PageLayout;
import javafx.print.PageRange;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import javafx.stage.Stage;

/** The system's own printers and print dialog. */
public final class SystemPrinting implements Printing {
    /** Pixels a point: 216 to the inch, fine enough for the smallest letters and small enough to hold one page in memory. */
    private static final double FINE = 3;

    /** On Linux, Java hands the pages to this program, and tells nobody where it is not there: the pages would be lost as if printed. */
    private static final Path LINE_PRINTER = Path.of("/usr/bin/lpr");

    private final Optional<Path> handsOn;

    public SystemPrinting() {
        this(System.getProperty("os.name").startsWith("Linux") ? Optional.of(LINE_PRINTER) : Optional.empty());
    }

    /** @param handsOn the program that has to be there, empty where none is needed */
    SystemPrinting(Optional<Path> handsOn) {
        this.handsOn = handsOn;
    }

    @Override
    public boolean ready() {
        if (handsOn.filter(program -> !Files.isExecutable(program)).isPresent()) {
            return false;
        }
        return Printer.getDefaultPrinter() != null || !Printer.getAllPrinters().isEmpty();
    }

    @Override
    public void print(Stage owner, PdfPages pages, Consumer<Outcome> done) {
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            done.accept(Outcome.FAILED);
            return;
        }
        wish(job, pages);
        if (!job.showPrintDialog(owner)) {
            job.cancelJob();
            done.accept(Outcome.LEFT);
            return;
        }
        Thread printing = new Thread(
                () -> {
                    boolean well = all(job, pages) && job.endJob();
                    Platform.runLater(() -> done.accept(well ? Outcome.PRINTED : Outcome.FAILED));
                },
                "printing");
        printing.start();
    }

    /** The paper the pages are made for, upright, with as little margin as the printer can do: the pages have their own. */
    private static void wish(PrinterJob job, PdfPages pages) {
        Printer printer = job.getPrinter();
        Paper paper = pages.width() > 600 ? Paper.NA_LETTER : Paper.A4;
        job.getJobSettings()
                .setPageLayout(printer.createPageLayout(
                        paper, javafx.print.PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM));
    }

    private static boolean all(PrinterJob job, PdfPages pages) {
        JobSettings settings = job.getJobSettings();
        for (int page = 0; page < pages.count(); page++) {
            if (wanted(settings.getPageRanges(), page + 1)
                    && !job.printPage(settings.getPageLayout(), sheet(settings.getPageLayout(), pages, page))) {
                return false;
            }
        }
        return true;
    }

    private static boolean wanted(PageRange[] ranges, int page) {
        if (ranges == null || ranges.length == 0) {
            return true;
        }
        for (PageRange range : ranges) {
            if (page >= range.getStartPage() && page <= range.getEndPage()) {
                return true;
            }
        }
        return false;
    }

    /** In its true size, so that a label has the size it says; made smaller only where the paper is. */
    private static Node sheet(PageLayout layout, PdfPages pages, int page) {
        ImageView view = new ImageView(pages.picture(page, FINE));
        view.setFitWidth(pages.width());
        view.setFitHeight(pages.height());
        double paperWidth = layout.getLeftMargin() + layout.getPrintableWidth() + layout.getRightMargin();
        double paperHeight = layout.getTopMargin() + layout.getPrintableHeight() + layout.getBottomMargin();
        double scale = Math.min(1, Math.min(paperWidth / pages.width(), paperHeight / pages.height()));
        Group sheet = new Group(view);
        sheet.getTransforms()
                .addAll(new Translate(-layout.getLeftMargin(), -layout.getTopMargin()), new Scale(scale, scale));
        return new Group(sheet);
    }
}
