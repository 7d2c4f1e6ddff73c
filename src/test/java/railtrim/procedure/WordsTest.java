package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Job;

/** The words of the way, held to what a first-timer can read with an iron in the hand. */
class WordsTest {
    private static final String BUNDLE = BuiltIn.text("words.properties");
    private static final Map<String, String> WORDS = read();

    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Figures NOTHING_KNOWN =
            PROCEDURE.state(Job.empty("nothing known yet")).figures();
    private static final List<String> STEPS =
            PROCEDURE.steps().stream().map(Step::id).toList();
    private static final List<Field> FIELDS =
            PROCEDURE.steps().stream().flatMap(step -> step.fields().stream()).toList();

    /** Fields of the cards that stand before a step. */
    private static final List<String> CARD_FIELDS =
            List.of("safe.rail", "resume.rail", "resume.zero", "resume.where", "resume.marking", "resume.total");

    private static final List<String> CARDS_WITH_AN_ACTION = List.of("card.safe", "card.resume");

    private static Map<String, String> read() {
        Map<String, String> words = new TreeMap<>();
        BUNDLE.lines()
                .filter(line -> line.contains("=") && !line.startsWith("#"))
                .forEach(line -> words.put(
                        line.substring(0, line.indexOf('=')),
                        line.substring(line.indexOf('=') + 1).strip()));
        return words;
    }

    private static Stream<String> bodies() {
        return Stream.concat(STEPS.stream().map(step -> "step." + step), CARDS_WITH_AN_ACTION.stream());
    }

    private static String text(String key) {
        assertTrue(WORDS.containsKey(key) && !WORDS.get(key).isBlank(), "no words for " + key);
        return WORDS.get(key);
    }

    /** Collects every miss, so that a writer sees all of them at once. */
    private static <T> void each(Stream<T> all, Consumer<T> holds) {
        assertAll(all.map(one -> () -> holds.accept(one)));
    }

    private static void sentencesOfAtMostTwentyWords(String key) {
        for (String sentence : ReadingGrade.sentences(text(key))) {
            assertTrue(ReadingGrade.words(sentence).size() <= 20, key + ": " + sentence);
        }
    }

    private static void gradeOfAtMost(double most, String key) {
        double grade = ReadingGrade.of(text(key));
        assertTrue(grade <= most, "%s reads at grade %.1f: %s".formatted(key, grade, text(key)));
    }

    @Test
    void everyStepSaysWhatToDoAndWhyAndWhatIfItReadsOdd() {
        each(
                bodies().flatMap(body ->
                        Stream.of(".title", ".why", ".action", ".outside").map(body::concat)),
                WordsTest::text);
    }

    @Test
    void everyPhaseHasANameAndAnAim() {
        each(Stream.of(Phase.values()), phase -> {
            text("phase." + phase.id());
            sentencesOfAtMostTwentyWords("phase." + phase.id() + ".aim");
        });
    }

    @Test
    void aTitleIsTwoToSixWordsAndNamesOneStepOnly() {
        Set<String> seen = new HashSet<>();
        each(bodies().map(body -> body + ".title"), key -> {
            int words = text(key).split("\\s+").length;
            assertTrue(words >= 2 && words <= 6, key + ": " + text(key));
            assertTrue(seen.add(text(key)), "two steps are called " + text(key));
        });
    }

    @Test
    void anActionIsOneDeedInOneSentence() {
        each(bodies().map(body -> body + ".action"), key -> {
            assertEquals(1, ReadingGrade.sentences(text(key)).size(), key + ": " + text(key));
            assertFalse(text(key).matches("(?i).*\\b(and then|then|and)\\b.*"), key + " joins two deeds: " + text(key));
            sentencesOfAtMostTwentyWords(key);
            gradeOfAtMost(8, key);
        });
    }

    @Test
    void theReasonIsOneSentenceAnEighthGraderReads() {
        each(STEPS.stream().map(step -> "step." + step + ".why"), key -> {
            assertEquals(1, ReadingGrade.sentences(text(key)).size(), key + ": " + text(key));
            sentencesOfAtMostTwentyWords(key);
            gradeOfAtMost(8, key);
        });
    }

