package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** Every question of a whole job is first answered badly: nothing is taken, nothing is lost, and each refusal is a sentence. */
class BadAnswersTest {
    private static final Words WORDS = Words.english();
    private static final List<String> NEVER_A_NUMBER = List.of(
            "",
            " ",
            "abc",
            "3.3",
            "1,234.5 V",
            "1.2.3 Ω",
            "NaN V",
            "Infinity Ω",
            "1e999 V",
            "0x1p3 Ω",
            "4.7f V",
            "12 furlongs",
            "99999999999999 V",
            "--3 V",
            "3 V 3 V",
            "V",
            "٣٫٣ V",
            "3.3 V; rm");
    private static final Map<Unit, String> WRONG_UNIT = Map.of(
            Unit.VOLT, "220 Ω",
            Unit.OHM, "3.3 V",
            Unit.AMPERE, "3.3 V",
            Unit.CELSIUS, "20 V",
            Unit.PERCENT, "2 V",
            Unit.COUNT, "2 V");

    @Test
    void everyBadAnswerToEveryQuestionIsRefusedInWordsAndChangesNothing() {
        HalfDone job = HalfDone.upTo("scope");
        Map<String, Integer> tried = new LinkedHashMap<>();
        while (!job.course.state().complete()) {
            List<String> questions = job.course.state().card().isPresent()
                    ? job.course.cardFields().orElseThrow().fields().stream()
                            .map(Field::id)
                            .toList()
                    : job.course.state().current().open().isEmpty()
                            ? job.course.state().current().missing()
                            : List.of();
            for (String question : questions) {
                if (!tried.containsKey(question)) {
                    tried.put(question, answerBadly(job.course, question));
                }
            }
            job.give();
        }
        System.out.println("bad answers refused: "
                + tried.values().stream().mapToInt(Integer::intValue).sum() + " to " + tried.size() + " questions");
        assertTrue(tried.size() > 90, "questions met: " + tried.keySet());
    }

    private static int answerBadly(Course course, String question) {
        Field field = course.field(question).orElseThrow();
        long facts = course.state().job().last();
        List<Verdict> verdicts = new ArrayList<>();
        if (field instanceof Field.Number number) {
            for (String text : NEVER_A_NUMBER) {
                boolean aCount = number.unit() == Unit.COUNT && text.equals("3.3");
                if (!aCount) {
                    verdicts.add(course.type(question, text, true));
                }
            }
            verdicts.add(course.type(question, WRONG_UNIT.get(number.unit()), true));
            verdicts.add(course.type(question, "987654321 " + number.unit().symbol(), true));
        } else if (field instanceof Field.Choice) {
            for (String option : List.of("", "none of these", "../../etc", "well ")) {
                verdicts.add(course.choose(question, option));
            }
        } else if (field instanceof Field.Text text && text.required()) {
            verdicts.add(course.type(question, " ", false));
            verdicts.add(course.type(question, "x".repeat(2001), false));
        }
        for (Verdict verdict : verdicts) {
            Verdict.Refuse refuse = assertInstanceOf(Verdict.Refuse.class, verdict, question + " took " + verdict);
            assertFalse(refuse.says().isEmpty());
            for (Message message : refuse.says()) {
                assertTrue(WORDS.of(message).length() > 15, question + ": " + WORDS.of(message));
            }
        }
        assertEquals(facts, course.state().job().last(), question + ": nothing may be written");
        return verdicts.size();
    }

    /** Kilo for ohm and millivolt for volt: what was meant is named, and nothing is written before a second look. */
    @Test
    void aSlipOfAThousandIsNamed() {
        HalfDone job = HalfDone.upTo("proof");
        double total = job.course.expected("proof.total").orElseThrow().low();
        String slip = String.format(java.util.Locale.ROOT, "%.1f kΩ", total * 1.01);
        Verdict.AskAgain again = assertInstanceOf(Verdict.AskAgain.class, job.course.type("proof.total", slip, false));
        assertEquals(
                List.of("verdict.outside", "verdict.slip"),
                again.says().stream().map(Message::key).toList());
    }

    @Test
    void swappedProbesAreNamed() {
        HalfDone job = HalfDone.upTo("load");
        job.course.type("load.name", "all tracks at once", false);
        Verdict.AskAgain again =
                assertInstanceOf(Verdict.AskAgain.class, job.course.type("stock.volts", "-3.3 V", false));
        assertEquals("verdict.slip-sign", again.says().get(1).key());
    }

    /** A second reading is compared without giving the first away. */
    @Test
    void aSecondReadingDoesNotShowTheFirst() {
        HalfDone job = HalfDone.upTo("agree");
        assertTrue(job.course.expected("leg.again").isEmpty());
        Verdict.AskAgain again =
                assertInstanceOf(Verdict.AskAgain.class, job.course.type("leg.again", "3.3 kΩ", false));
        String first = WORDS.of(Message.of("verdict.outside", "", "", ""));
        for (Message message : again.says()) {
            assertFalse(WORDS.of(message).startsWith(first.substring(0, 8)), WORDS.of(message));
            assertFalse(message.values().stream()
                    .anyMatch(value -> value.contains(job.course
                            .state()
                            .figures()
                            .reading("leg.ohms")
                            .orElseThrow()
                            .typed())));
        }
    }
}
