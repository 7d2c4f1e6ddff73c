package railtrim.window.picture;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.testfx.api.FxToolkit;

/** Draws pictures on a screen that nobody sees, measures them and keeps them as PNG. */
final class Screen {
    private static final Path FOLDER = Path.of("target", "pictures");

    private Screen() {}

    static <T> T on(Callable<T> work) {
        try {
            FxToolkit.registerPrimaryStage();
            CompletableFuture<T> done = new CompletableFuture<>();
            Platform.runLater(() -> {
                try {
                    done.complete(work.call());
                } catch (Throwable e) {
                    done.completeExceptionally(e);
                }
            });
            return done.get(60, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** The drawing in a scene of that size, styled and laid out; call it on the window's thread. */
    static PictureView laidOut(Drawing drawing, double width, double height) {
        return laidOut(drawing, Answering.none(), width, height);
    }

    static PictureView laidOut(Drawing drawing, Answering answering, double width, double height) {
        PictureView view = new PictureView(drawing, answering);
        StackPane root = new StackPane(view);
        root.getStylesheets().add(Pictures.style());
        new Scene(root, width, height);
        root.applyCss();
        root.resize(width, height);
        root.layout();
        root.applyCss();
        return view;
    }

    static List<Text> texts(Parent parent) {
        List<Text> found = new ArrayList<>();
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (node instanceof Text text && text.isVisible()) {
                found.add(text);
            } else if (node instanceof Parent inner && inner.isVisible()) {
                found.addAll(texts(inner));
            }
        }
        return found;
    }

    /** Where a node lies on the view. */
    static Bounds on(PictureView view, Node node) {
        return view.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    }

    static void dark(boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
    }

    /** Light and dark, at the preferred size, and small. */
    static void keep(String name, Drawing drawing) {
        on(() -> {
            for (boolean dark : new boolean[] {false, true}) {
                dark(dark);
                save(name + (dark ? "-dark" : "-light"), laidOut(drawing, 340, 420));
            }
            dark(false);
            save(name + "-small", laidOut(drawing, 260, 260));
            return null;
        });
    }

    static void save(String name, PictureView view) {
        WritableImage image = view.getScene().getRoot().snapshot(new SnapshotParameters(), null);
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(
                    SwingFXUtils.fromFXImage(image, null),
                    "png",
                    FOLDER.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
