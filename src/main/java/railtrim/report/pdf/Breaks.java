package railtrim.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Where a text may go on to the next line: at spaces, but not between a number and its unit; between Chinese or Japanese letters; elsewhere only if it has to. */
final class Breaks {
    /** A space that holds together what would be misread apart: "3.555 V", "± 0.022 V", "2026-01-10 09:02:05". */
    private static final Pattern HELD =
            Pattern.compile("(?<=[\\d∞]) (?=(?:[pnµmkM]?[VΩAWF]|%|°C|min|s)(?![\\p{L}\\d]))|(?<=[±≤≥=]) | (?=[±])"
                    + "|(?<=\\d{4}-\\d\\d-\\d\\d) (?=\\d\\d:\\d\\d)");

    /** Widths are sums of many small numbers: a text measured for its own column must fit into it. */
    private static final double SLACK = 0.01;

    private static final char HOLD = '\u00A0';

    private Breaks() {}

    /** @param space whether a space stood before it */
    private record Word(String text, boolean space) {}

    static List<String> broken(Fonts fonts, String text, Type type, double room) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (Word word : words(text)) {
            String longer = line + (word.space() && !line.isEmpty() ? " " : "") + word.text();
            if (width(fonts, longer, type) <= room + SLACK) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word.text();
            while (width(fonts, line, type) > room + SLACK && line.codePointCount(0, line.length()) > 1) {
                int end = fitting(fonts, line, type, room);
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        lines.add(line);
        lines.replaceAll(each -> each.replace(HOLD, ' '));
        return lines;
    }

    static double width(Fonts fonts, String text, Type type) throws IOException {
        return fonts.width(text.replace(HOLD, ' '), type.bold()) * type.size();
    }

    /** The widest piece that is never taken apart where there is room. */
    static double widestWord(Fonts fonts, String text, Type type) throws IOException {
        double widest = 0;
        for (Word word : words(text)) {
            widest = Math.max(widest, width(fonts, word.text(), type));
        }
        return widest;
    }

    private static int fitting(Fonts fonts, String text, Type type, double room) throws IOException {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length() && width(fonts, text.substring(0, text.offsetByCodePoints(end, 1)), type) <= room) {
            end = text.offsetByCodePoints(end, 1);
        }
        return end;
    }

    private static List<Word> words(String text) {
        List<Word> words = new ArrayList<>();
        for (String word : HELD.matcher(text).replaceAll(String.valueOf(HOLD)).split(" ")) {
            boolean space = true;
            int begin = 0;
            for (int i = 0; i < word.length(); i += Character.charCount(word.codePointAt(i))) {
                if (i > begin && (wide(word.codePointAt(i)) || wide(word.codePointBefore(i)))) {
                    words.add(new Word(word.substring(begin, i), space));
                    space = false;
                    begin = i;
                }
            }
            words.add(new Word(word.substring(begin), space));
        }
        return words;
    }

    private static boolean wide(int point) {
        return Character.isIdeographic(point) || point >= 0x3040 && point <= 0x30FF;
    }
}
