package railtrim.window;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.JobCheck;
import railtrim.job.Mark;

/** Run in a sandbox of its own, where a disk was mounted at {@code jobs}: works in the window until the disk fails, and says what the window shows. */
final class WindowOnADisk {
    private static final String FIELD = "board.name";

    private final Path folder;
    private final Path job;
    private final Opened window;

    private WindowOnADisk(Path folder, Opened window) {
        this.folder = folder;
        this.job = folder.resolve("jobs").resolve("organ.railtrim");
        this.window = window;
    }

    /** @param arguments what happens to the disk, and the folder the window works in */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[1]);
        try (Opened window = Opened.in(folder)) {
            WindowOnADisk work = new WindowOnADisk(folder, window);
            switch (arguments[0]) {
                case "full" -> work.full();
                case "gone" -> work.gone();
                default -> work.readOnly();
            }
        }
        System.out.flush();
        // The toolkit of a screen in memory complains while it is taken down.
        Runtime.getRuntime().halt(0);
    }

    /** Until the disk takes no more; then a copy on the same disk is refused in words, and one on another goes on. */
    private void full() throws Exception {
        create();
        say("before anything is measured: " + told("job.disk-nearly-full", job.toString()));
        fill();
        int typed = 0;
        while (!window.has("trouble") && typed < 5) {
            type("voice board " + typed + " " + "x".repeat(1900));
            typed++;
        }
        stuck("job.not-saved");
        window.press("save-elsewhere");
        copyInto(job.getParent(), "copy");
        say("refused there in words: "
                + (window.has("job-problem") && !text("job-problem").isEmpty()));
        goOnElsewhere();
    }

    /** The drive is pulled out while the job is open. */
    private void gone() throws Exception {
        create();
        type("voice board");
        new ProcessBuilder("umount", "-l", job.getParent().toString())
                .inheritIO()
                .start()
                .waitFor();
        type("voice board, rev 3");
        stuck("job.gone");
        window.press("save-elsewhere");
        goOnElsewhere();
    }

    private void readOnly() throws Exception {
        window.fx(() -> {
            window.shell.open(job);
            return null;
        });
        say("before anything is measured: " + told("job.read-only-folder", job.toString()));
        say("save elsewhere: " + window.has("save-elsewhere"));
        window.press("save-elsewhere");
        copyInto(job.getParent(), "copy");
        say("on the same disk: "
                + told("job.cannot-create", job.resolveSibling("copy.railtrim").toString()));
        goOnElsewhere();
    }

    /** And still told where the same is tried once more. */
    private void stuck(String trouble) throws Exception {
        window.press(Ids.enter(FIELD));
        say("told: " + told(trouble, job.toString()));
        say("band: " + text("saved").equals(window.words.of("window.band.saved.not")));
    }

    private void goOnElsewhere() throws Exception {
        List<Entry> told = entries();
        String typed = typed();
        copyInto(Files.createDirectories(folder.resolve("other")), "copy");
        window.until("the copy", () -> !window.has("save-elsewhere"));
        say("nothing lost: " + copied().subList(0, told.size()).equals(told));
        say("still typed: " + typed().equals(typed));
        readCautions();
        type("voice board, rev 4");
        say("goes on: "
                + copied().get(copied().size() - 1).fact().equals(new Fact.Note("scope", FIELD, "voice board, rev 4")));
    }

    private void create() throws Exception {
        window.fx(() -> {
            window.shell.create(job, "organ");
            return null;
        });
        readCautions();
    }

    private void readCautions() throws Exception {
        window.fx(() -> {
            Desk desk = window.shell.desk().orElseThrow();
            while (!desk.shown().open().isEmpty()) {
                desk.acknowledge(desk.shown().open().get(0));
            }
            return null;
        });
        window.layOut();
    }

    private void type(String text) throws Exception {
        window.fx(() -> {
            ((TextField) window.node(Ids.field(FIELD))).setText(text);
            return null;
        });
        window.press(Ids.enter(FIELD));
    }

    private void fill() {
        try (OutputStream out = Files.newOutputStream(job.resolveSibling("filler"))) {
            while (true) {
                out.write(new byte[1024]);
            }
        } catch (IOException full) {
            say("full");
        }
    }

    private void copyInto(Path into, String name) throws Exception {
        window.fx(() -> {
            ((TextField) window.node("job-name")).setText(name);
            ((TextField) window.node("job-folder")).setText(into.toString());
            return null;
        });
        window.press("job-create");
    }

    /** Whether the words are to be read somewhere in the window. */
    private boolean told(String key, String file) throws Exception {
        String words = window.words.of(key, file, "0").replaceAll("[:;(].*", "").strip();
        return window.fx(() -> window.shell.scene().getRoot().lookupAll(".label").stream()
                .filter(Opened::shown)
                .anyMatch(node -> ((Label) node).getText().startsWith(words)));
    }

    private String text(String id) {
        return ((Label) window.node(id)).getText();
    }

    private String typed() {
        return ((TextField) window.node(Ids.field(FIELD))).getText();
    }

    /** What was told to be saved. */
    private List<Entry> entries() {
        return window.shell.desk().orElseThrow().state().job().entries();
    }

    private List<Entry> copied() {
        Path copy = folder.resolve("other/copy.railtrim");
        return JobCheck.of(copy, Mark.keptIn(folder.resolve("own"))).job().entries();
    }

    private static void say(String line) {
        System.out.println("- " + line);
    }
}
