package railtrim.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand; what counts as tried is our own rule. */
class TriedTest {
    private final List<Trial> trials = new ArrayList<>();

    private void held(int run, double volts, boolean fault, boolean cold, String load) {
        trials.add(new Trial(run, volts, fault, cold, load));
    }

    private Tried tried() {
        return Tried.of(trials, FailVoltage.of(trials));
    }

    private void firstRun() {
        held(1, 3.0, false, false, "Demo");
        held(1, 2.8, false, false, "Demo");
        held(1, 2.77, true, false, "Demo");
    }

    @Test
    void oneRunTriesOneLoadWarm() {
        firstRun();
        assertEquals(new Tried(false, false), tried());
    }

    @Test
    void aSecondLoadThatFailsOrHoldsAsFarDownIsTried() {
        firstRun();
        held(2, 2.83, false, false, "memory test");
        assertEquals(new Tried(false, false), tried(), "above 2.80 V it shows nothing");
        held(2, 2.80, false, false, "memory test");
        assertEquals(new Tried(false, true), tried());
        trials.remove(trials.size() - 1);
        held(2, 2.81, true, false, "memory test");
        assertEquals(new Tried(false, true), tried());
    }

    @Test
    void theSameLoadWrittenOtherwiseIsNoSecondOneAndNoNameTellsNothing() {
        firstRun();
        held(2, 2.79, true, false, "  demo ");
        held(3, 2.79, true, false, "");
        assertEquals(new Tried(false, false), tried());
    }

    @Test
    void aColdRunHasToComeAsFarDownToo() {
        firstRun();
        held(2, 2.9, false, true, "Demo");
        assertEquals(new Tried(false, false), tried());
        held(2, 2.74, true, true, "Demo");
        assertEquals(new Tried(true, false), tried());
    }
}
