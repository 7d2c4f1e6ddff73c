package railtrim.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.State;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Frames;
import railtrim.window.kit.Handle;
import railtrim.window.kit.MoreBelow;
import railtrim.window.kit.PlainScroll;

/**
 * The middle: one step, or the card that stands before everything. Title, cautions and action stay at the top; the entries and
 * the findings scroll below them.
 */
final class StepPane {
    private static final PseudoClass LOCKED = PseudoClass.getPseudoClass("locked");

    private final Words words;
    private final Desk desk;
    private final Shell shell;
    private final Export export;
    private final Runnable focusNext;
    private final Label title = Build.prose("", "step-title");
    private final Label why = Build.prose("", "step-why");
    private final Cautions cautions;
    private final Label action = Build.prose("", "action");
    private final VBox fields = Build.column("fields");
    private final Findings findings;
    private final Dwell dwell;
    private final Marks marks;
    private final Outside outside;
    private final After after;
    private final ScrollPane scroll;
    private final VBox top;
    private final VBox body;
    private final VBox step;
    private final StackPane place = new StackPane();
    private final Map<String, FieldView> views = new LinkedHashMap<>();
    private Optional<CardView> card = Optional.empty();
    private String built = "";
    private String goal = "";
    private boolean low;
    private boolean brief;
    private boolean locked;

    StepPane(Words words, Desk desk, Shell shell, Export export, Runnable focusNext) {
        this.words = words;
        this.desk = desk;
        this.shell = shell;
        this.export = export;
        this.focusNext = focusNext;
        this.cautions = new Cautions(words, desk);
        this.findings = new Findings(words, desk);
        this.outside = new Outside(words, desk);
        this.dwell = new Dwell(words, desk);
        this.marks = new Marks(words);
        this.after = new After(words, desk, shell.sheet());
        Handle.give(title, "step-title");
        Handle.give(action, "action");
        action.setMaxWidth(Double.MAX_VALUE);
        body = Build.column(
                "step-body", marks.node(), dwell.node(), fields, outside.node(), findings.node(), after.node());
        top = Build.column("step-top", title, why, cautions.node());
        scroll = new PlainScroll(body);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        Handle.give(scroll, "step-scroll");
        scroll.getStyleClass().add("step-scroll");
        scroll.setFocusTraversable(false);
        VBox below = MoreBelow.under(scroll, words.of("window.more-below"));
        VBox.setVgrow(below, Priority.ALWAYS);
        step = Build.column("step", top, below);
        place.getStyleClass().add("step-place");
        place.setMinHeight(0);
        step.setMinHeight(0);
        scroll.setMinHeight(0);
    }

    Parent node() {
        return place;
    }

    /** In a narrow window acknowledged cautions take one line together. */
    void narrow(boolean is) {
        if (cautions.narrow(is) && card.isEmpty()) {
            show();
        }
    }

    /** Where step and picture share one place, and that is low too, there is no room for the reason; help on the step has it. */
    void brief(boolean is) {
        brief = is;
        presentWhy();
    }

    /** In a low window the cautions and the stop rule come before the reason. */
    void low(boolean is) {
        low = is;
        presentWhy();
    }

    private void presentWhy() {
        boolean powered = desk.shown().step().power() != PowerNeed.OFF;
        Build.present(why, !(low && (locked || powered || brief)));
    }

    void timePassed() {
        if (card.isEmpty()) {
            dwell.show();
        }
    }

    void show() {
        if (desk.state().card().isPresent() || desk.atEnd()) {
            showCard();
        } else {
            showStep();
        }
        String now = goal();
        if (!now.equals(goal) || focusLost()) {
            goal = now;
            Platform.runLater(this::focusGoal);
        } else {
            Platform.runLater(() -> card.ifPresentOrElse(
                    view -> Frames.whenSettled(shell.scene(), view::revealAnswer), this::revealAnswer));
        }
    }

    /** An entry that was not taken stays where it is, and what is said about it comes into sight; else what holds the whole step back does. */
    private void revealAnswer() {
        Optional<Node> refused = views.entrySet().stream()
                .filter(each -> desk.said(each.getKey())
                        .filter(verdict -> !(verdict instanceof Verdict.Accept))
                        .isPresent())
                .map(each -> each.getValue().node())
                .filter(Node::isFocusWithin)
                .findFirst();
        refused.or(this::heldBack).ifPresent(this::revealEnd);
    }

    private Optional<Node> heldBack() {
        State.StepState at = desk.shown();
        boolean held = desk.working()
                && (at.missing().isEmpty() || proofToCome().isPresent())
                && at.findings().stream().anyMatch(Step.Finding::blocks);
        return held ? Optional.of(findings.node()) : Optional.empty();
    }

    /** What had the focus was built anew, as when the window gets narrow; left alone the focus would go to the first control of the page. */
    private boolean focusLost() {
        Scene scene = place.getScene();
        Node owner = scene == null ? place : scene.getFocusOwner();
        return owner == null || owner != place && owner.getScene() == null;
    }

