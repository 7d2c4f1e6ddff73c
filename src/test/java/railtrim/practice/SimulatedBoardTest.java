package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.circuit.Simulator.number;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.circuit.Leg;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.Simulator;
import railtrim.heat.Heat;
import railtrim.job.BuiltIn;
import railtrim.quantity.Accuracy;
import railtrim.quantity.Meter;

/**
 * The practice bench against the circuit simulator ngspice: the same board, the same wiring, the same probes, solved as a network. Left out is what
 * the simulator has no part for: minimum load, warming, and the chance in a meter's error.
 */
class SimulatedBoardTest {
    private static final int SETTINGS = 200;
    static final double MICROVOLTS = 2e-6;

    /** Shows a nanovolt and a nanoohm and is never off, so that the bench's own sum is read and nothing else; it still draws its current. */
    static final Meter IDEAL = new Meter(
            "ideal",
            List.of(new Meter.Range(1e3, new Accuracy(0, 0, 1e-9))),
            List.of(new Meter.Range(1e6, new Accuracy(0, 0, 1e-9))));

    private static final Node.Pair UPPER = Node.Pair.of(Leg.UPPER);
    private static final Node.Pair LOWER = Node.Pair.of(Leg.LOWER);

    @TempDir
    Path folder;

    @BeforeAll
    static void theSimulatorIsThere() {
        Simulator.required();
    }

    /** A board, what is soldered to it, what it does, and where the probes are. */
    private record Setting(Board board, Bench bench, Optional<Soldered> added, Board.Work work, Node.Pair probes) {
        /** @param lifted one lead off the board */
        record Soldered(Part part, Node.Pair at, boolean lifted) {}

        static Setting of(int number, RandomGenerator chance) {
            Board drawn = new RandomBoards(
                            RegulatorFamilies.of(BuiltIn.text("regulators.json"))
                                    .all(),
                            chance)
                    .draw("board", Place.values()[number % 4]);
            Node.Pair[] places = {UPPER, LOWER, Node.Pair.RAIL};
            Node.Pair probes = places[chance.nextInt(3)];
            // Now and then too little input, so that the regulator gives what there is.
            boolean starved = chance.nextInt(5) == 0;
            Board board =
                    as(drawn, starved ? 0.9 * drawn.stock() + drawn.divider().dropout() : 0, probes, chance);
            Bench bench = new Bench(board, IDEAL, chance);
            Optional<Soldered> added = chance.nextInt(6) == 0 ? Optional.empty() : Optional.of(added(bench, chance));
            added.ifPresent(each -> {
                bench.solder(each.part(), each.at());
                if (each.lifted()) {
                    bench.lift(each.part());
                }
            });
            Board.Work[] works = {Board.Work.IDLE, Board.Work.NAMED, Board.Work.OTHER};
            return new Setting(board, bench, added, works[chance.nextInt(3)], probes);
        }

        /** A trimmer somewhere on its track with a stop and maybe a fine one, or a resistor, or a bridge of solder; mostly on the right leg. */
        private static Soldered added(Bench bench, RandomGenerator chance) {
            Node.Pair right = Node.Pair.of(bench.board().divider().place().loweringLeg());
            Node.Pair wrong =
                    Node.Pair.of(bench.board().divider().place().loweringLeg().other());
            Part part = switch (chance.nextInt(4)) {
                case 0 -> bench.takeResistors(List.of(4700.0), Part.Joined.SERIES, 0.05);
                case 1 -> bench.takeResistors(List.of(0.05), Part.Joined.SERIES, 0);
                default -> {
                    Part.Trimmer trimmer = bench.takeTrimmers(10_000, 500, 25, 0.1, 220);
                    bench.turn(trimmer, chance.nextDouble());
                    bench.turnFine(trimmer, chance.nextDouble());
                    yield trimmer;
                }
            };
            return new Soldered(part, chance.nextInt(4) == 0 ? wrong : right, chance.nextInt(8) == 0);
        }

        /**
         * The same board with an input that gives way, and with a load whose current is the same wherever the regulator ends: what the current does
         * as the output falls below what it was set for is the bench's own choice. The output's own ohms lie outside the divider here and inside it on
         * the bench, so they are left out where a probe is on a leg.
         */
        private static Board as(Board board, double input, Node.Pair probes, RandomGenerator chance) {
            Board.Divider was = board.divider();
            Board.Divider divider = new Board.Divider(
                    was.place(),
                    was.reference(),
                    was.upper(),
                    was.lower(),
                    was.bias(),
                    input > 0 ? input : was.input(),
                    was.dropout(),
                    0.2 * chance.nextDouble(),
                    0,
                    0,
                    OptionalDouble.empty(),
                    probes.equals(Node.Pair.RAIL) ? was.outputOhms() : 0,
                    was.railOhms(),
                    was.decaySeconds());
            Board.Load load = board.load();
            return new Board(
                    board.label(),
                    board.feed(),
                    board.chip(),
                    board.regulator(),
                    divider,
                    new Board.Load(
                            load.name(),
                            load.stockAmperes(),
                            load.idle(),
                            Heat.LoadKind.CONSTANT_CURRENT,
                            0,
                            0.7,
                            load.other()),
                    board.warmth(),
                    board.failing());
        }

        double read() {
            bench.switchOn();
            if (work == Board.Work.NAMED) {
                bench.runLoad(1);
            } else if (work == Board.Work.OTHER) {
                bench.runOther(1);
            }
            return bench.volts(probes.first(), probes.second()).value();
        }

