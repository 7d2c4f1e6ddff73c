package railtrim.report.pdf;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts letters in the order and form they are drawn in: Arabic letters joined to their neighbours (Unicode Standard, chapter 9.2), and stretches
 * written from right to left turned round (Unicode Bidirectional Algorithm, UAX 9).
 */
final class Letters {
    private static final int FIRST_FORM = 0xFE80;
    private static final int LAST_FORM = 0xFEFC;
    private static final int LAM = 0x644;
    private static final int TATWEEL = 0x640;

    /** Letter to its forms as Unicode lists them: alone, last, first, middle; letters that join to the right only have two. */
    private static final Map<String, List<Integer>> FORMS = forms();

    private static final Map<Integer, Integer> MIRRORED = Map.of(
            (int) '(', (int) ')', (int) ')', (int) '(', (int) '[', (int) ']', (int) ']', (int) '[', (int) '<',
            (int) '>', (int) '>', (int) '<', (int) '«', (int) '»', (int) '»', (int) '«');

    private Letters() {}

    /** Unicode's compatibility forms say which letter each is a form of. */
    private static Map<String, List<Integer>> forms() {
        Map<String, List<Integer>> forms = new HashMap<>();
        for (int form = FIRST_FORM; form <= LAST_FORM; form++) {
            String letter = Normalizer.normalize(Character.toString(form), Normalizer.Form.NFKC);
            forms.computeIfAbsent(letter, each -> new ArrayList<>()).add(form);
        }
        return Map.copyOf(forms);
    }

    /** Whether a letter is drawn as it is: before the marks that join the letter they follow, and all that is written from right to left. */
    static boolean stays(int point) {
        return point < 0x300 || point > 0x36F && point < 0x590;
    }

    /** One line as it is drawn from left to right. */
    static String asDrawn(String line) {
        if (line.codePoints().allMatch(Letters::stays)) {
            return line;
        }
        // The fonts have whole letters and whole Hangul syllables, which some systems type as their pieces.
        String joined = joined(Normalizer.normalize(line, Normalizer.Form.NFC));
        Bidi bidi = new Bidi(joined, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        if (bidi.isLeftToRight()) {
            return joined;
        }
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] texts = new String[runs];
        for (int run = 0; run < runs; run++) {
            levels[run] = (byte) bidi.getRunLevel(run);
            String text = joined.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            texts[run] = levels[run] % 2 == 1 ? turned(text) : text;
        }
        Bidi.reorderVisually(levels, 0, texts, 0, runs);
        return String.join("", texts);
    }

    private static String turned(String text) {
        int[] points = text.codePoints().toArray();
        StringBuilder turned = new StringBuilder(text.length());
        for (int i = points.length - 1; i >= 0; i--) {
            turned.appendCodePoint(MIRRORED.getOrDefault(points[i], points[i]));
        }
        return turned.toString();
    }

    private static String joined(String text) {
        int[] points = text.codePoints().toArray();
        StringBuilder joined = new StringBuilder(text.length());
        for (int i = 0; i < points.length; i++) {
            int before = neighbour(points, i, -1);
            if (points[i] == LAM && i + 1 < points.length) {
                List<Integer> pair = FORMS.get(Character.toString(LAM) + Character.toString(points[i + 1]));
                if (pair != null) {
                    joined.appendCodePoint(pair.get(joinsOnward(before) ? 1 : 0));
                    i++;
                    continue;
                }
            }
            joined.appendCodePoint(form(points[i], before, neighbour(points, i, 1)));
        }
        return joined.toString();
    }

    private static int form(int letter, int before, int after) {
        List<Integer> forms = FORMS.get(Character.toString(letter));
        if (forms == null || forms.size() < 2) {
            return letter;
        }
        boolean back = joinsOnward(before);
        boolean onward = forms.size() == 4 && joinsBack(after);
        return forms.get((back ? 1 : 0) + (onward ? 2 : 0));
    }

    private static boolean joinsOnward(int letter) {
        return letter == TATWEEL || forms(letter) == 4;
    }

    private static boolean joinsBack(int letter) {
        return letter == TATWEEL || forms(letter) >= 2;
    }

    private static int forms(int letter) {
        return FORMS.getOrDefault(Character.toString(letter), List.of()).size();
    }

    /** The next letter that is not a mark above or below another, 0 for none. */
    private static int neighbour(int[] points, int from, int step) {
        for (int i = from + step; i >= 0 && i < points.length; i += step) {
            if (Character.getType(points[i]) != Character.NON_SPACING_MARK) {
                return points[i];
            }
        }
        return 0;
    }
}
