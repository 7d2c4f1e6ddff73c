package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Every picture in every state, light, dark and small, to {@code target/pictures}, for people to look at: {@code mvn test -Dtest=PictureGallery}. */
class PictureGallery {
    @Test
    void everyPictureCanBeLookedAt() throws Exception {
        Samples.all().forEach(Screen::keep);
        for (String name : Samples.all().keySet()) {
            assertTrue(Files.size(Path.of("target/pictures", name + "-light.png")) > 1000, name);
        }
    }
}
