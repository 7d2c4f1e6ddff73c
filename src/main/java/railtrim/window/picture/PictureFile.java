package railtrim.window.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javax.imageio.ImageIO;

/** Keeps a picture as a file, in the colours it is seen in: as vectors where the name ends in {@code .svg}, else as PNG. */
final class PictureFile {
    /** Pixels for each unit of the sheet: sharp on paper at the size it has on the screen. */
    private static final double FINE = 3;

    private PictureFile() {}

    static void write(PictureView view, Path file) throws IOException {
        if (file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".svg")) {
            Files.writeString(file, Svg.of(view), StandardCharsets.UTF_8);
        } else {
            Files.write(file, png(image(view)));
        }
    }

    private static WritableImage image(PictureView view) {
        SnapshotParameters how = new SnapshotParameters();
        how.setFill(Svg.paper(view));
        double scale = FINE * view.sheetWidth() / view.getWidth();
        how.setTransform(new Scale(scale, scale));
        return view.snapshot(how, null);
    }

    private static byte[] png(WritableImage image) throws IOException {
        int wide = (int) image.getWidth();
        int high = (int) image.getHeight();
        int[] pixels = new int[wide * high];
        image.getPixelReader().getPixels(0, 0, wide, high, PixelFormat.getIntArgbInstance(), pixels, 0, wide);
        BufferedImage dots = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        dots.setRGB(0, 0, wide, high, pixels, 0, wide);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(dots, "png", bytes);
        return bytes.toByteArray();
    }
}
