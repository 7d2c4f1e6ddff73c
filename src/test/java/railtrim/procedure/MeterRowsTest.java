package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.job.Fact;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/** The accuracy of each range, copied from the manual: what is asked, what is refused, and that it counts. All widths worked out by hand from the rows. */
class MeterRowsTest {
    /** A meter with 6000 counts whose volts get worse with the range, as is usual; invented figures. */
    private static Meter meter() {
        return Meter.ofRanges(
                List.of(volts("6 V 1 mV ±(0.5 % + 3)"), volts("60 V 10 mV ±(0.8 % + 3)")),
                List.of(
                        ohms("600 Ω 0.1 Ω ±(0.9 % + 2)"),
                        ohms("6 kΩ 1 Ω ±(0.7 % + 2)"),
                        ohms("60 kΩ 10 Ω ±(1.2 % + 4)")));
    }

    private static Meter.Range volts(String row) {
        return RangeRow.read(row, Unit.VOLT);
    }

    private static Meter.Range ohms(String row) {
        return RangeRow.read(row, Unit.OHM);
    }

    private static HalfDone atTheRows() {
        HalfDone job = HalfDone.upTo("meter");
        job.course.choose("meter.class", "rows");
        job.course.type("meter.proof", "1.58 V", false);
        job.course.type("meter.zero", "0.2 Ω", false);
        assertEquals("ranges", job.current());
        return job;
    }

    private static Verdict type(HalfDone job, String field, String text) {
        return job.course.type(field, text, false);
    }

    private static String key(Verdict.Refuse refused) {
        return refused.says().get(0).key();
    }

    private static String refused(HalfDone job, String field, String text) {
        return key(assertInstanceOf(Verdict.Refuse.class, type(job, field, text)));
    }

    @Test
    void whoPicksAClassIsAskedForNoRow() {
        HalfDone job = HalfDone.upTo("workplace");
        State.StepState ranges = job.course.state().steps().stream()
                .filter(each -> each.step().id().equals("ranges"))
                .findFirst()
                .orElseThrow();
        assertEquals(State.Status.NOT_NEEDED, ranges.status());
        assertEquals(List.of(), MeterRows.written(job.course.state().figures()));
    }

    /** The sound board hangs on 12 V; a meter that reaches 60 V needs no third row. */
    @Test
    void theNextRowIsAskedForOnlyWhileTheOneBeforeDoesNotReach() {
        HalfDone job = atTheRows();
        assertEquals(
                List.of("range.volt.1", "range.ohm.1"),
                job.course.state().current().missing());
        type(job, "range.volt.1", "6 V 1 mV ±(0.5 % + 3)");
        assertEquals(
                List.of("range.volt.2", "range.ohm.1"),
                job.course.state().current().missing());
        type(job, "range.volt.2", "60 V 10 mV ±(0.8 % + 3)");
        type(job, "range.ohm.1", "600 Ω 0.1 Ω ±(0.9 % + 2)");
        type(job, "range.ohm.2", "6 kΩ 1 Ω ±(0.7 % + 2)");
        assertEquals(List.of("range.ohm.3"), job.course.state().current().missing());
        type(job, "range.ohm.3", "60 kΩ 10 Ω ±(1.2 % + 4)");
        assertEquals("workplace", job.current());
        Figures figures = job.course.state().figures();
        assertEquals((0.005 * 3.3 + 0.003) / Math.sqrt(3), figures.voltUncertainty(3.3), 1e-12);
        assertEquals((0.008 * 12 + 0.03) / Math.sqrt(3), figures.voltUncertainty(12), 1e-12);
        assertEquals((0.009 * 220 + 0.2) / Math.sqrt(3), figures.ohmUncertainty(220), 1e-12);
        assertEquals((0.012 * 10_000 + 40) / Math.sqrt(3), figures.ohmUncertainty(10_000), 1e-9);
        assertEquals(5, MeterRows.written(figures).size());
        assertEquals("6 V, 1 mV, ±(0.5 % + 3)", MeterRows.written(figures).get(0));
    }

    @Test
    void aRowIsSaidBackWithWhatItMeans() {
        Verdict.Accept taken =
                assertInstanceOf(Verdict.Accept.class, type(atTheRows(), "range.volt.1", "6.000V 0.001V 0.5%+3"));
        // half a per cent of 1 V, and three steps of a millivolt
        assertEquals(
                List.of("6 V, 1 mV, ±(0.5 % + 3)", "1 V", "0.008 V"),
                taken.says().get(0).values());
    }

