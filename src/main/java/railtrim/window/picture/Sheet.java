package railtrim.window.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import railtrim.procedure.Words;
import railtrim.window.kit.Together;
import railtrim.window.picture.Detail.Area;

/** What a picture is drawn on: marks collected in the order they lie on one another. */
final class Sheet {
    private static final String MORE = "…";

    /** Letters become so much smaller before a word is cut off: first the size as meant. */
    private static final double[] PARTS = {1, 0.94, 0.88, 0.82, 0.76, 0.7};

    private final double width;
    private final double height;
    private final Ruler ruler;
    private final Words words;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Detail> details = new ArrayList<>();

    /** @param words which say how numbers are written */
    Sheet(double width, double height, Ruler ruler, Words words) {
        this.words = words;
        this.width = width;
        this.height = height;
        this.ruler = ruler;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    List<Mark> marks() {
        return Collections.unmodifiableList(marks);
    }

    List<Detail> details() {
        return Collections.unmodifiableList(details);
    }

    /** What is there tells more when it is pointed at; in the order in which the keyboard goes through them. */
    void detail(String says, Area... areas) {
        details.add(new Detail(List.of(areas), says, Optional.empty()));
    }

    /** As above, and pressing it answers a field: with one answer, or where that is empty with one to choose. */
    void asks(String field, Optional<String> answer, String says, Area... areas) {
        details.add(new Detail(List.of(areas), says, Optional.of(new Detail.Asks(field, answer))));
    }

    void line(double x1, double y1, double x2, double y2, Ink ink) {
        marks.add(new Mark.Line(x1, y1, x2, y2, ink));
    }

    void box(double x, double y, double boxWidth, double boxHeight, double round, Ink ink) {
        marks.add(new Mark.Box(x, y, boxWidth, boxHeight, round, ink));
    }

    void disc(double x, double y, double radius, Ink ink) {
        marks.add(new Mark.Disc(x, y, radius, ink));
    }

    /** @param points x and y in turn */
    void strokes(Ink ink, double... points) {
        marks.add(new Mark.Strokes(boxed(points), false, ink));
    }

    void polygon(Ink ink, double... points) {
        marks.add(new Mark.Strokes(boxed(points), true, ink));
    }

    private static List<Double> boxed(double... points) {
        List<Double> list = new ArrayList<>(points.length);
        for (double point : points) {
            list.add(point);
        }
        return list;
    }

    double widthOf(String text, Type type) {
        return ruler.width(text, type);
    }

    void write(String text, double x, double y, Align align, Type type, Ink ink) {
        write(text, x, y, align, type, 1, ink);
    }

    private void write(String text, double x, double y, Align align, Type type, double part, Ink ink) {
        if (!text.isBlank()) {
            String written = words.number(text);
            marks.add(new Mark.Writing(written, x, y, part * ruler.width(written, type), align, type, part, ink));
        }
    }

    /** Writes on one line no wider than {@code room}, in smaller letters where it has to be, and cut off with an ellipsis where even that is not enough. */
    void writeWithin(String text, double x, double y, double room, Align align, Type type, Ink ink) {
        writeLines(text, x, y, room, 1, align, type, ink);
    }

    /**
     * Writes on as many lines as {@code room} asks for, but no more than {@code lines}; in smaller letters where they would not do.
     *
     * @param y middle of the first line
     * @return middle of the line after the last
     */
    double writeLines(String text, double x, double y, double room, int lines, Align align, Type type, Ink ink) {
        Broken broken = broken(text, room, lines, type);
        double at = y;
        for (String line : broken.lines()) {
            write(line, x, at, align, type, broken.part(), ink);
            at += type.lead();
        }
        return at;
    }

    /** How many lines {@link #writeLines} will take. */
    int linesOf(String text, double room, int lines, Type type) {
        return broken(text, room, lines, type).lines().size();
    }

    private record Broken(List<String> lines, double part) {
        boolean cut() {
            return lines.stream().anyMatch(line -> line.endsWith(MORE));
        }
    }

    private Broken broken(String text, double room, int most, Type type) {
        Broken broken = null;
        for (double part : PARTS) {
            broken = new Broken(broken(text, room / part, type, most), part);
            if (!broken.cut()) {
                return broken;
            }
        }
        return broken;
    }

    private List<String> broken(String text, double room, Type type, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Together.of(text.strip()).split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || widthOf(longer, type) <= room) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        List<String> kept = new ArrayList<>(lines.subList(0, Math.min(most, lines.size())));
        if (kept.size() < lines.size()) {
            int last = kept.size() - 1;
            kept.set(last, kept.get(last) + " " + lines.get(kept.size()));
        }
        kept.replaceAll(each -> cut(Together.plain(each), room, type));
        return kept;
    }

    private String cut(String text, double room, Type type) {
        if (widthOf(text, type) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 1 && widthOf(text.substring(0, end).stripTrailing() + MORE, type) > room) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + MORE;
    }
}
