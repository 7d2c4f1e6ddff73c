package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.BuiltIn;
import railtrim.quantity.BadInput;

class CautionsTest {
    private static final String WHOLE = """
            {"id": "iron", "level": "CAUTION", "symbol": "hot"}""";
    private static final Words WORDS = Words.english();

    static List<Caution> cautions() {
        return Cautions.of(BuiltIn.text("cautions.json"));
    }

    private static String told(Caution caution) {
        return caution.hazard(WORDS) + " " + caution.consequence(WORDS) + " " + caution.avoidance(WORDS);
    }

    @Test
    void everyCautionTheStepsNeedIsThere() {
        // The hazards of the work, as the steps name them.
        Set<String> needed = Set.of(
                "mains",
                "closed-supply",
                "jewellery",
                "iron",
                "fume",
                "eyes",
                "static",
                "stored-charge",
                "short",
                "live-adjust",
                "hot-parts",
                "infrared",
                "over-voltage",
                "lifted-pad",
                "wrong-leg",
                "dead-first",
                "trimmer-end",
                "low-voltage-data",
                "minimum-load",
                "cooling",
                "regulator-heat");
        assertEquals(needed, cautions().stream().map(Caution::id).collect(Collectors.toSet()));
    }

    @Test
    void everyCautionGuardsAStepAndNoneIsSeenMoreThanTwice() {
        // What has been seen twice is hardly looked at any more (Anderson et al., CHI 2015).
        Map<String, Long> seen = Procedure.builtIn().steps().stream()
                .flatMap(step -> step.cautions().stream())
                .collect(Collectors.groupingBy(caution -> caution, Collectors.counting()));
        cautions().forEach(caution -> {
            long times = seen.getOrDefault(caution.id(), 0L);
            assertTrue(times >= 1 && times <= 2, caution.id() + " is shown " + times + " times");
        });
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void aCautionIsReadInOneBreath(Caution caution) {
        // At most 40 words: our own limit, so that it is read and not skipped.
        assertTrue(told(caution).split("\\s+").length <= 40, caution.id());
        // Fourth to sixth grade for critical text is the usual advice for plain health and safety writing.
        double grade = ReadingGrade.of(told(caution));
        assertTrue(grade <= 6, caution.id() + " reads at grade " + grade);
        for (String sentence : ReadingGrade.sentences(told(caution))) {
            assertTrue(ReadingGrade.words(sentence).size() <= 20, caution.id() + ": " + sentence);
        }
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void eachPartOfACautionIsAWholeSentence(Caution caution) {
        for (String part : List.of(caution.hazard(WORDS), caution.consequence(WORDS), caution.avoidance(WORDS))) {
            assertTrue(part.matches("\\p{Lu}.*\\."), caution.id() + ": " + part);
            assertFalse(part.contains("'"), caution.id() + ": " + part);
        }
    }

    @Test
    void onlyWhatCouldKillOrMaimIsAWarningAndNoInjuryIsANotice() {
        // ANSI Z535.4: WARNING could kill or seriously injure, CAUTION could cause minor or moderate injury, NOTICE is
        // property only.
        assertEquals(Set.of("mains", "closed-supply", "eyes"), of(Caution.Level.WARNING));
        assertEquals(
                Set.of(
                        "static",
                        "lifted-pad",
                        "wrong-leg",
                        "dead-first",
                        "trimmer-end",
                        "low-voltage-data",
                        "minimum-load",
                        "cooling"),
                of(Caution.Level.NOTICE));
        cautions().stream()
                .filter(caution -> caution.level() == Caution.Level.NOTICE)
                .forEach(caution ->
                        assertFalse(told(caution).matches("(?s).*\\b(burn|hurt|injure|kill you)\\b.*"), caution.id()));
    }

    @Test
    void aNoticeNeverCarriesAHazardTriangle() {
        // ANSI Z535.4: the alert triangle belongs to injuries, never to NOTICE.
        Set<String> triangles = Set.of("general", "electricity", "hot", "fume");
        cautions().stream()
                .filter(caution -> caution.level() == Caution.Level.NOTICE)
                .forEach(caution -> assertFalse(triangles.contains(caution.symbol()), caution.id()));
    }

    private static Set<String> of(Caution.Level level) {
        return cautions().stream()
                .filter(caution -> caution.level() == level)
                .map(Caution::id)
                .collect(Collectors.toSet());
    }

    @Test
    void aWholeCautionIsReadAsWritten() {
        assertEquals(List.of(new Caution("iron", Caution.Level.CAUTION, "hot")), Cautions.of("[" + WHOLE + "]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"level", "symbol"})
    void anIncompleteCautionIsRefusedByNameAndField(String field) {
        String missing = WHOLE.replaceFirst(", \"" + field + "\": \"[^\"]*\"", "");
        String empty = WHOLE.replaceFirst("(\"" + field + "\": \")[^\"]*\"", "$1  \"");
        String none = WHOLE.replaceFirst("(\"" + field + "\": )\"[^\"]*\"", "$1null");
        Stream.of(missing, empty, none).forEach(json -> {
            BadInput refused = assertThrows(BadInput.class, () -> Cautions.of("[" + json + "]"), json);
            assertEquals("caution.incomplete", refused.told().key());
            assertEquals(List.of("iron", field), refused.told().values());
        });
    }

    @Test
    void aCautionWithoutAnIdIsNamedByItsPlace() {
        BadInput refused = assertThrows(BadInput.class, () -> Cautions.of("[" + WHOLE + ", {\"level\": \"NOTICE\"}]"));
        assertEquals(List.of("number 2", "id"), refused.told().values());
    }

    @Test
    void theSignalWordDangerAndUnknownSymbolsAreRefused() {
        BadInput level =
                assertThrows(BadInput.class, () -> Cautions.of("[" + WHOLE.replace("\"CAUTION\"", "\"DANGER\"") + "]"));
        assertEquals(
                List.of("iron", "level", "DANGER", "WARNING, CAUTION, NOTICE"),
                level.told().values());
        BadInput symbol =
                assertThrows(BadInput.class, () -> Cautions.of("[" + WHOLE.replace("\"hot\"", "\"skull\"") + "]"));
        assertEquals(List.of("iron", "symbol", "skull"), symbol.told().values().subList(0, 3));
    }

    @Test
    void twoCautionsOfOneIdAreRefused() {
        BadInput refused = assertThrows(BadInput.class, () -> Cautions.of("[" + WHOLE + "," + WHOLE + "]"));
        assertEquals("caution.twice", refused.told().key());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "null", "{}", "[", "[1]", "[\"iron\"]", "[{id: 1}]", "[/* none */]", "not json"})
    void aFileThatIsNoListOfCautionsIsRefusedInWords(String json) {
        BadInput refused = assertThrows(BadInput.class, () -> Cautions.of(json));
        assertEquals("caution.not-a-list", refused.told().key());
        assertFalse(Words.english().of(refused.told()).contains("com.google"));
    }

    @Test
    void aHoleInTheListIsNotACaution() {
        BadInput refused = assertThrows(BadInput.class, () -> Cautions.of("[null]"));
        assertEquals("caution.incomplete", refused.told().key());
    }
}
