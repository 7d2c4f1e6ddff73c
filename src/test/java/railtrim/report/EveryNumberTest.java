package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import railtrim.procedure.Figures;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.RailSign;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;
import railtrim.report.pdf.Extracted;
import railtrim.report.pdf.PdfReport;
import railtrim.report.pdf.SampleJobs;
import railtrim.threshold.Trial;

/** Each number printed in the record of a job, in each format, is one that the core says, with its sign, its digits and its unit. */
class EveryNumberTest {
    private static final Words WORDS = Words.english();
    private static final Map<String, State> JOBS = new LinkedHashMap<>();

    @BeforeAll
    static void playJobs() {
        State finished = SampleJobs.played("network-blade");
        JOBS.put("finished", finished);
        JOBS.put("negative", SampleJobs.played("delay-unit"));
        JOBS.put("stopped", SampleJobs.played("playout-module"));
        int facts = finished.job().entries().size();
        JOBS.put("begun", SampleJobs.first(finished, facts / 4));
        JOBS.put("half done", SampleJobs.first(finished, facts / 2));
        JOBS.put("all but the last", SampleJobs.first(finished, facts - 1));
    }

    @TestFactory
    Stream<DynamicTest> everyNumberOfEveryFormatIsTheCores() {
        return JOBS.entrySet().stream()
                .map(job -> dynamicTest(job.getKey(), () -> everyNumberIsTheCores(job.getValue())));
    }

    private static void everyNumberIsTheCores(State state) throws IOException {
        Checklist list = Checklist.of(state, SampleJobs.PROCEDURE, WORDS);
        CoreNumbers known = CoreNumbers.of(state, SampleJobs.PROCEDURE, WORDS);
        Map<String, String> formats = formats(list);
        for (Map.Entry<String, String> format : formats.entrySet()) {
            Set<String> strangers = known.strangersIn(format.getValue());
            if (!format.getKey().equals("csv") && !format.getKey().equals("md")) {
                scales(list).forEach(strangers::remove);
            }
            assertEquals(Set.of(), strangers, format.getKey());
        }
    }

    private static Map<String, String> formats(Checklist list) throws IOException {
        Map<String, String> formats = new LinkedHashMap<>();
        formats.put("html", ExportsTest.shown(HtmlReport.write(list, WORDS)));
        formats.put("md", MarkdownReport.write(list, "").replace("\\", "").replaceAll("(?m)^1\\. ", ""));
        formats.put("csv", CsvReport.write(list, ""));
        formats.put(
                "pdf", Extracted.lines(PdfReport.write(list, WORDS, Paper.A4)).replaceAll("\\s+", " "));
        return formats;
    }

    /** A number that a scale is marked with is no figure of the job; {@link #everyMarkStandsAtItsPlaceOnTheScale} holds them. */
    private static List<String> scales(Checklist list) {
        return drawings(list)
                .flatMap(drawing -> ticks(drawing).stream())
                .map(tick -> tick.text().replace(" ", ""))
                .toList();
    }

