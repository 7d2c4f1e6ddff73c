package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.procedure.Field;
import railtrim.procedure.Procedure;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/** The blank form has the whole way in it, in order, from the same list of steps as the window. */
class WorksheetTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Words WORDS = Words.english();
    private static final Checklist SHEET = new Worksheet(PROCEDURE, WORDS).build();

    @Test
    void everyStepStandsInItsOrderWithABoxForEachAnswer() {
        List<Section> steps = SHEET.sections().stream()
                .filter(section -> section.level() == 3)
                .toList();
        assertEquals(
                PROCEDURE.steps().stream()
                        .map(step -> WORDS.of("step." + step.id() + ".title"))
                        .toList(),
                steps.stream().map(Section::title).toList());
        for (int i = 0; i < steps.size(); i++) {
            Step step = PROCEDURE.steps().get(i);
            long boxes = steps.get(i).blocks().stream()
                    .filter(Block.Form.class::isInstance)
                    .mapToLong(block -> ((Block.Form) block).entries().size())
                    .sum();
            int waiting = step.dwellSeconds() > 0 ? 1 : 0;
            assertEquals(step.fields().size() + step.cautions().size() + waiting, boxes, step.id());
        }
    }

    @Test
    void cautionsStandAboveTheBoxesTheyGuard() {
        for (Step step : PROCEDURE.steps()) {
            if (!step.cautions().isEmpty()) {
                Block.Form first = (Block.Form) section(step).blocks().stream()
                        .filter(Block.Form.class::isInstance)
                        .findFirst()
                        .orElseThrow();
                String hazard = PROCEDURE.caution(step.cautions().get(0)).hazard(Words.english());
                assertTrue(first.entries().get(0).asked().contains(hazard), step.id());
            }
        }
    }

    @Test
    void whatHoldsForEveryBoardIsExpectedInPrint() {
        Block.Form meter = (Block.Form) section(step("meter")).blocks().stream()
                .filter(Block.Form.class::isInstance)
                .findFirst()
                .orElseThrow();
        // A fresh battery cell reads 1.1 V to 1.8 V, as on the screen (common practice, no source).
        assertTrue(meter.entries().stream().anyMatch(entry -> entry.hint().startsWith("Expect 1.1 V to 1.8 V")));
    }

    @Test
    void theWayDownHasRowsForEveryRound() {
        assertTrue(section(step("down.watch")).blocks().stream()
                .anyMatch(block -> block instanceof Block.Blank blank && blank.rows() >= 40));
    }

    @Test
    void noWordOfASumIsLeftOver() {
        java.util.Set<String> ids = new java.util.HashSet<>();
        PROCEDURE.steps().forEach(step -> ids.add(step.id()));
        java.util.ResourceBundle.getBundle("railtrim.words", java.util.Locale.ROOT).keySet().stream()
                .filter(key -> key.startsWith("worksheet.sum."))
                .map(key -> key.substring("worksheet.sum.".length(), key.lastIndexOf('.')))
                .forEach(id -> assertTrue(ids.contains(id), id));
    }

    private static Step step(String id) {
        return PROCEDURE.steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Section section(Step step) {
        assertTrue(step.fields().stream().map(Field::id).distinct().count() > 0);
        return SHEET.sections().stream()
                .filter(section -> section.level() == 3)
                .toList()
                .get(PROCEDURE.steps().indexOf(step));
    }
}
