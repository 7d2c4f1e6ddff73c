package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import railtrim.quantity.Meter;

/** What a board hides: where its chip fails and dies, how it and the regulator warm; and that the format tells of every field. */
class HiddenTruthTest {
    private static final Board SOUND = DemoBoards.named("sound-board");
    private static final double LONG = 24 * 3600;

    /** The highest voltage at which this power-up fails under the named load, to a tenth of a millivolt. */
    private static double failsAt(Board board, double warmedAt, long seed) {
        double low = 0;
        double high = board.stock();
        while (high - low > 1e-4) {
            double middle = (low + high) / 2;
            Fate fate = new Fate(board, new Draw(board));
            fate.powerUp(Rehearsal.chance(seed));
            fate.warm(
                    LONG,
                    warmedAt,
                    warmedAt > 0 ? board.load().stockAmperes() : 0,
                    board.divider().input());
            fate.feel(middle, Board.Work.NAMED);
            if (fate.failed()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** 2.71 V warm and 2.63 V cold: the same power-up, 80 mV apart. */
    @Test
    void theChipFailsElsewhereWarmThanCold() {
        double warm = failsAt(SOUND, SOUND.stock(), 1);
        double cold = failsAt(SOUND, 0, 1);
        assertEquals(2.71 - 2.63, warm - cold, 3e-4);
    }

    /** σ = 9 mV, cut off at three of them: the mean and the spread of 400 power-ups, and none beyond. */
    @Test
    void whereItFailsVariesFromOnePowerUpToTheNext() {
        double sum = 0;
        double squares = 0;
        double most = 0;
        int runs = 400;
        for (int seed = 0; seed < runs; seed++) {
            double off = failsAt(SOUND, SOUND.stock(), seed) - 2.71;
            sum += off;
            squares += off * off;
            most = Math.max(most, Math.abs(off));
        }
        double mean = sum / runs;
        assertEquals(0, mean, 3 * 0.009 / Math.sqrt(runs));
        assertEquals(0.009, Math.sqrt(squares / runs - mean * mean), 0.0012);
        assertTrue(most <= 0.027 + 2e-4 && most > 0.015, "most " + most);
    }

    /** 4.6 V is what it can stand: 5.06 V through 0.05 Ω of solder is more, and 10 Ω from there are not. */
    @Test
    void aboveItsDamageVoltageTheChipDiesAndStaysDead() {
        Bench bench = new Bench(SOUND, Meter.fine(), Rehearsal.chance(1));
        bench.bridge(new Node.Pair(Node.INPUT, Node.OUTPUT));
        bench.switchOn();
        assertTrue(bench.highestSeen() > SOUND.failing().damage());
        bench.switchOff();
        bench.waitSeconds(60);
        bench.clean();
        bench.switchOn();
        assertEquals(Seen.SMOKE, bench.seen());

        Bench lucky = new Bench(SOUND, Meter.fine(), Rehearsal.chance(1));
        Part part = lucky.takeResistors(List.of(10.0), Part.Joined.SERIES, 0);
        lucky.solder(part, new Node.Pair(Node.INPUT, Node.OUTPUT));
        lucky.switchOn();
        assertTrue(lucky.highestSeen() < SOUND.failing().damage());
        assertEquals(Seen.WELL, lucky.seen());
    }

    /** The regulator loses (5.06 − 3.314) V · 1.2 A = 2.1 W: 13 K/W make 27 K of it; and with 30 s of its own 63.2 % are there after 30 s. */
    @Test
    void theRegulatorWarmsByItsOwnResistanceAndTime() {
        Board board = Board.of(DemoBoards.text("sound-board")
                .replace("\"seconds\": 90", "\"seconds\": 90, \"regulator-seconds\": 30"));
        Fate fate = new Fate(board, new Draw(board));
        double stock = board.stock();
        fate.warm(30, stock, 1.2, 5.06);
        double full = 13 * (5.06 - stock) * 1.2;
        assertEquals(22 + full * (1 - Math.exp(-1)), fate.regulatorTemperature(), 1e-9);
        // The chip takes 90 s.
        assertEquals(22 + 11 * stock * 1.2 * (1 - Math.exp(-30.0 / 90)), fate.chipTemperature(), 1e-9);
        fate.warm(LONG, stock, 1.2, 5.06);
        assertEquals(22 + full, fate.regulatorTemperature(), 1e-6);
    }

    @Test
    void theRatedRangeIsReadWhereThePapersHaveIt() {
        assertTrue(SOUND.ratedHigh().isEmpty());
        String chip = "\"name\": \"OA-31 effects chip\"";
        String text = DemoBoards.text("sound-board").replace(chip, chip + ", \"rated-low\": 3.0, \"rated-high\": 3.6");
        Board.Range rated = Board.of(text).chip().rated().orElseThrow();
        assertEquals(new Board.Range(3.0, 3.6), rated);
    }

    /** Leads of 0.1 to 0.25 Ω, seen with the tips together; a meter that is zeroed nowhere carries them into every reading. */
    @Test
    void theLeadsAreInEveryReadingOfOhms() {
        for (int seed = 0; seed < 50; seed++) {
            Bench bench = new Bench(SOUND, Meter.fine(), Rehearsal.chance(seed));
            double leads = bench.meter().leadOhms();
            assertTrue(leads >= 0.1 && leads <= 0.25, leads + " Ω");
            Part part = bench.takeResistors(List.of(10.0), Part.Joined.SERIES, 0);
            // 0.1 % and a few counts of 10 mΩ: the fine meter.
            assertEquals(10 + leads, bench.ohms(part).value(), 0.1);
            assertEquals(leads, bench.leadsShorted().value(), 0.06);
        }
    }

    /** Every field the reader knows stands in demo-data/README.md, by its name alone or behind its part. */
    @Test
    void theFormatTellsOfEveryField() throws IOException {
        String source = Files.readString(Path.of("src/main/java/railtrim/practice/BoardReader.java"));
        String readme = Files.readString(Path.of("demo-data/README.md"));
        Set<String> fields = new TreeSet<>();
        Matcher asked = Pattern.compile(
                        "(?:text\\.(?:text|number|has|yesOrNo|oneOf)\\(|optional\\(text, )\"([a-z-]+)\"")
                .matcher(source);
        while (asked.find()) {
            fields.add(asked.group(1));
        }
        assertTrue(fields.size() > 35, fields.toString());
        Set<String> untold = new TreeSet<>();
        for (String field : fields) {
            String name = Pattern.quote(field);
            if (!Pattern.compile("`(?:[a-z]+)?\\.?" + name + "`|\"" + name + "\"")
                    .matcher(readme)
                    .find()) {
                untold.add(field);
            }
        }
        assertEquals(Set.of(), untold);
        assertFalse(fields.contains("makr"));
    }
}
