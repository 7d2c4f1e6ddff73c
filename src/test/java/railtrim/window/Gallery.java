package railtrim.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Entry;
import railtrim.job.Mark;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.report.shelf.SavedJobs;

/**
 * Draws every step of a whole job in each of its states, light and dark, in two sizes and once in long words, to {@code target/gallery} with a page
 * that shows them all. Not run with the tests: {@code mvn test -Dtest=Gallery}. With {@code -Dgallery.only=REGEX} it draws some pages only, with
 * {@code -Dgallery.looks=1024x700-28,2560x1440-14-dark} other sizes of window and text.
 */
class Gallery {
    private static final Path FOLDER = Path.of("target", "gallery");
    private static final String ONLY = System.getProperty("gallery.only", ".*");
    private static final String LOOKS = System.getProperty(
            "gallery.looks", "1240x800-14,1240x800-14-dark,1024x700-21,1024x700-21-dark,1240x800-14-long");
    /** The boards: one that is drawn step by step, and one of another kind for what the first does not have. */
    private static final List<String> BOARDS = List.of("sound-board");

    @TempDir
    Path folder;

    private final ExecutorService writer = Executors.newSingleThreadExecutor();
    private final Map<String, Set<String>> drawn = new LinkedHashMap<>();

    /** @param name for example {@code 1024x700-21-dark}: width, height and text size in pixels */
    private record Look(String name, int width, int height, int text, boolean dark, boolean longWords) {
        static Look of(String name) {
            String[] parts = name.split("[x-]");
            List<String> more = Arrays.asList(parts).subList(3, parts.length);
            return new Look(
                    name,
                    Integer.parseInt(parts[0]),
                    Integer.parseInt(parts[1]),
                    Integer.parseInt(parts[2]),
                    more.contains("dark"),
                    more.contains("long"));
        }
    }

    @Test
    void everyStepInEachOfItsStates() throws Exception {
        List<Moment> moments = BOARDS.stream()
                .flatMap(board -> Moments.of(board).stream())
                .filter(moment -> moment.name().matches(ONLY))
                .toList();
        List<Look> looks = Arrays.stream(LOOKS.split(",")).map(Look::of).toList();
        screenFor(looks);
        for (Look look : looks) {
            draw(look, moments);
        }
        writer.shutdown();
        if (!writer.awaitTermination(5, TimeUnit.MINUTES)) {
            throw new AssertionError("not all pictures could be written");
        }
        Files.writeString(FOLDER.resolve("index.html"), index(looks));
    }

    /** The headless screen, which must hold the largest window and is made once. */
    private static void screenFor(List<Look> looks) {
        int width = looks.stream().mapToInt(Look::width).max().orElseThrow();
        int height = looks.stream().mapToInt(Look::height).max().orElseThrow();
        System.setProperty("headless.geometry", Math.max(1280, width) + "x" + Math.max(800, height) + "-32");
    }

    private void draw(Look look, List<Moment> moments) throws Exception {
        Path own = Files.createTempDirectory(folder, "own");
        try (Opened window =
                Opened.with(look.longWords() ? LongWords.words() : railtrim.procedure.Words.english(), own)) {
            window.size(look.width(), look.height(), look.text());
            window.fx(() -> {
                window.shell.theme().dark(look.dark());
                return null;
            });
            entrance(window, look);
            Procedure procedure = Procedure.builtIn();
            for (Moment moment : moments) {
                window.show(moment, procedure);
                keep(window, look, moment.step(), moment.state());
            }
        }
    }