    private void showCard() {
        built = "";
        Optional<State.Card> stands = desk.state().card();
        if (card.filter(shown -> shown.of().equals(stands)).isEmpty()) {
            CardView view = stands.map(each -> CardView.of(words, desk, each))
                    .orElseGet(() -> CardView.done(words, desk, export, shell::toStart));
            card = Optional.of(view);
            place.getChildren().setAll(view.node());
        }
        card.orElseThrow().show();
    }

    private void showStep() {
        card = Optional.empty();
        StepState state = desk.shown();
        boolean working = desk.working();
        locked = working && !state.open().isEmpty();
        presentWhy();
        if (!built.equals(state.step().id())) {
            build(state.step().id());
        }
        cautions.show(state, working);
        body.pseudoClassStateChanged(LOCKED, locked);
        showFields(state);
        placeAction();
        marks.show(built, desk.state().figures());
        outside.show(state, working);
        findings.show(state);
        dwell.show();
        after.show(state, working);
        if (!place.getChildren().contains(step)) {
            place.getChildren().setAll(step);
        }
    }

    /** Always in sight; it stands back below cautions that have to be read first, and below what has to be read first. */
    private void placeAction() {
        Optional<String> proof = proofToCome();
        String deed = words.of("step." + built + ".action");
        action.setText(proof.map(field -> words.of(
                        field.endsWith(".dead") ? "window.action.rail-first" : "window.action.pins-first", deed))
                .orElse(deed));
        action.pseudoClassStateChanged(LOCKED, proof.isPresent());
        if (proof.isPresent()) {
            return;
        }
        if (locked && !body.getChildren().contains(action)) {
            body.getChildren().add(0, action);
        } else if (!locked && !top.getChildren().contains(action)) {
            top.getChildren().add(action);
        }
    }

    private void build(String id) {
        built = id;
        title.setText(words.of("step." + id + ".title"));
        why.setText(words.of("step." + id + ".why"));
        views.clear();
        fields.getChildren().clear();
        cautions.fresh();
        scroll.setVvalue(0);
    }

    /** The reading the deed waits for. */
    private Optional<String> proofToCome() {
        return desk.working() ? desk.course().deedWaitsFor() : Optional.empty();
    }

    private void showFields(StepState state) {
        List<Field> asked = state.step().fields().stream()
                .filter(field -> field.asked().test(desk.state().figures()))
                .toList();
        List<Node> nodes = new ArrayList<>(
                asked.stream().map(this::view).map(FieldView::node).toList());
        long proofs = state.step().proofs().stream().filter(asked::contains).count();
        if (proofToCome().isPresent()) {
            nodes.add((int) proofs, action);
        }
        if (!fields.getChildren().equals(nodes)) {
            fields.getChildren().setAll(nodes);
        }
        for (Field field : asked) {
            view(field).show(Standings.of(desk, state, field));
        }
    }

    private FieldView view(Field field) {
        return views.computeIfAbsent(field.id(), id -> FieldViews.of(words, desk, field));
    }

    /** Where the person's attention belongs now: it is followed by the focus whenever it changes. */
    private String goal() {
        if (card.isPresent()) {
            return "card " + card.get().of() + card.get().goal();
        }
        if (cautions.control().isPresent()) {
            return Handle.of(cautions.control().get());
        }
        StepState state = desk.shown();
        if (!desk.working()) {
            return "next after " + built;
        }
        return built + ": " + asked().orElse("") + heldBack().isPresent();
    }

    /** What is to be answered next: a reading that came out wrong where a deed waits for it, else the first one missing. */
    private Optional<String> asked() {
        return proofToCome()
                .or(() -> desk.shown().missing().stream().findFirst())
                .filter(views::containsKey);
    }

    private void focusGoal() {
        if (card.isPresent() || scroll.getSkin() == null) {
            // What scrolls joins the scene only when it is styled; before that it cannot take the focus.
            place.applyCss();
            place.layout();
        }
        if (card.isPresent()) {
            card.get().focus();
        } else if (cautions.control().isPresent()) {
            cautions.control().get().requestFocus();
        } else if (!desk.working()) {
            focusNext.run();
            Node said = desk.lookingAtStale() ? after.node() : after.firstSaid();
            reveal(said);
        } else {
            Optional<FieldView> view = asked().map(views::get);
            view.ifPresent(FieldView::focus);
            view.map(FieldView::node).ifPresent(this::reveal);
            heldBack().ifPresent(this::revealEnd);
        }
    }

    private void reveal(Node node) {
        Frames.whenSettled(shell.scene(), () -> Reveal.within(scroll, node));
    }

    private void revealEnd(Node node) {
        Frames.whenSettled(shell.scene(), () -> Reveal.endOf(scroll, node));
    }
}
