package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.Phase;
import railtrim.procedure.State;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.window.kit.Build;
import railtrim.window.kit.Frames;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;
import railtrim.window.kit.MoreBelow;
import railtrim.window.kit.PlainScroll;

/** Something that stands before every step: make safe, stop here, welcome back; and the closing page. */
final class CardView {
    private final Words words;
    private final Desk desk;
    private final Optional<State.Card> of;
    private final VBox column = Build.column("card");
    private final ScrollPane scroll = new PlainScroll(column);
    private final VBox whole;
    private final List<Field> fields = new ArrayList<>();
    private final List<FieldView> views = new ArrayList<>();
    private Optional<Button> first = Optional.empty();
    private Optional<VBox> outside = Optional.empty();

    private CardView(Words words, Desk desk, Optional<State.Card> of, String kind, Icon icon) {
        this.words = words;
        this.desk = desk;
        this.of = of;
        Label title = Build.prose(words.of("card." + kind + ".title"), "card-title");
        Handle.give(title, "step-title");
        title.setGraphic(icon.draw(30));
        column.getStyleClass().add("card-" + kind);
        column.getChildren().add(title);
        scroll.setFitToWidth(true);
        scroll.setMinHeight(0);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        Handle.give(scroll, "step-scroll");
        scroll.getStyleClass().add("step-scroll");
        whole = MoreBelow.under(scroll, words.of("window.more-below"));
        whole.getStyleClass().add("card-place");
    }

    static CardView of(Words words, Desk desk, State.Card card) {
        if (card instanceof State.Card.MakeSafe safe) {
            return makeSafe(words, desk, safe);
        }
        if (card instanceof State.Card.Stop stop) {
            return stop(words, desk, stop);
        }
        if (card instanceof State.Card.Resume resume) {
            return resume(words, desk, resume);
        }
        throw new IllegalArgumentException("no view for " + card);
    }

    private static CardView makeSafe(Words words, Desk desk, State.Card.MakeSafe safe) {
        CardView view = new CardView(words, desk, Optional.of(safe), "safe", Icon.STOP_HAND);
        List<String> stoppedBy =
                desk.stoppedBy().stream().map(says -> stoppedBy(words, says)).toList();
        view.say(stoppedBy.isEmpty() ? words.of(safe.reason()) : stoppedBy.get(0), "card-reason");
        view.say(words.of("card.safe.action"), "action");
        view.field("safe.rail");
        view.outside("card.safe.outside");
        stoppedBy.stream().skip(1).forEach(says -> view.say(says, "card-stopped-by"));
        view.say(words.of(trimmerFitted(desk) ? "card.safe.why.trimmer" : "card.safe.why"), "card-text");
        return view;
    }

    /** From the soldering of the trimmer until a fixed resistor takes its place. */
    private static boolean trimmerFitted(Desk desk) {
        Phase phase = desk.state().current().step().phase();
        return phase.compareTo(Phase.WIRE) >= 0 && phase.compareTo(Phase.FIT) < 0;
    }

    /** Never that it should be measured once more: the plug comes first. */
    private static String stoppedBy(Words words, Message says) {
        return says.key().equals("verdict.outside")
                ? words.of("card.safe.read", says.values().toArray())
                : words.of(says);
    }

    private static CardView resume(Words words, Desk desk, State.Card.Resume resume) {
        CardView view = new CardView(words, desk, Optional.of(resume), "resume", Icon.CLOCK);
        view.say(words.of("card.resume.why"), "card-text");
        view.say(gap(words, resume.gapSeconds()), "card-text");
        resume.note().ifPresent(note -> view.say(words.of("window.resume.note", note), "card-note"));
        view.say(words.of("card.resume.action"), "action");
        resume.fields().forEach(view::field);
        view.outside("card.resume.outside");
        return view;
    }

