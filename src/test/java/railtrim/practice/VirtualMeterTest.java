package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import railtrim.quantity.Meter;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

class VirtualMeterTest {
    /** 500 meters of each class, 20 voltages and resistances each: no reading leaves the interval its maker promises. */
    @Test
    void noReadingIsFurtherOffThanTheMetersClassAllows() {
        for (Meter meter : new Meter[] {Meter.basic(), Meter.middle(), Meter.fine()}) {
            for (int seed = 0; seed < 500; seed++) {
                var chance = Rehearsal.chance(seed);
                VirtualMeter virtual = new VirtualMeter(meter, chance);
                for (int i = 0; i < 20; i++) {
                    double volts = 12 * chance.nextDouble();
                    double shown = virtual.volts(volts).value();
                    assertWithin(volts, shown, meter.voltsAt(shown).halfWidth(volts));
                    double ohms = Math.pow(10, 1 + 4 * chance.nextDouble());
                    double total = ohms + virtual.leadOhms();
                    double read = virtual.ohms(ohms).value();
                    assertWithin(total, read, meter.ohmsAt(read).halfWidth(total));
                }
            }
        }
    }

    private static void assertWithin(double truth, double shown, double halfWidth) {
        assertTrue(Math.abs(shown - truth) <= halfWidth * (1 + 1e-9), shown + " for " + truth + " ± " + halfWidth);
    }

    /** What the display shows is what a person types, and what is read back is that number. */
    @Test
    void whatIsShownCanBeTypedAsItStands() {
        VirtualMeter virtual = new VirtualMeter(Meter.middle(), Rehearsal.chance(5));
        for (double ohms : new double[] {0, 0.4, 218.4, 1769.553, 10_020, 4_700_000}) {
            Shown shown = virtual.ohms(ohms);
            assertEquals(
                    shown.value(), QuantityReader.read(shown.text(), Unit.OHM).value(), 1e-9 * (1 + ohms));
        }
        for (double volts : new double[] {0, 0.00004, 0.42, 3.555, -5.08, 12.2}) {
            Shown shown = virtual.volts(volts);
            assertEquals(
                    shown.value(), QuantityReader.read(shown.text(), Unit.VOLT).value(), 1e-9);
        }
    }

    @Test
    void anOpenCircuitIsOverload() {
        VirtualMeter virtual = new VirtualMeter(Meter.basic(), Rehearsal.chance(5));
        Shown shown = virtual.ohms(Double.POSITIVE_INFINITY);
        assertTrue(shown.overload());
        assertEquals("OL", shown.text());
    }

    /** A 2000-count meter shows 3.555 V on its 20 V range: two decimals. */
    @Test
    void aSimpleMeterShowsTenMillivoltSteps() {
        VirtualMeter virtual = new VirtualMeter(Meter.basic(), Rehearsal.chance(5));
        assertTrue(
                virtual.volts(3.555).text().matches("3\\.\\d\\d V"),
                virtual.volts(3.555).text());
    }
}
