package railtrim.window;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import javafx.geometry.Rectangle2D;

/**
 * How the window looked and where it stood, from one start to the next. Only a convenience: what is missing or damaged is as at the very first
 * start, and where nothing can be written the window goes on without it.
 *
 * @param text size of the text, as a place in the theme's list of sizes
 * @param systemDark what the system was found to look like the last time
 * @param place on the screens, pixels; empty until the window was closed once
 */
record Remembered(Look look, int text, Optional<Rectangle2D> place, boolean maximized, boolean systemDark) {
    static final Remembered NOTHING = new Remembered(Look.SYSTEM, Theme.USUAL, Optional.empty(), false, false);

    private static final String FILE = "how-it-looked.properties";
    private static final long LARGEST_BYTES = 4096;
    private static final double LARGEST_PIXELS = 100_000;

    static Remembered in(Path folder) {
        Path file = folder.resolve(FILE);
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST_BYTES) {
                return NOTHING;
            }
            Properties kept = new Properties();
            kept.load(new StringReader(Files.readString(file)));
            return of(kept);
        } catch (IOException | IllegalArgumentException damaged) {
            return NOTHING;
        }
    }

    private static Remembered of(Properties kept) {
        Look look = Stream.of(Look.values())
                .filter(each -> each.id().equals(kept.getProperty("look")))
                .findFirst()
                .orElse(NOTHING.look());
        int text = number(kept, "text").map(Double::intValue).orElse(NOTHING.text());
        List<Double> corners = Stream.of("x", "y", "width", "height")
                .flatMap(key -> number(kept, key).stream())
                .toList();
        boolean whole = corners.size() == 4 && corners.get(2) > 0 && corners.get(3) > 0;
        Optional<Rectangle2D> place = whole
                ? Optional.of(new Rectangle2D(corners.get(0), corners.get(1), corners.get(2), corners.get(3)))
                : Optional.empty();
        return new Remembered(look, text, place, yes(kept, "maximized"), yes(kept, "system-dark"));
    }

    private static boolean yes(Properties kept, String key) {
        return Boolean.parseBoolean(kept.getProperty(key));
    }

    private static Optional<Double> number(Properties kept, String key) {
        String text = kept.getProperty(key, "");
        return text.matches("-?\\d{1,6}(\\.\\d{1,4})?")
                ? Optional.of(Double.valueOf(text)).filter(value -> Math.abs(value) < LARGEST_PIXELS)
                : Optional.empty();
    }

    /** @return false where it could not be written */
    boolean keepIn(Path folder) {
        StringBuilder lines = new StringBuilder();
        lines.append("look=").append(look.id()).append("\ntext=").append(text);
        lines.append("\nmaximized=").append(maximized);
        lines.append("\nsystem-dark=").append(systemDark).append('\n');
        place.ifPresent(at -> lines.append(String.format(
                Locale.ROOT,
                "x=%.1f%ny=%.1f%nwidth=%.1f%nheight=%.1f%n",
                at.getMinX(),
                at.getMinY(),
                at.getWidth(),
                at.getHeight())));
        try {
            Files.createDirectories(folder);
            Path fresh = Files.writeString(folder.resolve(FILE + ".new"), lines);
            Files.move(fresh, folder.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
