package railtrim.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The icon is one drawing; the pictures kept beside it are drawn anew with {@code -Drailtrim.write-icon=true}. */
class IconTest {
    private static final Path FOLDER = Path.of("resources", "icon");

    private final Icons icons = new Icons(new Build(Path.of(""), Path.of("target")));

    @Test
    void theKeptPicturesAreWhatTheDrawingDraws() throws IOException {
        IconDrawing drawing = IconDrawing.of(FOLDER.resolve("railtrim.svg").toFile());
        for (int size : IconDrawing.SIZES) {
            Path kept = FOLDER.resolve(IconDrawing.name(size));
            BufferedImage drawn = drawing.draw(size);
            if (Boolean.getBoolean("railtrim.write-icon")) {
                ImageIO.write(drawn, "png", kept.toFile());
            }
            assertEquals(0, farthest(drawn, ImageIO.read(kept.toFile())), 3, kept + ": the difference of one pixel");
        }
    }

    /** Microsoft’s description of the format: a head of 6 bytes, 16 bytes for each picture, its length at 8 and its place at 12. */
    @Test
    void theWindowsIconHoldsEachSizeAsPicture() throws IOException {
        ByteBuffer file = ByteBuffer.wrap(icons.ico()).order(ByteOrder.LITTLE_ENDIAN);
        assertEquals(1, file.getShort(2));
        int count = file.getShort(4);
        assertTrue(count >= 5, "only " + count);
        for (int i = 0; i < count; i++) {
            int entry = 6 + 16 * i;
            int size = file.get(entry) == 0 ? 256 : Byte.toUnsignedInt(file.get(entry));
            assertEquals(
                    size,
                    picture(file.array(), file.getInt(entry + 12), file.getInt(entry + 8))
                            .getWidth());
        }
    }

    /** Apple’s description of the format: name and length of the whole, then of each picture, lengths with their heads. */
    @Test
    void theAppleIconHoldsPicturesThatFillItToTheEnd() throws IOException {
        ByteBuffer file = ByteBuffer.wrap(icons.icns());
        assertEquals("icns", name(file, 0));
        assertEquals(file.capacity(), file.getInt(4));
        int at = 8;
        while (at < file.capacity()) {
            int length = file.getInt(at + 4);
            int width = picture(file.array(), at + 8, length - 8).getWidth();
            // Published sizes: ic07 is 128 pixels wide, ic08 256, ic09 512; ic11 to ic14 are 32, 64, 256 and 512 for
            // fine screens.
            assertEquals(
                    switch (name(file, at)) {
                        case "ic07" -> 128;
                        case "ic08", "ic13" -> 256;
                        case "ic09", "ic14" -> 512;
                        case "ic11" -> 32;
                        case "ic12" -> 64;
                        default -> 0;
                    },
                    width);
            at += length;
        }
        assertEquals(file.capacity(), at);
    }

    private static String name(ByteBuffer file, int at) {
        return new String(Arrays.copyOfRange(file.array(), at, at + 4), StandardCharsets.US_ASCII);
    }

    private static BufferedImage picture(byte[] file, int at, int length) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file, at, length));
    }

    /** The largest difference of one colour of one pixel, 0 to 255. Another Java may round its edges otherwise. */
    private static int farthest(BufferedImage one, BufferedImage other) {
        int farthest = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                for (int shift = 0; shift < 32; shift += 8) {
                    int difference = (one.getRGB(x, y) >>> shift & 0xff) - (other.getRGB(x, y) >>> shift & 0xff);
                    farthest = Math.max(farthest, Math.abs(difference));
                }
            }
        }
        return farthest;
    }
}