    @Test
    void anOddReadingIsNeverADeadEnd() {
        // The likeliest cause first, then at least one more way on; a step with the power on and a wrong voltage begins
        // with the plug.
        each(bodies().map(body -> body + ".outside"), key -> {
            assertTrue(
                    text(key).startsWith("Most likely")
                            || text(key).startsWith("Power off at once.")
                            || key.equals("step.down.watch.outside"),
                    key + ": " + text(key));
            assertTrue(ReadingGrade.sentences(text(key)).size() >= 2, key + ": " + text(key));
            sentencesOfAtMostTwentyWords(key);
            gradeOfAtMost(8, key);
        });
    }

    /** The key of a field's words; all numbered pins share theirs. */
    private static String words(String field) {
        return field.matches("pin\\.\\d+") ? "field.pin" : "field." + field;
    }

    private static Stream<String> fieldWords() {
        return Stream.concat(FIELDS.stream().map(Field::id), CARD_FIELDS.stream())
                .map(WordsTest::words)
                .distinct();
    }

    @Test
    void everyFieldHasALabelAndAShortWayToMeasureIt() {
        each(fieldWords(), field -> {
            assertTrue(text(field + ".label").length() <= 50, field + ": " + text(field + ".label"));
            int sentences = ReadingGrade.sentences(text(field + ".help")).size();
            assertTrue(sentences <= 3, field + " has " + sentences + " sentences of help");
            sentencesOfAtMostTwentyWords(field + ".help");
            gradeOfAtMost(8, field + ".help");
        });
    }

    @Test
    void aFieldThatTakesANumberNamesItsUnit() {
        each(FIELDS.stream().filter(Field.Number.class::isInstance).map(Field.Number.class::cast), field -> {
            String label = text(words(field.id()) + ".label");
            String unit = field.unit().symbol();
            assertEquals(
                    !unit.isEmpty(), label.endsWith("(" + unit + ")") && !unit.isEmpty(), field.id() + ": " + label);
        });
    }

    @Test
    void everyAnswerThatCanBePickedHasItsWords() {
        Stream<String> dynamic = Stream.of(
                "option.trimmer.pick.good",
                "option.trimmer.pick.usable",
                "option.trimmer.pick.pair-good",
                "option.trimmer.pick.pair-usable",
                "option.res.pick.named");
        each(Stream.concat(optionKeys(), dynamic), WordsTest::text);
    }

    private static Stream<String> optionKeys() {
        Stream<String> offered = Stream.concat(FIELDS.stream(), Steps.RESUME.fields().stream())
                .filter(Field.Choice.class::isInstance)
                .map(Field.Choice.class::cast)
                .flatMap(choice -> choice.options().apply(NOTHING_KNOWN).stream())
                .map(option -> option.label().key());
        Stream<String> ofOlderJobs = Choices.TYPED_METERS.keySet().stream().map(id -> "option.meter.class." + id);
        return Stream.concat(offered, ofOlderJobs);
    }

    @Test
    void noStepFieldOrAnswerHasWordsThatNobodyAsksFor() {
        Set<String> asked = new HashSet<>();
        STEPS.forEach(step ->
                List.of("title", "why", "action", "outside").forEach(part -> asked.add("step." + step + "." + part)));
        fieldWords().forEach(field -> asked.addAll(List.of(field + ".label", field + ".help")));
        optionKeys().forEach(asked::add);
        asked.addAll(List.of(
                "option.trimmer.pick.good",
                "option.trimmer.pick.usable",
                "option.trimmer.pick.pair-good",
                "option.trimmer.pick.pair-usable",
                "option.res.pick.named"));
        each(
                WORDS.keySet().stream().filter(key -> key.matches("(step|field|option)\\..*")),
                key -> assertTrue(asked.contains(key), key));
    }

