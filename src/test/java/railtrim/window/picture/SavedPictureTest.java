package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** A picture kept as a file holds what the window shows. */
class SavedPictureTest {
    @TempDir
    Path folder;

    @Test
    void theVectorFileHoldsEachLineOfWritingAndNoShapeWithoutColour() throws Exception {
        for (String name :
                List.of("ladder-all", "divider-out-adj-trimmer", "resistors-four", "log-full", "package-TO-220")) {
            Path file = folder.resolve(name + ".svg");
            List<String> written = Screen.on(() -> {
                Screen.dark(false);
                PictureView view = Screen.laidOut(Samples.all().get(name), 340, 420);
                Pictures.save(view, file);
                return Screen.texts(view).stream().map(text -> text.getText()).toList();
            });
            Document svg = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(Files.readAllBytes(file)));
            assertEquals(written, textOf(svg.getElementsByTagName("text")), name);
            String text = Files.readString(file, StandardCharsets.UTF_8);
            assertTrue(text.contains("<title>"), name);
            assertTrue(!text.contains("fill=\"none\"/>"), name + " has a shape that cannot be seen");
        }
    }

    @Test
    void theFileOfDotsIsThreeTimesAsFineAsTheSheet() throws Exception {
        Path file = folder.resolve("ladder.png");
        double wide = Screen.on(() -> {
            Screen.dark(true);
            PictureView view = Screen.laidOut(Samples.all().get("ladder-all"), 340, 420);
            Pictures.save(view, file);
            return view.sheetWidth();
        });
        assertEquals(3 * wide, ImageIO.read(file.toFile()).getWidth(), 3);
    }

    private static List<String> textOf(NodeList nodes) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }
}
