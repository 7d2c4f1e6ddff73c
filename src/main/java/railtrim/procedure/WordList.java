package railtrim.procedure;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.ResourceBundle;
import java.util.Set;
import railtrim.job.BuiltIn;

/**
 * {@code words.properties} without taking it apart: where each line begins is noted once, and a text is made only of what is asked for. Of the
 * properties format it knows what the file is kept to: {@code key=text} in one line, UTF-8, no escapes; lines that begin with {@code #} are remarks.
 */
final class WordList extends ResourceBundle {
    private static final int NOTHING = -1;

    private final byte[] text;
    /** Where lines begin, each at the place its key's hash gives it, or at the next free one. A power of two, sparsely filled. */
    private final int[] lines;

    WordList(byte[] text) {
        this.text = text;
        this.lines = new int[Integer.highestOneBit(Math.max(64, text.length / 8))];
        Arrays.fill(lines, NOTHING);
        note();
    }

    /** The list that travels with the program; gone through once, whoever asks first. */
    static WordList builtIn() {
        return Held.BUILT_IN;
    }

    /** The hash of a key is that of the string it would be, for keys are plain ASCII. */
    private void note() {
        int at = 0;
        while (at < text.length) {
            int begin = at;
            int hash = 0;
            boolean key = true;
            while (at < text.length && text[at] != '\n') {
                key = key && text[at] != '=' && text[at] != '#';
                hash = key ? 31 * hash + text[at] : hash;
                at++;
            }
            if (hash != 0) {
                lines[free(hash)] = begin;
            }
            at++;
        }
    }

    private int free(int hash) {
        int place = place(hash);
        while (lines[place] != NOTHING) {
            place = place(place + 1);
        }
        return place;
    }

    private int place(int hash) {
        return hash & lines.length - 1;
    }

    @Override
    protected Object handleGetObject(String key) {
        for (int place = place(key.hashCode()); lines[place] != NOTHING; place = place(place + 1)) {
            int from = lines[place];
            if (begins(from, key)) {
                int value = from + key.length() + 1;
                return new String(text, value, end(value) - value, StandardCharsets.UTF_8);
            }
        }
        return null;
    }

    private boolean begins(int from, String key) {
        if (from + key.length() >= text.length || text[from + key.length()] != '=') {
            return false;
        }
        for (int i = 0; i < key.length(); i++) {
            if (text[from + i] != key.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private int end(int from) {
        int end = from;
        while (end < text.length && text[end] != '\n' && text[end] != '\r') {
            end++;
        }
        return end;
    }

    @Override
    public boolean containsKey(String key) {
        return handleGetObject(key) != null;
    }

    @Override
    protected Set<String> handleKeySet() {
        Set<String> keys = new HashSet<>();
        for (int from : lines) {
            if (from != NOTHING) {
                String line = new String(text, from, end(from) - from, StandardCharsets.UTF_8);
                keys.add(line.substring(0, line.indexOf('=')));
            }
        }
        return keys;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(handleKeySet());
    }

    /** Made ready when it is first asked for. */
    private static final class Held {
        static final WordList BUILT_IN = new WordList(BuiltIn.bytes("words.properties"));
    }
}
