package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Help beside each field: what it is, how it is measured, and what a wrong answer means. */
class HelpTest {
    private static final Words WORDS = Words.english();
    private static final Glossary GLOSSARY = new Glossary(WORDS);

    private static Stream<Field> fields() {
        Stream<Field> ofSteps = Procedure.builtIn().steps().stream().flatMap(step -> step.fields().stream());
        return Stream.of(ofSteps, Steps.SAFE.fields().stream(), Steps.RESUME.fields().stream())
                .flatMap(each -> each);
    }

    @Test
    void everyFieldHasHelpAndNoHelpIsLeftOver() {
        Set<String> used = fields().map(Field::id).map(Help::topic).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Help.topics()), used);
        assertEquals(Help.topics().size(), new HashSet<>(Help.topics()).size());
    }

    @Test
    void aHelpIsShortAndAnEighthGraderReadsIt() {
        assertAll(Help.topics().stream()
                .flatMap(topic -> Stream.of("help." + topic + ".is", "help." + topic + ".wrong"))
                .map(key -> () -> {
                    String text = WORDS.of(key);
                    List<String> sentences = ReadingGrade.sentences(text);
                    assertTrue(sentences.size() <= 3, key + " has " + sentences.size() + " sentences");
                    sentences.forEach(
                            each -> assertTrue(ReadingGrade.words(each).size() <= 20, key + ": " + each));
                    assertTrue(ReadingGrade.of(text) <= 8, key + " reads at grade " + ReadingGrade.of(text));
                }));
    }

    @Test
    void theWordsOfTheTradeInAHelpAreExplainedBelowIt() {
        List<String> terms = Help.of(WORDS, GLOSSARY, "trimmer.max").terms().stream()
                .map(Glossary.Gloss::term)
                .toList();
        assertTrue(terms.containsAll(List.of("Trimmer", "Wiper")), terms::toString);
    }

    @Test
    void readingsOfTheSameThingShareTheirHelp() {
        // A rail is proven dead in the same way wherever that is asked.
        assertEquals("dead", Help.topic("solder.dead"));
        assertEquals("dead", Help.topic("safe.rail"));
        assertEquals("dead", Help.topic("cold.off.rail"));
        assertEquals("switch-off", Help.topic("set.off.switch"));
        assertEquals("switch-on", Help.topic("cold.switch"));
    }
}
