package railtrim.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Outcome figures over many rehearsals. Keeps numbers, not jobs, so that its size hardly grows with them. */
public final class Tally {
    /** So many boards that ended badly are kept to be looked at. */
    private static final int MOST_KEPT = 20;

    private int boards;
    private int finished;
    private int stopped;
    private int aboveStock;
    private int belowFail;
    private int slips;
    private int slipsCaught;
    private final Figures shares = new Figures();
    private final Figures lostToMargin = new Figures();
    private final Figures lostToResistor = new Figures();
    private final Figures readings = new Figures();
    private final Figures runs = new Figures();
    private final Figures minutes = new Figures();
    private final Map<Slip, SlipRow> rows = new EnumMap<>(Slip.class);
    private final Map<String, Integer> caughtAt = new TreeMap<>();
    private final List<Map<String, Object>> bad = new ArrayList<>();

    /** Of one rehearsal alone. */
    public static Tally of(Outcome outcome) {
        Tally tally = new Tally();
        tally.add(outcome);
        return tally;
    }

    /** Adds one more; the order in which outcomes come decides nothing but which of the bad ones are kept. */
    void add(Outcome outcome) {
        boards++;
        finished += outcome.finished() ? 1 : 0;
        stopped += outcome.stopped() ? 1 : 0;
        aboveStock += outcome.aboveStock() ? 1 : 0;
        belowFail += outcome.belowFail() ? 1 : 0;
        slips += outcome.slips().size();
        slipsCaught += outcome.slipsCaught();
        outcome.share().ifPresent(shares::add);
        outcome.lostToMargin().ifPresent(lostToMargin::add);
        outcome.lostToResistor().ifPresent(lostToResistor::add);
        outcome.slips().stream().filter(SlipMade::caught).forEach(made -> caughtAt.merge(made.at(), 1, Integer::sum));
        if (outcome.finished()) {
            readings.add(outcome.effort().readings());
            runs.add(outcome.effort().runs());
            minutes.add(outcome.effort().minutes());
        }
        outcome.slips()
                .forEach(made ->
                        rows.computeIfAbsent(made.slip(), slip -> new SlipRow()).add(made, outcome.harmed()));
        boolean stuck = !outcome.finished() && !outcome.stopped();
        if ((stuck || outcome.harmed()) && bad.size() < MOST_KEPT) {
            bad.add(outcome.values());
        }
    }

    public int boards() {
        return boards;
    }

    public int finished() {
        return finished;
    }

    public int stopped() {
        return stopped;
    }

    public int stuck() {
        return boards - finished - stopped;
    }

    /** Boards whose chip had more than its stock voltage, or would at a corner of the resistors' tolerance. */
    public int aboveStock() {
        return aboveStock;
    }

    /** Boards whose fixed resistor can hold the chip where it may fail. */
    public int belowFail() {
        return belowFail;
    }

    public int slips() {
        return slips;
    }

    public int slipsCaught() {
        return slipsCaught;
    }

    /** Shares of what a perfectly informed expert would have saved, over the finished boards. */
    public Figures shares() {
        return shares;
    }

    public Figures readings() {
        return readings;
    }

    public Figures runs() {
        return runs;
    }

    public Figures minutes() {
        return minutes;
    }

    /** By kind of slip, those that were made. */
    public Map<Slip, SlipRow> rows() {
        return new EnumMap<>(rows);
    }

    /** What each question was worth: how many slips came to light when it was answered, by field; "" for those that came to light without one. */
    public Map<String, Integer> caughtAt() {
        return new TreeMap<>(caughtAt);
    }

    /** The first few that ended badly, as plain values. */
    public List<Map<String, Object>> bad() {
        return List.copyOf(bad);
    }

    /** The figures by name, ready to be written as a JSON object. */
    public Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("boards", boards);
        values.put("finished", finished);
        values.put("stopped", stopped);
        values.put("stuck", stuck());
        values.put("aboveStock", aboveStock);
        values.put("belowFail", belowFail);
        shares.part(0.5).ifPresent(share -> values.put("shareMedian", share));
        shares.part(0.05).ifPresent(share -> values.put("shareFifthPercentile", share));
        lostToMargin.part(0.5).ifPresent(part -> values.put("shareLostToMarginMedian", part));
        lostToResistor.part(0.5).ifPresent(part -> values.put("shareLostToResistorMedian", part));
        readings.part(0.5).ifPresent(median -> values.put("readingsMedian", median));
        runs.part(0.5).ifPresent(median -> values.put("runsMedian", median));
        minutes.part(0.5).ifPresent(median -> values.put("minutesMedian", median));
        values.put("slips", slips);
        values.put("slipsCaught", slipsCaught);
        return values;
    }

    /** Numbers of which only the order matters. */
    public static final class Figures {
        private double[] numbers = new double[64];
        private int count;

        void add(double number) {
            if (count == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * count);
            }
            numbers[count++] = number;
        }

        public int count() {
            return count;
        }

        /** The number below which this part of them lies (nearest rank): 0.5 for the median. Empty without numbers. */
        public OptionalDouble part(double part) {
            double[] sorted = Arrays.copyOf(numbers, count);
            Arrays.sort(sorted);
            int rank = (int) Math.ceil(part * count);
            return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sorted[Math.max(0, rank - 1)]);
        }
    }

    /** One kind of slip. */
    public static final class SlipRow {
        private int before;
        private int after;
        private int never;
        private int harmful;
        private final Map<String, Integer> keys = new TreeMap<>();

        private void add(SlipMade made, boolean harmed) {
            switch (made.noticed()) {
                case BEFORE_HARM -> before++;
                case AFTER_HARM -> after++;
                case NEVER -> {
                    never++;
                    harmful += harmed ? 1 : 0;
                }
            }
            if (made.caught()) {
                keys.merge(made.key(), 1, Integer::sum);
            }
        }

        public int made() {
            return before + after + never;
        }

        public int before() {
            return before;
        }

        public int after() {
            return after;
        }

        public int never() {
            return never;
        }

        /** Of those never noticed, how many were on a board that ended harmed. */
        public int harmful() {
            return harmful;
        }

        /** Message keys that caught it, with how often. */
        public Map<String, Integer> keys() {
            return new TreeMap<>(keys);
        }
    }
}
