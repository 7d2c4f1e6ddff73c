package railtrim.command;

import java.util.ArrayList;
import java.util.List;

/** Breaks a sentence into lines that fit a terminal. */
final class Wrap {
    /** No-break space. */
    private static final char BOND = '\u00A0';

    private Wrap() {}

    /** A number stays with its unit. */
    private static String bound(String text) {
        return text.replaceAll("(?<=[0-9]) (?=[µmkM]?(V|A|Ω|W|s|%|°C)(?![A-Za-z]))", String.valueOf(BOND));
    }

    /**
     * @param lead what the first line begins with; the others are indented as far
     * @return at least one line
     */
    static List<String> lines(String lead, String text, int width) {
        List<String> lines = new ArrayList<>();
        String indent = " ".repeat(lead.length());
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : bound(text.strip()).split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word.replace(BOND, ' '));
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }
}
