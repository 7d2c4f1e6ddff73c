package railtrim.fuzz;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Origin;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** Whole jobs, each changed here and there by chance into what only a file made by hand can hold: every line of it well formed. */
public final class StrangeJobs {
    private static final List<String> BOARDS =
            List.of("sound-board", "network-blade", "delay-unit", "studio-clock", "playout-module");

    /** Where a number, an answer or a name is expected. */
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "NaN",
            "-5",
            "1d",
            "0x1p3",
            "1e999",
            "99999999999999999999",
            "-",
            "٣",
            "abc",
            "{0}",
            "'{",
            "${7*7}",
            "<#assign x=1>",
            "../../x",
            "\u0301".repeat(400) + "Z",
            "W".repeat(3_990),
            "ا".repeat(300),
            "\ufffc\ufffd\uf8ff\u0378",
            "a\nb\n\n# c",
            "x;=1+1;@SUM(1)");

    private static final double[] NUMBERS = {
        0, -0.0, 1e-30, -1e-30, 1e12, -1e12, 1, -1, 0.5, 3.3, -3.3, 5, 60, 100, 1e3, 1e6, 1e-3
    };

    private final Procedure procedure;
    private final Random random;
    private final List<List<Entry>> whole;
    private final List<String> steps;
    private final List<String> fields;
    private final List<String> answers;

    public StrangeJobs(Procedure procedure, long seed) {
        this.procedure = procedure;
        this.random = new Random(seed);
        this.whole = BOARDS.stream().map(name -> rehearsed(name, seed)).toList();
        this.steps = procedure.steps().stream().map(step -> step.id()).toList();
        this.fields = procedure.steps().stream()
                .flatMap(step -> step.fields().stream())
                .map(field -> field.id())
                .toList();
        this.answers = whole.stream()
                .flatMap(List::stream)
                .map(Entry::fact)
                .flatMap(fact -> fact instanceof Fact.Choice choice ? Stream.of(choice.option()) : Stream.empty())
                .distinct()
                .toList();
    }

    private List<Entry> rehearsed(String board, long seed) {
        return new Rehearsal(procedure, Meter.middle())
                .play(Board.of(BuiltIn.text("demo-data/boards/" + board + ".json")), seed)
                .job()
                .entries();
    }

    public Job next() {
        List<Fact> facts = new ArrayList<>();
        pick(whole).forEach(entry -> facts.add(entry.fact()));
        if (random.nextInt(3) == 0) {
            facts.subList(random.nextInt(facts.size()), facts.size()).clear();
        }
        int changes = 1 + random.nextInt(random.nextInt(5) == 0 ? 40 : 4);
        for (int i = 0; i < changes && !facts.isEmpty(); i++) {
            int at = random.nextInt(facts.size());
            switch (random.nextInt(6)) {
                case 0 -> facts.remove(at);
                case 1 -> facts.add(at, facts.get(random.nextInt(facts.size())));
                case 2 -> facts.add(at, invented());
                default -> facts.set(at, twisted(facts.get(at)));
            }
        }
        List<Entry> entries = new ArrayList<>();
        Instant time = instant();
        int session = 1 + random.nextInt(3);
        for (Fact fact : facts) {
            time = random.nextInt(60) == 0 ? instant() : time.plusSeconds(random.nextInt(400));
            session += random.nextInt(80) == 0 ? 1 : 0;
            long tick = entries.isEmpty() || entries.get(entries.size() - 1).session() != session
                    ? 0
                    : entries.get(entries.size() - 1).tick() + random.nextInt(400_000);
            entries.add(new Entry(entries.size() + 1, time, session, tick, fact));
        }
        return new Job(random.nextInt(4) == 0 ? text() : "organ", entries, Origin.ELSEWHERE);
    }

    /** The same fact saying something nobody offered. */
    private Fact twisted(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            Unit unit = random.nextInt(4) == 0 ? Unit.values()[random.nextInt(Unit.values().length)] : reading.unit();
            double value = random.nextBoolean() ? number() : -reading.value();
            return new Fact.Reading(reading.step(), reading.field(), value, unit, text());
        } else if (fact instanceof Fact.Choice choice) {
            return new Fact.Choice(choice.step(), choice.field(), random.nextBoolean() ? pick(answers) : text());
        } else if (fact instanceof Fact.Note note) {
            return new Fact.Note(note.step(), note.field(), text());
        } else if (fact instanceof Fact.Power power) {
            return new Fact.Power(power.step(), !power.on());
        }
        return invented();
    }

    private Fact invented() {
        String step = random.nextInt(10) == 0 ? text() : pick(steps);
        String field = random.nextInt(10) == 0 ? text() : pick(fields);
        return switch (random.nextInt(12)) {
            case 0 -> new Fact.Note(step, field, text());
            case 1 -> new Fact.Choice(step, field, random.nextBoolean() ? pick(answers) : text());
            case 2 -> new Fact.Power(step, random.nextBoolean());
            case 3 -> new Fact.Alarm(step, text());
            case 4 -> new Fact.Reopened(step, text());
            case 5 -> new Fact.Skipped(step, text());
            case 6 -> new Fact.Paused(step, text());
            case 7 -> new Fact.Resumed(step, random.nextBoolean() ? -1 : (long) number());
            case 8 -> new Fact.Proposed(step, field, text());
            case 9 -> new Fact.Withdrawn(step, random.nextInt(400));
            case 10 -> new Fact.Acknowledged(step, text());
            default ->
                new Fact.Reading(step, field, number(), Unit.values()[random.nextInt(Unit.values().length)], text());
        };
    }

    private Instant instant() {
        return switch (random.nextInt(8)) {
            case 0 -> Instant.parse("0000-01-01T00:00:00Z");
            case 1 -> Instant.parse("9999-12-31T23:59:59.999999999Z");
            default -> Instant.parse("2026-03-01T09:00:00Z").plusSeconds(random.nextInt(1_000_000));
        };
    }

    private double number() {
        return NUMBERS[random.nextInt(NUMBERS.length)];
    }

    private String text() {
        return pick(TEXTS);
    }

    /** The line of this program at which something stopped. */
    public static String where(Throwable e) {
        return Stream.of(e.getStackTrace())
                .filter(line -> line.getClassName().startsWith("railtrim."))
                .findFirst()
                .map(StackTraceElement::toString)
                .orElse("");
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
