package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Scales of the ladder; the numbers follow from the geometry. */
class ScaleTest {
    @Test
    void aHigherVoltageStandsHigher() {
        VoltScale scale = VoltScale.holding(DoubleStream.of(3.0, 3.5), 30, 330);
        assertTrue(scale.at(3.5) < scale.at(3.0));
        assertTrue(scale.at(3.5) > 30 && scale.at(3.0) < 330, "with some room beyond both");
        assertEquals(180, scale.at(3.25), 1e-9);
    }

    @Test
    void aFewMillivoltsDoNotFillTheWholeLadder() {
        VoltScale scale = VoltScale.holding(DoubleStream.of(3.300, 3.302), 0, 100);
        assertTrue(scale.span() >= 0.099, "at least 3 % of the voltage");
    }

    @Test
    void aVoltageBeyondTheScaleStandsAtItsEnd() {
        VoltScale scale = VoltScale.holding(DoubleStream.of(3.0, 3.5), 30, 330);
        assertEquals(30, scale.at(12), 1e-9);
        assertEquals(330, scale.at(1.25), 1e-9);
    }

    @Test
    void theScaleIsMarkedInRoundVolts() {
        assertEquals(List.of(2.8, 3.0, 3.2, 3.4), rounded(Ticks.between(2.75, 3.45, 5)));
        assertEquals(1, Ticks.decimals(Ticks.between(2.75, 3.45, 5)));
        assertEquals(List.of(20.0, 22.0, 24.0, 26.0), rounded(Ticks.between(19.5, 26.5, 6)));
        assertEquals(0, Ticks.decimals(Ticks.between(19.5, 26.5, 6)));
    }

    private static List<Double> rounded(List<Double> ticks) {
        return ticks.stream().map(tick -> Math.round(tick * 1e6) / 1e6).toList();
    }
}
