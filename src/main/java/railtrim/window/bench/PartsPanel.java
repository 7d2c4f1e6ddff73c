package railtrim.window.bench;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import railtrim.practice.Board;
import railtrim.practice.Part;
import railtrim.procedure.Figures;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** The drawer and the iron: fetch the parts the job has chosen, solder, look at the joints, lift or take them off, and turn the trimmer. */
final class PartsPanel implements BenchView.Panel {
    private static final String LOOK = "bench-look";

    private final Words words;
    private final Workbench work;
    private final Supplier<Figures> figures;
    private final Consumer<Runnable> deed;
    private final VBox box = Build.column("bench-panel");
    private final LeadChoice trimmerLeads;
    private final LeadChoice resistorLeads;
    private final Screw coarse;
    private final Screw fine;
    private final Label joints = Build.prose("", "bench-joints");
    private String built = "";

    PartsPanel(Words words, Workbench work, Supplier<Figures> figures, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.figures = figures;
        this.deed = deed;
        Board board = work.bench().board();
        trimmerLeads = new LeadChoice(words, "trimmer", board, deed, work::solderTrimmer);
        resistorLeads = new LeadChoice(words, "resistor", board, deed, work::solderResistor);
        coarse = new Screw(words, "trimmer", "window.bench.trimmer.travel", () -> inHand().trimmer(), work::turn, deed);
        fine = new Screw(
                words,
                "trimmer-fine",
                "window.bench.trimmer.fine-travel",
                () -> inHand().fine().orElseThrow(),
                work::turnFine,
                deed);
        Handle.give(joints, "bench-joints");
    }

    private Part.Trimmer inHand() {
        return work.trimmer().orElseThrow().part();
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
            joints.setText("");
            rebuild(trimmer, resistor);
        }
        Build.present(joints, !joints.getText().isEmpty());
        work.trimmer().ifPresent(mounted -> {
            coarse.show();
            mounted.part().fine().ifPresent(each -> fine.show());
        });
    }

    /** The focus stays on the button that was pressed, although it is a new one. */
    private void rebuild(Optional<Drawer.Trimmer> trimmer, Optional<Drawer.Resistor> resistor) {
        Optional<String> focused = Optional.ofNullable(box.getScene())
                .map(scene -> scene.getFocusOwner())
                .map(Handle::of)
                .filter(handle -> !handle.isEmpty() && Handle.find(box, handle) != null)
                .map(PartsPanel::next);
        box.getChildren().clear();
        if (trimmer.isEmpty() && work.trimmer().isEmpty()) {
            box.getChildren().add(Build.prose(words.of("window.bench.parts.none"), "help"));
        }
        trimmer.ifPresent(wanted -> box.getChildren().add(trimmer(wanted)));
        resistor.ifPresent(wanted -> box.getChildren().add(resistor(wanted)));
        if (work.trimmer().isPresent() || work.resistor().isPresent()) {
            box.getChildren().addAll(iron(), joints);
        }
        focused.map(id -> Handle.find(box, id)).ifPresent(Node::requestFocus);
    }

    /** What comes after a button that is gone once it was pressed. */
    private static String next(String pressed) {
        return pressed.endsWith("-solder") || pressed.endsWith("-remove") ? LOOK : pressed;
    }

    private Node trimmer(Drawer.Trimmer wanted) {
        VBox rows = Build.column("bench-card", named("window.bench.trimmer", wanted.name(), work.trimmer()));
        FlowPane deeds = flow(fetch("trimmer", work.trimmer(), () -> work.fetchTrimmer(wanted)));
        rows.getChildren().add(deeds);
        work.trimmer().ifPresent(mounted -> {
            rows.getChildren().add(turning(mounted.part()));
            if (mounted.across().isEmpty()) {
                rows.getChildren().add(trimmerLeads.node());
            } else {
                deeds.getChildren()
                        .addAll(
                                mounted.lifted()
                                        ? button("trimmer-lift", "window.bench.lower", work::heatTrimmer)
                                        : button("trimmer-lift", "window.bench.lift", work::liftTrimmer),
                                button("trimmer-heat", "window.bench.heat", work::heatTrimmer),
                                button("trimmer-remove", "window.bench.remove", work::removeTrimmer));
            }
        });
        return rows;
    }

    private Node turning(Part.Trimmer part) {
        if (part.fine().isEmpty()) {
            return coarse.node();
        }
        return Build.column(
                "bench-part",
                Build.label(words.of("window.bench.trimmer.coarse"), "help"),
                coarse.node(),
                Build.label(words.of("window.bench.trimmer.fine"), "help"),
                fine.node());
    }

    private Node resistor(Drawer.Resistor wanted) {
        VBox rows = Build.column("bench-card", named("window.bench.resistor", wanted.name(), work.resistor()));
        FlowPane deeds = flow(fetch("resistor", work.resistor(), () -> work.fetchResistor(wanted)));
        rows.getChildren().add(deeds);
        work.resistor().ifPresent(mounted -> {
            if (mounted.across().isEmpty()) {
                rows.getChildren().add(resistorLeads.node());
            } else {
                deeds.getChildren()
                        .addAll(
                                button("resistor-heat", "window.bench.heat", work::heatResistor),
                                button("resistor-remove", "window.bench.remove", work::removeResistor));
            }
        });
        return rows;
    }

    /** What is done about the joints of all parts: a look through the glass, and the wick for solder that ran too far. */
    private Node iron() {
        return flow(
                Build.button(LOOK, words.of("window.bench.look"), this::look, "plain", "bench-small"),
                button("bench-clean", "window.bench.clean", work::clean));
    }

    private void look() {
        joints.setText(new JointsSeen(words, work).told());
        Build.present(joints, true);
    }

    private Label named(String key, String name, Optional<? extends Workbench.Mounted<? extends Part>> mounted) {
        String where = mounted.flatMap(Workbench.Mounted::across)
                .map(pair -> words.of("window.bench.across", Pads.print(words, pair)))
                .orElseGet(() -> words.of(mounted.isPresent() ? "window.bench.in-hand" : "window.bench.in-drawer"));
        return Build.prose(words.of(key, name, where), "bench-part-name");
    }

    private Button fetch(String part, Optional<?> fetched, Runnable how) {
        return button(part + "-fetch", fetched.isPresent() ? "window.bench.fetch.another" : "window.bench.fetch", how);
    }

    private Button button(String id, String key, Runnable how) {
        return Build.button(
                id,
                words.of(key),
                () -> {
                    joints.setText("");
                    deed.accept(how);
                },
                "plain",
                "bench-small");
    }

    private static FlowPane flow(Node... children) {
        FlowPane flow = new FlowPane(children);
        flow.getStyleClass().add("bench-flow");
        return flow;
    }
}
