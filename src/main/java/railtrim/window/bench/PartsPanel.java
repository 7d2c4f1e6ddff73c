package railtrim.window.bench;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.circuit.Leg;
import railtrim.practice.Node.Pair;
import railtrim.practice.Part;
import railtrim.practice.VirtualTrimmer;
import railtrim.procedure.Figures;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** The drawer and the iron: fetch the parts the job has chosen, solder, lift or take them off, and turn the trimmer. */
final class PartsPanel implements BenchView.Panel {
    private static final Pair UPPER = Pair.of(Leg.UPPER);
    private static final Pair LOWER = Pair.of(Leg.LOWER);

    private final Words words;
    private final Workbench work;
    private final Supplier<Figures> figures;
    private final Consumer<Runnable> deed;
    private final VBox box = Build.column("bench-panel");
    private final Slider travel = new Slider(0, 1, 0.5);
    private final Label turned = Build.label("", "help");
    private final Slider fineTravel = new Slider(0, 1, 0.5);
    private final Label fineTurned = Build.label("", "help");
    private boolean showing;
    private String built = "";

    PartsPanel(Words words, Workbench work, Supplier<Figures> figures, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.figures = figures;
        this.deed = deed;
        prepare(travel, "trimmer-travel", "window.bench.trimmer.travel", work::turn);
        prepare(fineTravel, "trimmer-fine-travel", "window.bench.trimmer.fine-travel", work::turnFine);
    }

