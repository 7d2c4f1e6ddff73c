package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.circuit.Simulator.number;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
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

/**
 * A part between any two pads of the practice bench, right or wrong, against the circuit simulator ngspice. Supplies are stiff but for the input's
 * own ohms, the load is a current that does not change, and the regulator gives but never takes. A negative rail is the same circuit mirrored, so it
 * is solved in magnitudes. Shorts of a supply or of the output are left out: what a supply does then is no matter of a network.
 */
class SimulatedWrongPinsTest {
    private static final int SETTINGS = 200;
    private static final Node.Pair INPUT = new Node.Pair(Node.INPUT, Node.GROUND);

    @TempDir
    Path folder;

    @BeforeAll
    static void theSimulatorIsThere() {
        Simulator.required();
    }

    private record Setting(Board board, Bench bench, Node.Pair at, double ohms, Node.Pair probes) {
        static Setting of(int number, RandomGenerator chance) {
            Board drawn = new RandomBoards(
                            RegulatorFamilies.of(BuiltIn.text("regulators.json"))
                                    .all(),
                            chance)
                    .draw("board", Place.values()[number % 4]);
            Board board = as(drawn, chance);
            Bench bench = new Bench(board, SimulatedBoardTest.IDEAL, chance);
            List<Node.Pair> pairs = new ArrayList<>();
            for (Node one : Pads.of(board)) {
                for (Node other : Pads.of(board)) {
                    if (one.ordinal() < other.ordinal()) {
                        pairs.add(new Node.Pair(one, other));
                    }
                }
            }
            Node.Pair at = pairs.get(chance.nextInt(pairs.size()));
            double least = at.touches(Node.GROUND) && !at.touches(Node.ADJUST) ? 1 : 0.05;
            double ohms = least * Math.pow(100_000 / least, chance.nextDouble());
            Part part = bench.takeResistors(List.of(ohms), Part.Joined.SERIES, 0);
            bench.solder(part, at);
            Node.Pair[] places = {Node.Pair.of(Leg.UPPER), Node.Pair.of(Leg.LOWER), Node.Pair.RAIL, INPUT};
            // What a load takes from an output that is pulled to nothing is the bench’s own choice, and the input would
            // show it.
            int probed = at.touches(Node.ADJUST) ? 3 : 4;
            return new Setting(board, bench, at, ohms, places[chance.nextInt(probed)]);
        }

        private static Board as(Board board, RandomGenerator chance) {
            Board.Divider was = board.divider();
            OptionalDouble control = chance.nextBoolean()
                    ? OptionalDouble.of(was.input() + 1 + 4 * chance.nextDouble())
                    : OptionalDouble.empty();
            Board.Divider divider = new Board.Divider(
                    was.place(),
                    was.reference(),
                    was.upper(),
                    was.lower(),
                    was.bias(),
                    was.input(),
                    was.dropout(),
                    0.2 * chance.nextDouble(),
                    0,
                    0,
                    control,
                    0,
                    was.railOhms(),
                    was.decaySeconds());
            Board.Load load = board.load();
            Board.Load steady = new Board.Load(
                    load.name(), load.stockAmperes(), load.idle(), Heat.LoadKind.CONSTANT_CURRENT, 0, 1, load.other());
            return new Board(
                    board.label(),
                    board.feed(),
                    board.chip(),
                    board.regulator(),
                    divider,
                    steady,
                    board.warmth(),
                    board.failing());
        }

        double read() {
            bench.switchOn();
            bench.runLoad(1);
            return Math.abs(bench.volts(probes.first(), probes.second()).value());
        }

