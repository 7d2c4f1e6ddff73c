package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** Where the two leads of a part in the hand go, any two pads of the board, and how the iron is used. Nothing is soldered before both are chosen. */
final class LeadChoice {
    private final Words words;
    private final String part;
    private final Board board;
    private final Map<Node, ToggleButton> firsts = new EnumMap<>(Node.class);
    private final Map<Node, ToggleButton> seconds = new EnumMap<>(Node.class);
    private final Map<Bench.Manner, ToggleButton> manners = new EnumMap<>(Bench.Manner.class);
    private final Button solder;
    private final VBox rows;
    private Optional<Node> first = Optional.empty();
    private Optional<Node> second = Optional.empty();
    private Bench.Manner manner = Bench.Manner.CARE;

    /** @param part trimmer or resistor, for the names of the controls */
    LeadChoice(
            Words words, String part, Board board, Consumer<Runnable> deed, BiConsumer<Node.Pair, Bench.Manner> iron) {
        this.words = words;
        this.part = part;
        this.board = board;
        solder = Build.button(
                part + "-solder", words.of("window.bench.solder"), () -> deed.accept(() -> solder(iron)), "take");
        rows = Build.column(
                "bench-part",
                leads("first", firsts, node -> first = Optional.of(node)),
                leads("second", seconds, node -> second = Optional.of(node)),
                manners(),
                solder);
        show();
    }

    javafx.scene.Node node() {
        return rows;
    }

    private void solder(BiConsumer<Node.Pair, Bench.Manner> iron) {
        if (first.isPresent() && second.isPresent() && !first.equals(second)) {
            iron.accept(new Node.Pair(first.get(), second.get()), manner);
            first = Optional.empty();
            second = Optional.empty();
            manner = Bench.Manner.CARE;
            show();
        }
    }

    private FlowPane leads(String which, Map<Node, ToggleButton> buttons, Consumer<Node> chosen) {
        FlowPane row = row("window.bench.lead." + which);
        for (Node node : Pads.of(board)) {
            String name =
                    words.of("window.bench.lead." + which + ".to", words.of("window.bench.node." + Pads.id(node)));
            ToggleButton button = Build.dress(
                    new ToggleButton(Pads.print(words, node)),
                    part + "-" + which + "-" + Pads.id(node),
                    name,
                    () -> {
                        chosen.accept(node);
                        show();
                    },
                    "chip");
            buttons.put(node, button);
            row.getChildren().add(button);
        }
        return row;
    }

    private FlowPane manners() {
        FlowPane row = row("window.bench.manner");
        for (Bench.Manner each : Bench.Manner.values()) {
            String name = each.name().toLowerCase(Locale.ROOT);
            String text = words.of("window.bench.manner." + name);
            ToggleButton button = Build.dress(
                    new ToggleButton(text),
                    part + "-manner-" + name,
                    text,
                    () -> {
                        manner = each;
                        show();
                    },
                    "chip");
            manners.put(each, button);
            row.getChildren().add(button);
        }
        return row;
    }

    private FlowPane row(String key) {
        FlowPane row = new FlowPane(Build.label(words.of(key), "help"));
        row.getStyleClass().add("bench-flow");
        return row;
    }

    private void show() {
        firsts.forEach(
                (node, button) -> button.setSelected(first.filter(node::equals).isPresent()));
        seconds.forEach(
                (node, button) -> button.setSelected(second.filter(node::equals).isPresent()));
        manners.forEach((each, button) -> button.setSelected(each == manner));
        solder.setDisable(first.isEmpty() || second.isEmpty() || first.equals(second));
    }
}