    private static CardView stop(Words words, Desk desk, State.Card.Stop stop) {
        CardView view = new CardView(words, desk, Optional.of(stop), "stop", Icon.STOP_HAND);
        view.say(words.of(stop.reason()), "card-reason");
        if (!stop.backTo().isEmpty()) {
            String title = words.of("step." + stop.backTo() + ".title");
            view.say(words.of("window.stop.correct"), "card-text");
            view.button(Build.button(
                    "stop-back",
                    words.of("window.finding.back-to", title),
                    () -> desk.reopen(stop.backTo(), words.of("window.stop.reason")),
                    "plain"));
        }
        return view;
    }

    /** The closing page. */
    static CardView done(Words words, Desk desk, Export export, Runnable close) {
        CardView view = new CardView(words, desk, Optional.empty(), "done", Icon.TICK);
        view.say(words.of("card.done.why"), "card-text");
        view.column.getChildren().add(new Summary(words, desk.state().figures()).node());
        view.button(Build.button("export", words.of("window.export"), export::write, "primary"));
        view.button(Build.button("print", words.of("window.print"), export::print, "plain"));
        view.button(Build.button("to-start", words.of("window.done.to-start"), close, "plain"));
        return view;
    }

    Node node() {
        return whole;
    }

    Optional<State.Card> of() {
        return of;
    }

    void show() {
        boolean odd = false;
        for (int i = 0; i < fields.size(); i++) {
            Field field = fields.get(i);
            views.get(i).show(Standings.ofCard(desk, field));
            odd |= desk.said(field.id())
                    .filter(said -> !(said instanceof Verdict.Accept))
                    .isPresent();
        }
        boolean help = odd;
        outside.ifPresent(box -> Build.present(box, help));
    }

    /** Changes when the focus should move on to the next field. */
    String goal() {
        return waiting().map(Field::id).orElse("");
    }

    void focus() {
        Optional<Field> next = waiting();
        if (next.isPresent()) {
            FieldView view = views.get(fields.indexOf(next.get()));
            view.focus();
            if (scroll.getScene() != null) {
                // Not before the frame: a page that has not got its size yet would be scrolled too far.
                Frames.whenSettled(scroll.getScene(), () -> Reveal.within(scroll, view.node()));
            }
        } else {
            first.ifPresent(Button::requestFocus);
        }
    }

    /** What is said about an entry that was not taken comes into sight, and what to do then where there is room for both. */
    void revealAnswer() {
        for (int i = 0; i < fields.size(); i++) {
            Node node = views.get(i).node();
            boolean odd = desk.said(fields.get(i).id())
                    .filter(said -> !(said instanceof Verdict.Accept))
                    .isPresent();
            if (odd && node.isFocusWithin()) {
                outside.filter(box -> Reveal.roomFor(scroll, node, box)).ifPresent(box -> Reveal.endOf(scroll, box));
                Reveal.endOf(scroll, node);
            }
        }
    }

    private Optional<Field> waiting() {
        return fields.stream()
                .filter(field -> desk.said(field.id())
                        .filter(Verdict.Accept.class::isInstance)
                        .isEmpty())
                .findFirst();
    }

    private void say(String text, String styleClass) {
        column.getChildren().add(Build.prose(text, styleClass));
    }

    private void field(String id) {
        Field field = desk.course().field(id).orElseThrow();
        FieldView view = FieldViews.of(words, desk, field);
        fields.add(field);
        views.add(view);
        column.getChildren().add(view.node());
    }

    private void outside(String key) {
        VBox box = Build.column(
                "outside",
                Build.prose(words.of("window.outside"), "outside-title"),
                Build.prose(words.of(key), "outside-text"));
        outside = Optional.of(box);
        column.getChildren().add(box);
    }

    private void button(Button button) {
        button.setWrapText(true);
        button.setMinWidth(0);
        first = first.isPresent() ? first : Optional.of(button);
        column.getChildren().add(button);
    }

    private static String gap(Words words, long seconds) {
        long minutes = seconds / 60;
        long hours = minutes / 60;
        if (seconds < 0) {
            return words.of("window.resume.gap.unknown");
        } else if (minutes < 120) {
            return words.of("window.resume.gap.minutes", Long.toString(minutes));
        }
        return hours < 48
                ? words.of("window.resume.gap.hours", Long.toString(hours))
                : words.of("window.resume.gap.days", Long.toString(hours / 24));
    }
}