    private static Stream<Drawing> drawings(Checklist list) {
        return list.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Picture.class::isInstance)
                .map(block -> ((Block.Picture) block).drawing());
    }

    private static List<Shape.Label> ticks(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Shape.Label.class::isInstance)
                .map(Shape.Label.class::cast)
                .filter(label -> label.anchor().equals("end") && label.text().matches("\u2212?\\d+\\.\\d{3} V"))
                .toList();
    }

    /** The step-down plot is held against the readings: two marks of its scale tell where a voltage belongs, to a tenth of a point and its rounding. */
    @Test
    void everyMarkStandsAtItsPlaceOnTheScale() {
        for (String job : List.of("finished", "negative", "all but the last")) {
            State state = JOBS.get(job);
            Checklist list = Checklist.of(state, SampleJobs.PROCEDURE, WORDS);
            Drawing drawing = drawings(list)
                    .filter(each -> each.title().equals(WORDS.of("report.descent")))
                    .findFirst()
                    .orElseThrow();
            List<Shape.Label> ticks = ticks(drawing);
            Shape.Label one = ticks.get(0);
            Shape.Label other = ticks.get(ticks.size() - 1);
            double perVolt = (other.y() - one.y()) / (volts(other) - volts(one));
            List<Double> held = heldAt(drawing);
            List<Trial> trials = state.figures().trials();
            assertEquals(trials.size(), held.size(), job);
            for (int i = 0; i < held.size(); i++) {
                double magnitude = trials.get(i).volts();
                double shown = state.figures().negative() ? -magnitude : magnitude;
                // The label's foot is 4 points below its mark.
                assertEquals(one.y() - 4 + (shown - volts(one)) * perVolt, held.get(i), 0.3, job + " trial " + i);
            }
        }
    }

    /** Where the dots and crosses are, in order from left to right. */
    private static List<Double> heldAt(Drawing drawing) {
        List<Double> held = new ArrayList<>();
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Shape.Dot dot) {
                held.add(dot.y());
            } else if (shape instanceof Shape.Line line && line.style().equals("thick") && line.y1() < line.y2()) {
                held.add((line.y1() + line.y2()) / 2);
            }
        }
        return held;
    }

    private static double volts(Shape.Label tick) {
        return Double.parseDouble(tick.text().replace(" V", "").replace('\u2212', '-'));
    }

    /** A number of the core in the wrong place would be worse than a wrong number. */
    @Test
    void eachNamedFigureIsTheOneItIsNamedAfter() {
        for (String job : List.of("finished", "negative")) {
            Figures figures = JOBS.get(job).figures();
            RailSign sign = new RailSign(job.equals("negative"));
            Checklist list = Checklist.of(JOBS.get(job), SampleJobs.PROCEDURE, WORDS);
            Map<String, String> wanted = new LinkedHashMap<>();
            wanted.put("report.stock", sign.volts(figures.stock().orElseThrow()));
            wanted.put("report.fitted", sign.volts(figures.fitted().orElseThrow()));
            wanted.put("report.target", sign.volts(figures.target().orElseThrow()));
            wanted.put("report.input", sign.volts(figures.input().orElseThrow()));
            wanted.put("report.reference", Display.volts(figures.reference().orElseThrow()));
            wanted.put(
                    "report.fail",
                    sign.volts(figures.failVoltage().orElseThrow().fail()));
            wanted.put(
                    "report.recommended",
                    sign.volts(figures.budget().orElseThrow().recommended()));
            wanted.put(
                    "report.resistor.voltage",
                    sign.volts(figures.chosen().orElseThrow().voltage()));
            wanted.put(
                    "report.resistor.added",
                    Display.ohms(figures.chosen().orElseThrow().added()));
            wanted.forEach((key, figure) -> {
                List<String> said = named(list, WORDS.of(key));
                assertFalse(said.isEmpty(), key);
                said.forEach(value -> assertTrue(value.startsWith(figure), key + ": " + value + ", not " + figure));
            });
            String last = list.sections().stream()
                    .flatMap(section -> section.blocks().stream())
                    .filter(Block.Deeds.class::isInstance)
                    .flatMap(block -> ((Block.Deeds) block).texts().stream())
                    .reduce((earlier, later) -> later)
                    .orElseThrow();
            assertTrue(last.contains(wanted.get("report.stock")), last);
        }
    }

    private static List<String> named(Checklist list, String name) {
        return list.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Pairs.class::isInstance)
                .flatMap(block -> ((Block.Pairs) block).pairs().stream())
                .filter(pair -> pair.name().equals(name))
                .map(Checklist.Pair::value)
                .toList();
    }

    /** Only what was typed without a sign stands without one. */
    @Test
    void noVoltageOfANegativeRailStandsWithoutItsSign() throws IOException {
        State state = JOBS.get("negative");
        Figures figures = state.figures();
        List<Double> rail = new ArrayList<>(List.of(
                figures.stock().orElseThrow(),
                figures.fitted().orElseThrow(),
                figures.failVoltage().orElseThrow().fail(),
                figures.failVoltage().orElseThrow().bracketHigh(),
                figures.chosen().orElseThrow().voltage(),
                figures.chosen().orElseThrow().lowest(),
                figures.chosen().orElseThrow().highest()));
        figures.trials().forEach(trial -> rail.add(trial.volts()));
        Checklist list = Checklist.of(state, SampleJobs.PROCEDURE, WORDS);
        for (Map.Entry<String, String> format : formats(list).entrySet()) {
            for (double volts : rail) {
                String unsigned = Display.volts(volts);
                Matcher found =
                        Pattern.compile("(?<![\\d.])" + Pattern.quote(unsigned)).matcher(format.getValue());
                boolean any = false;
                while (found.find()) {
                    any = true;
                    String before = format.getValue().substring(Math.max(0, found.start() - 30), found.end());
                    assertTrue(before.matches("(?s).*[\u2212-]" + Pattern.quote(unsigned)), format.getKey() + before);
                }
                assertTrue(any, format.getKey() + " " + unsigned);
            }
        }
    }
}