    /** The pages before a job, and a job on the practice bench. */
    private void entrance(Opened window, Look look) throws Exception {
        for (String page : List.of("start", "new-job", "practice")) {
            if (!page.equals("start")) {
                window.press(page);
            }
            keep(window, look, page, "page");
            leaveSheet(window);
        }
        if ("shelf page".matches(ONLY)) {
            shelf(window, look);
        }
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(7));
        window.fx(() -> {
            Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
            window.shell.show(JobPage.practice(window.shell, course, bench));
            return null;
        });
        keep(window, look, "practice", "bench");
    }

    /** A shelf with several jobs on it, one of them unfinished and one file that is none, and where they fail. */
    private void shelf(Opened window, Look look) throws Exception {
        Path jobs = Files.createTempDirectory(folder, "shelf");
        Mark mark = Mark.keptIn(window.shell.surroundings().ownFolder());
        Rehearsal rehearsal = new Rehearsal(Procedure.builtIn(), Meter.middle());
        for (int i = 1; i <= 4; i++) {
            List<Entry> entries = rehearsal
                    .play(Practice.board(i == 4 ? "sound-board" : "network-blade"), i)
                    .job()
                    .entries();
            String name = i == 4 ? "organ’s sound board" : "blade " + i + " at " + (75 + 25 * i) + " MHz";
            SavedJobs.save(jobs, name, i == 3 ? entries.subList(0, entries.size() * 2 / 3) : entries, mark);
        }
        Files.writeString(jobs.resolve("no job.railtrim"), "shopping list\n");
        window.press("shelf");
        window.fx(() -> {
            TextField where = (TextField) window.node("shelf-folder");
            where.setText(jobs.toString());
            where.getOnAction().handle(null);
            return null;
        });
        window.until(
                "five files",
                () -> ((TableView<?>) window.node("shelf-table")).getItems().size() == 5);
        keep(window, look, "shelf", "page");
        window.press("shelf-share");
        keep(window, look, "shelf", "share");
        window.press("job-cancel");
        window.press("shelf-compare");
        keep(window, look, "shelf", "compared");
        window.press("shelf-leave");
        window.press("worksheet");
        window.layOut();
        window.until(
                "a page",
                () -> ((ImageView) ((StackPane) window.node("preview"))
                                        .getChildren()
                                        .get(0))
                                .getImage()
                        != null);
        keep(window, look, "print", "worksheet");
        leaveSheet(window);
    }

    private static void leaveSheet(Opened window) throws Exception {
        window.fx(() -> {
            window.shell.sheet().leave();
            return null;
        });
    }

    private void keep(Opened window, Look look, String step, String state) throws Exception {
        if (!(step + " " + state).matches(ONLY)) {
            return;
        }
        window.frames();
        BufferedImage picture =
                window.fx(() -> SwingFXUtils.fromFXImage(window.shell.scene().snapshot(null), null));
        Path file = FOLDER.resolve(look.name()).resolve(file(step, state));
        drawn.computeIfAbsent(step, each -> new LinkedHashSet<>()).add(state);
        writer.execute(() -> write(picture, file));
    }

    private static String file(String step, String state) {
        return (step + "-" + state).replaceAll("[^A-Za-z0-9]+", "-") + ".png";
    }

    private static void write(BufferedImage picture, Path file) {
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String index(List<Look> looks) {
        List<String> rows = new ArrayList<>();
        for (Look look : looks) {
            rows.add("<h2 id=\"" + look.name() + "\">" + look.name() + "</h2>");
            drawn.forEach((step, states) -> rows.add("<h3>" + step + "</h3><p>"
                    + states.stream().map(state -> figure(look, step, state)).collect(Collectors.joining()) + "</p>"));
        }
        String links = looks.stream()
                .map(look -> "<a href=\"#" + look.name() + "\">" + look.name() + "</a>")
                .collect(Collectors.joining(" "));
        return "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Railtrim, every step</title><style>"
                + "body{font-family:sans-serif;background:#888;color:#000}figure{display:inline-block;margin:.5em}"
                + "img{width:400px;display:block}</style></head><body><h1>Railtrim, every step in each of its states</h1><p>"
                + links + "</p>" + String.join("\n", rows) + "</body></html>\n";
    }

    private static String figure(Look look, String step, String state) {
        String file = look.name() + "/" + file(step, state);
        return "<figure><a href=\"" + file + "\"><img loading=\"lazy\" alt=\"" + step + ", " + state + "\" src=\""
                + file + "\"></a><figcaption>" + state + "</figcaption></figure>";
    }
}
