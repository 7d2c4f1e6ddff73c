package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import railtrim.job.Job;

/** Every state that can be reached with so many detours from the good way, and what must hold in each of them. */
class ExplorationTest {
    private static final GoodAnswers GOOD = GoodAnswers.ofAWholeJob();

    @Test
    void noRuleIsBrokenOneDetourFromTheGoodWay() {
        explore(1);
    }

    @Test
    @Tag("long")
    void noRuleIsBrokenTwoDetoursFromTheGoodWay() {
        explore(2);
    }

    private static void explore(int detours) {
        Explorer explorer = new Explorer(HalfDone.PROCEDURE, Rule.all(), GOOD).from(Job.empty("explored"), detours, "");
        System.out.println("explored with at most " + detours + " detours: " + explorer.states() + " states by "
                + explorer.moves() + " moves; " + Rule.all().size() + " rules hold: "
                + explorer.broken().isEmpty());
        explorer.broken().forEach((rule, how) -> System.out.println(rule + ": " + how));
        assertTrue(explorer.exhausted());
        assertEquals(Map.of(), explorer.broken());
        assertTrue(explorer.states() > 1000);
        assertEquals(List.of(), List.copyOf(explorer.broken().keySet()));
    }
}
