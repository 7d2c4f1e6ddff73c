package railtrim.procedure;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * School grade needed to read a text: 0.39 words/sentence + 11.8 syllables/word − 15.59 (Kincaid, Fishburne, Rogers and Chissom, Research
 * Branch Report 8-75, 1975). Numbers with their unit and the names of parts count as one short word: the reader has them in hand.
 * Syllables are counted by vowel groups, so a grade is good to about half a grade.
 */
final class ReadingGrade {
    private static final Pattern NUMBER =
            Pattern.compile("±?\\d[\\d.,]*(?:\\s?(?:°C|[mkµ]?[VΩA]|%)(?!\\p{L}))?(?:\\s(?:DC|AC)\\b)?");
    private static final Pattern PART =
            Pattern.compile("(?i)\\b(?:regulator|resistor|capacitor|thermocouple|thermometer)(?:’s|s)?");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private ReadingGrade() {}

    static double of(String text) {
        List<String> words = words(text);
        int syllables = words.stream().mapToInt(ReadingGrade::syllables).sum();
        return 0.39 * words.size() / sentences(text).size() + 11.8 * syllables / words.size() - 15.59;
    }

    static List<String> sentences(String text) {
        return Stream.of(masked(text).split("(?<=[.!?])\\s+"))
                .filter(sentence -> !sentence.isBlank())
                .toList();
    }

    static List<String> words(String text) {
        return Stream.of(masked(text).split("[^\\p{L}’]+"))
                .filter(word -> !word.isBlank() && !word.equals("’"))
                .toList();
    }

    private static String masked(String text) {
        return PART.matcher(NUMBER.matcher(text).replaceAll("ten")).replaceAll("part");
    }

    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replace("’", "");
        String spoken = plain.replaceAll("(?<=[^aeiouylr])e$|(?<=[aeiou]r)e$", "")
                .replaceAll("(?<=[aeiou]l)e$", "")
                .replaceAll("(?<=[^aeioudt])ed$", "d")
                .replaceAll("(?<=[^aeioucsxzgh])es$", "s")
                .replaceAll("(?<=[aeiou])ing$", "-ing");
        return Math.max(1, (int) VOWELS.matcher(spoken).results().count());
    }
}