        double readOhms() {
            return bench.ohms(probes.first(), probes.second()).value()
                    - bench.meter().leadOhms();
        }

        private double amperes() {
            double busy = work == Board.Work.NAMED
                    ? 1
                    : work == Board.Work.IDLE
                            ? board.load().idle()
                            : board.load().other().orElseThrow().share();
            return 0.7 * busy * board.load().stockAmperes();
        }

        /** What the probes see with the power on; the regulator holds {@code reg}, and the chip hangs on {@code chip} behind the output's own ohms. */
        String powered() {
            Board.Divider divider = board.divider();
            boolean negative = divider.place().negative();
            String sign = negative ? "-" : "";
            boolean floating = divider.place().loweringLeg() == Leg.LOWER;
            String kind = negative ? "negreg" : floating ? "floatreg" : "fbreg";
            return "Vin src 0 " + sign + number(divider.input()) + "\nRin src in "
                    + number(Math.max(1e-9, divider.inputOhms()))
                    + "\nIin in 0 " + sign + number(amperes())
                    + "\nX1 in reg adj 0 " + kind + " vref="
                    + number(divider.reference().value())
                    + (floating ? " iadj=0" : " ifb=" + number(divider.bias())) + " vdo=" + number(divider.dropout())
                    + (floating ? "\nIb 0 adj " + sign + number(divider.bias()) : "")
                    + "\nRchip reg chip " + number(Math.max(1e-9, divider.outputOhms()))
                    + "\nIchip chip 0 " + sign + number(amperes())
                    + "\n" + resistors("reg") + seen(node(probes.first()), node(probes.second()))
                    + "Rmeter " + meterAt(probes.first()) + " " + meterAt(probes.second()) + " 10meg\n";
        }

        /** One milliampere from probe to probe with the power off. */
        String unpowered() {
            return "Rrail reg 0 " + number(board.divider().railOhms()) + "\n" + resistors("reg") + "Itest "
                    + off(probes.second()) + " " + off(probes.first()) + " 1m\n"
                    + seen(off(probes.first()), off(probes.second())) + "Rfar reg 0 1e12\nRadj adj 0 1e12\n";
        }

        private String resistors(String out) {
            StringBuilder told = new StringBuilder();
            told.append("Rupper ")
                    .append(out)
                    .append(" adj ")
                    .append(number(board.divider().ohms(Leg.UPPER)));
            told.append("\nRlower adj 0 ")
                    .append(number(board.divider().ohms(Leg.LOWER)))
                    .append('\n');
            added.filter(each -> !each.lifted())
                    .ifPresent(each -> told.append("Radded ")
                            .append(each.at().equals(UPPER) ? out + " adj " : "adj 0 ")
                            .append(number(each.part().ohms()))
                            .append('\n'));
            return told.toString();
        }

        /** The chip's own end of the output, where a probe goes. */
        private static String node(Node node) {
            return node == Node.OUTPUT ? "chip" : node == Node.ADJUST ? "adj" : "0";
        }

        /** The meter's current is told where it changes the divider. */
        private static String meterAt(Node node) {
            return node == Node.OUTPUT ? "reg" : node == Node.ADJUST ? "adj" : "0";
        }

        private static String off(Node node) {
            return meterAt(node);
        }

        private static String seen(String red, String black) {
            return "Eseen out 0 " + red + " " + black + " 1\n";
        }
    }

    @Test
    void twoHundredSettingsReadAsTheSimulatorSays() {
        long seed = 20261125;
        System.out.println("practice board simulation seed " + seed);
        List<Setting> settings = drawn(seed);
        List<Double> simulated = Simulator.outputs(
                folder, settings.stream().map(Setting::powered).toList());
        Map<Place, Integer> places = new EnumMap<>(Place.class);
        double worst = 0;
        for (int i = 0; i < SETTINGS; i++) {
            Setting setting = settings.get(i);
            double read = setting.read();
            worst = Math.max(worst, Math.abs(read - simulated.get(i)));
            int number = i;
            assertEquals(simulated.get(i), read, MICROVOLTS, () -> number + " " + setting + "\n" + setting.powered());
            places.merge(setting.board().divider().place(), 1, Integer::sum);
        }
        System.out.println("worst of " + SETTINGS + " settings: " + worst + " V");
        assertEquals(Place.values().length, places.size());
    }

    /** In millivolts at one milliampere, as an ohmmeter does it: the network of legs, load path and added part, to 2 µV and six digits. */
    @Test
    void theOhmsOfAnUnpoweredBoardAreTheSimulatorsToo() {
        List<Setting> settings = drawn(20261126);
        List<Double> simulated = Simulator.outputs(
                folder, settings.stream().map(Setting::unpowered).toList());
        for (int i = 0; i < SETTINGS; i++) {
            Setting setting = settings.get(i);
            double volts = 1e-3 * setting.readOhms();
            assertEquals(simulated.get(i), volts, MICROVOLTS + 2e-6 * volts, setting::unpowered);
        }
    }

    private static List<Setting> drawn(long seed) {
        RandomGenerator chance = Rehearsal.chance(seed);
        List<Setting> settings = new ArrayList<>();
        for (int i = 0; i < SETTINGS; i++) {
            settings.add(Setting.of(i, chance));
        }
        assertTrue(settings.stream().anyMatch(each -> each.added().isPresent()));
        return settings;
    }
}