    @Test
    void whatIsNoRowOrNotTheNextOneIsRefused() {
        HalfDone job = atTheRows();
        assertEquals("quantity.range-row", refused(job, "range.volt.1", "0.5 % + 3"));
        assertEquals("quantity.range-steps", refused(job, "range.volt.1", "6 V 1 V ±(0.5 % + 3)"));
        type(job, "range.volt.1", "6 V 1 mV ±(0.5 % + 3)");
        assertEquals("verdict.range-not-larger", refused(job, "range.volt.2", "600 mV 0.1 mV ±(0.5 % + 3)"));
        assertEquals("verdict.range-not-larger", refused(job, "range.volt.2", "6 V 1 mV ±(0.5 % + 3)"));
        assertEquals(
                List.of("range.volt.2", "range.ohm.1"),
                job.course.state().current().missing());
    }

    @Test
    void aReadingWithAZeroLeftOutIsAskedForAgain() {
        HalfDone job = HalfDone.with(meter(), "load");
        String shown = job.bench.meter().volts(3.3).text();
        assertEquals(3, shown.replaceAll(".*\\.|[^0-9]", "").length(), shown);
        job.course.type("load.name", "music", false);
        Verdict.AskAgain again = assertInstanceOf(Verdict.AskAgain.class, type(job, "stock.volts", "3.30 V"));
        assertEquals("verdict.digits-left-out", again.says().get(0).key());
        assertEquals("0.001 V", again.says().get(0).values().get(1));
        Verdict.AskAgain finer = assertInstanceOf(Verdict.AskAgain.class, type(job, "stock.volts", "3.3001 V"));
        assertEquals("verdict.digits-too-fine", finer.says().get(0).key());
        assertInstanceOf(Verdict.Accept.class, type(job, "stock.volts", "3.300 V"));
    }

    /** Who keeps the 60 V range has its 0.8 % and 30 mV, and is asked once. */
    @Test
    void aReadingOnALargerRangeCountsWithTheAccuracyOfThatRange() {
        HalfDone job = HalfDone.with(meter(), "load");
        job.course.type("load.name", "music", false);
        job.course.type("stock.volts", "3.30 V", true);
        Figures figures = job.course.state().figures();
        assertEquals((0.008 * 3.3 + 0.03) / Math.sqrt(3), figures.voltUncertainty(3.3), 1e-12);
        assertEquals(0.01, figures.voltResolution(3.3), 1e-12);
        assertEquals(
                (0.008 * 3.3 + 0.03) / Math.sqrt(3),
                figures.accuracy(figures.reading("stock.volts").orElseThrow()).standardUncertainty(3.3),
                1e-12);
        assertEquals((0.005 * 3.2 + 0.003) / Math.sqrt(3), figures.voltUncertainty(3.2), 1e-12, "not read yet");
        assertTrue(figures.onLargerRange(Unit.VOLT, 0.01));
        assertInstanceOf(Verdict.Accept.class, type(job, "stock.volts", "3.31 V"), "it was said once");
    }

    /** 12.1 V needs the 60 V range; that it ends with 10 mV says nothing about the rail. */
    @Test
    void aLargeReadingOnItsOwnRangeExcusesNoSmallOne() {
        HalfDone job = HalfDone.with(meter(), "load");
        job.course.type("load.name", "music", false);
        job.course.type("input.volts", "12.10 V", false);
        assertInstanceOf(Verdict.AskAgain.class, type(job, "stock.volts", "3.30 V"));
    }

    @Test
    void aWholeJobWithSuchAMeterComesToItsEnd() {
        HalfDone job = HalfDone.with(meter(), "record");
        assertTrue(job.finish(), job::current);
        assertEquals("rows", job.course.state().figures().choice("meter.class").orElseThrow());
    }

    /** One accuracy for all ranges, ±(0.5 % + 2), on a meter that shows up to 1999: 3.3 V is read to 10 mV. Such jobs exist. */
    @Test
    void anOlderJobWithOneAccuracyForAllRangesReadsAsItDid() {
        HalfDone job = HalfDone.upTo("meter");
        job.log.append(new Fact.Choice("meter", "meter.class", "typed-2000"));
        job.log.append(new Fact.Reading("meter", "meter.volt.percent", 0.5, Unit.PERCENT, "0.5 %"));
        job.log.append(new Fact.Reading("meter", "meter.volt.digits", 2, Unit.COUNT, "2"));
        job.reload();
        Figures figures = job.course.state().figures();
        assertEquals((0.005 * 3.3 + 0.02) / Math.sqrt(3), figures.voltUncertainty(3.3), 1e-12);
        assertEquals(
                List.of("meter.ohm.percent", "meter.ohm.digits", "meter.proof", "meter.zero"),
                job.course.state().current().missing());
        assertInstanceOf(Verdict.Accept.class, job.course.choose("meter.class", "typed-2000"));
        assertInstanceOf(Verdict.Refuse.class, job.course.choose("meter.class", "typed-50000"));
    }
}