    private void prepare(Slider slider, String id, String key, DoubleConsumer turn) {
        Handle.give(slider, id);
        slider.setAccessibleText(words.of(key));
        slider.setBlockIncrement(0.01);
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.valueProperty().addListener((of, was, is) -> {
            if (!showing) {
                deed.accept(() -> turn.accept(is.doubleValue()));
            }
        });
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show() {
        Optional<Drawer.Trimmer> trimmer = Drawer.trimmer(figures.get());
        Optional<Drawer.Resistor> resistor = Drawer.resistor(figures.get());
        String now = trimmer + " " + resistor + " " + work.trimmer() + " " + work.resistor();
        if (!now.equals(built)) {
            built = now;
            rebuild(trimmer, resistor);
        }
        work.trimmer().ifPresent(mounted -> showTurned(mounted.part()));
    }

    /** The focus stays on the button that was pressed, although it is a new one. */
    private void rebuild(Optional<Drawer.Trimmer> trimmer, Optional<Drawer.Resistor> resistor) {
        Optional<String> focused = Optional.ofNullable(box.getScene())
                .map(scene -> scene.getFocusOwner())
                .map(Node::getId)
                .filter(id -> box.lookup("#" + id) != null);
        box.getChildren().clear();
        if (trimmer.isEmpty() && work.trimmer().isEmpty()) {
            box.getChildren().add(Build.prose(words.of("window.bench.parts.none"), "help"));
        }
        trimmer.ifPresent(wanted -> box.getChildren().add(trimmer(wanted)));
        resistor.ifPresent(wanted -> box.getChildren().add(resistor(wanted)));
        focused.map(id -> box.lookup("#" + id)).ifPresent(Node::requestFocus);
    }

    private void showTurned(Part.Trimmer part) {
        showTurned(part.trimmer(), travel, turned);
        part.fine().ifPresent(fine -> showTurned(fine, fineTravel, fineTurned));
    }

    private void showTurned(VirtualTrimmer trimmer, Slider slider, Label says) {
        showing = true;
        slider.setValue(trimmer.travel());
        showing = false;
        says.setText(words.of(
                "window.bench.turned",
                String.format(java.util.Locale.ROOT, "%.2f", trimmer.travel() * trimmer.turns()),
                Integer.toString(trimmer.turns())));
    }

    private Node trimmer(Drawer.Trimmer wanted) {
        VBox rows = Build.column("bench-part");
        rows.getChildren()
                .add(named(
                        "window.bench.trimmer",
                        wanted.name(),
                        work.trimmer().flatMap(Workbench.Mounted::across),
                        work.trimmer().isPresent()));
        FlowPane deeds = flow();
        deeds.getChildren().add(button("trimmer-fetch", "window.bench.fetch", () -> work.fetchTrimmer(wanted)));
        work.trimmer().ifPresent(mounted -> {
            deeds.getChildren()
                    .addAll(
                            solder("trimmer", UPPER, work::solderTrimmer),
                            solder("trimmer", LOWER, work::solderTrimmer));
            if (mounted.across().isPresent()) {
                boolean lifted = mounted.lifted();
                deeds.getChildren()
                        .add(button(
                                "trimmer-lift",
                                lifted ? "window.bench.lower" : "window.bench.lift",
                                () -> work.liftTrimmer(!lifted)));
                deeds.getChildren().add(button("trimmer-remove", "window.bench.remove", work::removeTrimmer));
            }
        });
        rows.getChildren().add(deeds);
        work.trimmer().ifPresent(mounted -> rows.getChildren().add(turning(mounted.part())));
        return rows;
    }

    private Node turning(Part.Trimmer part) {
        VBox screws = Build.column("bench-part");
        if (part.fine().isPresent()) {
            screws.getChildren().add(Build.label(words.of("window.bench.trimmer.coarse"), "help"));
        }
        screws.getChildren().addAll(travel, nudges("trimmer", part.trimmer(), work::turn, turned));
        part.fine()
                .ifPresent(fine -> screws.getChildren()
                        .addAll(
                                Build.label(words.of("window.bench.trimmer.fine"), "help"),
                                fineTravel,
                                nudges("trimmer-fine", fine, work::turnFine, fineTurned)));
        return screws;
    }

    private Node nudges(String id, VirtualTrimmer screw, DoubleConsumer turn, Label says) {
        double little = 0.02 / screw.turns();
        double more = 0.5 / screw.turns();
        FlowPane row = flow();
        row.getChildren()
                .addAll(
                        nudge(id + "-down-more", "window.bench.down-more", screw, turn, -more),
                        nudge(id + "-down", "window.bench.down", screw, turn, -little),
                        nudge(id + "-up", "window.bench.up", screw, turn, little),
                        nudge(id + "-up-more", "window.bench.up-more", screw, turn, more),
                        says);
        return row;
    }

    private Button nudge(String id, String key, VirtualTrimmer screw, DoubleConsumer turn, double by) {
        return button(id, key, () -> turn.accept(Math.max(0, Math.min(1, screw.travel() + by))));
    }

    private Node resistor(Drawer.Resistor wanted) {
        VBox rows = Build.column("bench-part");
        rows.getChildren()
                .add(named(
                        "window.bench.resistor",
                        wanted.name(),
                        work.resistor().flatMap(Workbench.Mounted::across),
                        work.resistor().isPresent()));
        FlowPane deeds = flow();
        deeds.getChildren().add(button("resistor-fetch", "window.bench.fetch", () -> work.fetchResistor(wanted)));
        work.resistor().ifPresent(mounted -> {
            deeds.getChildren()
                    .addAll(
                            solder("resistor", UPPER, work::solderResistor),
                            solder("resistor", LOWER, work::solderResistor));
            if (mounted.across().isPresent()) {
                deeds.getChildren().add(button("resistor-remove", "window.bench.remove", work::removeResistor));
            }
        });
        rows.getChildren().add(deeds);
        return rows;
    }

    private Node named(String key, String name, Optional<Pair> across, boolean fetched) {
        String where = across.map(pair -> words.of("window.bench.across", words.of("option.pair." + pair.id())))
                .orElseGet(() -> words.of(fetched ? "window.bench.in-hand" : "window.bench.in-drawer"));
        return Build.prose(words.of(key, name, where), "bench-part-name");
    }

    private Button solder(String part, Pair pair, Consumer<Pair> how) {
        return button(part + "-solder-" + pair.id(), "window.bench.solder." + pair.id(), () -> how.accept(pair));
    }

    private Button button(String id, String key, Runnable work) {
        return Build.button(id, words.of(key), () -> deed.accept(work), "plain", "bench-small");
    }

    private static FlowPane flow() {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("bench-flow");
        return flow;
    }
}