        String netlist() {
            Board.Divider divider = board.divider();
            double amperes = board.load().stockAmperes();
            return "Vin src 0 " + number(divider.input()) + "\nRin src in " + number(divider.inputOhms())
                    + "\nIin in 0 "
                    + number(amperes) + "\nVctl ctl 0 "
                    + number(divider.controlSupply().orElse(0)) + "\n" + regulator(divider)
                    + "Ichip reg 0 " + number(amperes) + "\nRupper reg adj "
                    + number(divider.ohms(Leg.UPPER)) + "\nRlower adj 0 "
                    + number(divider.ohms(Leg.LOWER)) + "\nRadded " + from() + " "
                    + node(at.second() == Node.CONTROL || at.first() == Node.CONTROL ? other() : at.second()) + " "
                    + number(ohms) + "\nRmeter " + node(probes.first()) + " " + node(probes.second())
                    + " 10meg\nEseen out 0 " + node(probes.first()) + " " + node(probes.second()) + " 1\n";
        }

        /**
         * Where current comes past it, it must not take what it does not give: a steep source that works one way, and a load that ends at ground.
         * Elsewhere it is the ideal source of the other tests.
         */
        private String regulator(Board.Divider divider) {
            boolean floating = divider.place().loweringLeg() == Leg.LOWER;
            String reference = number(divider.reference().value());
            String dropout = number(divider.dropout());
            String bias = (floating ? "\nIb 0 adj " : "\nIb adj 0 ") + number(divider.bias()) + "\n";
            boolean past = at.touches(Node.OUTPUT) && !at.touches(Node.ADJUST) && !at.touches(Node.GROUND);
            if (!past) {
                return "X1 in reg adj 0 " + (floating ? "floatreg iadj=0" : "fbreg ifb=0") + " vref=" + reference
                        + " vdo=" + dropout + bias;
            }
            String lacks = floating ? "V(adj)+" + reference + "-V(reg)" : reference + "-V(adj)";
            return "Breg 0 reg I = max(0, 5e6*min(" + lacks + ", V(in)-" + dropout + "-V(reg)))" + bias;
        }

        /** A part from the input counts from its stiff end, except where it goes to the other supply, for there it is the ohms that matter. */
        private String from() {
            if (at.touches(Node.CONTROL)) {
                return "ctl";
            }
            return at.first() == Node.INPUT ? "src" : node(at.first());
        }

        private Node other() {
            return at.first() == Node.CONTROL ? at.second() : at.first();
        }

        private static String node(Node node) {
            return switch (node) {
                case INPUT -> "in";
                case OUTPUT -> "reg";
                case ADJUST -> "adj";
                case GROUND -> "0";
                case CONTROL -> "ctl";
            };
        }
    }

    /** The pads there are: a control pad only beside a control supply. */
    private static final class Pads {
        static List<Node> of(Board board) {
            return java.util.Arrays.stream(Node.values())
                    .filter(node -> node != Node.CONTROL
                            || board.divider().controlSupply().isPresent())
                    .toList();
        }
    }

    @Test
    void aPartBetweenAnyTwoPadsReadsAsTheSimulatorSays() {
        long seed = 20261201;
        System.out.println("wrong pins simulation seed " + seed);
        RandomGenerator chance = Rehearsal.chance(seed);
        List<Setting> settings = new ArrayList<>();
        for (int i = 0; i < SETTINGS; i++) {
            settings.add(Setting.of(i, chance));
        }
        List<Double> simulated = Simulator.outputs(
                folder, settings.stream().map(Setting::netlist).toList());
        Set<String> pairs = new TreeSet<>();
        double worst = 0;
        List<String> off = new ArrayList<>();
        for (int i = 0; i < SETTINGS; i++) {
            Setting setting = settings.get(i);
            double read = setting.read();
            double by = Math.abs(read - Math.abs(simulated.get(i)));
            worst = Math.max(worst, by);
            if (by > SimulatedBoardTest.MICROVOLTS) {
                off.add(i + ": " + read + " for " + simulated.get(i) + " " + setting.at() + " "
                        + setting.ohms() + " Ω, " + setting.probes() + " "
                        + setting.board().divider().place() + "\n" + setting.netlist());
            }
            pairs.add(setting.at().toString());
        }
        System.out.println("worst of " + SETTINGS + " settings: " + worst + " V, " + pairs.size() + " pairs of pads");
        assertEquals(List.of(), off);
        assertTrue(pairs.size() == 10, () -> "every pair of pads: " + pairs);
    }
}