    @Test
    void noProbeEverGoesOnALiveAdjustPin() {
        // With the power on, volts are read at a capacitor, or on clips that were fitted with the power off.
        List<String> live = List.of(
                "base.rail",
                "stock.volts",
                "input.volts",
                "first.volts",
                "first.loaded",
                "down.start",
                "down.volts",
                "set.start",
                "set.volts",
                "soak.volts",
                "cold.volts",
                "fit.volts",
                "fit.loaded");
        each(live.stream(), field -> {
            String help = text("field." + field + ".help");
            assertTrue(help.contains("capacitor"), field + ": " + help);
            assertFalse(help.contains("adjust"), field + ": " + help);
        });
        assertTrue(text("field.ref.volts.help").contains("touch nothing"));
        assertTrue(text("step.clip.title").contains("power off"));
    }

    @Test
    void theRailIsProvenDeadByANumberWhereverItIsAsked() {
        // 0.1 V: below it a board's capacitors hold no charge worth speaking of; common practice, no source.
        each(
                WORDS.keySet().stream()
                        .filter(key ->
                                key.matches("field\\.(.*\\.off\\.rail|.*\\.dead|safe\\.rail|resume\\.rail)\\.help")),
                key -> assertTrue(text(key).contains("0.1 V"), key + ": " + text(key)));
    }

    @Test
    void theStopRuleIsOneBreathAndThePlugComesFirst() {
        sentencesOfAtMostTwentyWords("stop-rule.on");
        gradeOfAtMost(8, "stop-rule.on");
        assertTrue(text("stop-rule.on").contains("? Pull the plug"), "the plug comes before any button");
        each(
                Stream.of("power.off", "power.on", "power.to-on", "power.to-off", "power.prove"),
                key -> assertTrue(text(key).length() <= 20, key));
    }

    @Test
    void everyEndOfAJobSaysWhyAndWhatToDoInstead() {
        each(
                Stream.of("mains", "rail-too-high", "fixed", "coded", "no-adjust-pin", "place-unclear", "disagree")
                        .map("stop."::concat),
                key -> {
                    assertTrue(ReadingGrade.sentences(text(key)).size() >= 3, key);
                    sentencesOfAtMostTwentyWords(key);
                    gradeOfAtMost(8, key);
                });
        assertTrue(text("stop.mains").contains("licensed") && text("stop.mains").contains("code"));
    }

    @Test
    void everyTermOfTheTradeHasAPlainGlossOfOneSentence() {
        List<String> terms = List.of(
                "regulator",
                "reference",
                "adjust-pin",
                "feedback",
                "divider",
                "leg",
                "trimmer",
                "wiper",
                "dropout",
                "minimum-load",
                "preferred-value",
                "fault",
                "margin",
                "soak",
                "dwell",
                "hold-point",
                "read-back",
                "lead-zero",
                "in-circuit",
                "load",
                "rail");
        each(terms.stream().map("glossary."::concat), key -> {
            assertEquals(1, ReadingGrade.sentences(text(key)).size(), key);
            assertTrue(text(key).matches("\\p{Lu}[\\p{L} -]*: \\p{Ll}.*\\."), key + ": " + text(key));
        });
    }

    @Test
    void noKeyIsThereTwice() {
        Set<String> seen = new HashSet<>();
        each(
                BUNDLE.lines().filter(line -> line.contains("=") && !line.startsWith("#")),
                line -> assertTrue(seen.add(line.substring(0, line.indexOf('='))), line));
    }

    @Test
    void everyPatternFillsInItsValuesAndLosesNoApostrophe() {
        Pattern lone = Pattern.compile("(?<!')'(?!')");
        Object[] values =
                Stream.iterate(0, n -> n + 1).limit(10).map(n -> "<" + n + ">").toArray();
        each(WORDS.entrySet().stream(), entry -> {
            String pattern = entry.getValue();
            assertFalse(lone.matcher(pattern).find(), entry.getKey() + " has a lone straight apostrophe: " + pattern);
            String filled = new MessageFormat(pattern, Locale.ROOT).format(values);
            assertFalse(filled.contains("{") || filled.contains("}"), entry.getKey() + ": " + filled);
            for (int n = 0; n < 10; n++) {
                assertEquals(
                        pattern.contains("{" + n + "}"),
                        filled.contains("<" + n + ">"),
                        entry.getKey() + ": " + filled);
            }
        });
    }
}
