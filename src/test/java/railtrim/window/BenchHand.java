package railtrim.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;
import railtrim.window.kit.Together;

/**
 * A person at the practice bench of the window, who asks for the hint, does on the bench what it says with the bench's own controls, reads the
 * display and types what stands there. Only what is on the board's papers, or is a choice, comes from elsewhere: from a hand at a second bench.
 */
final class BenchHand {
    private static final int LONGEST = 1500;

    /** More presses than any turn from one end of a trimmer to a target takes. */
    private static final int MOST_TURNS = 400;

    private static final String HINT = "window.bench.hint.";

    private final Opened window;
    private final Desk desk;
    private final Typist typist;
    private final Hand reader;
    private final Map<String, String> hints = new TreeMap<>();

    /** What was done, for people who read why a test failed. */
    final Deque<String> deeds = new ArrayDeque<>();

    BenchHand(Opened window, Desk desk, Board board) {
        this.window = window;
        this.desk = desk;
        this.typist = new Typist(window, desk);
        this.reader = new Hand(new Bench(board, Meter.middle(), new Random(5)));
        for (String hint : window.words.bundle().keySet()) {
            if (hint.startsWith(HINT)) {
                hints.put(window.words.of(hint), hint.substring(HINT.length()));
            }
        }
    }

    /**
     * Opens a practice board in the window. @param step up to which a hand has done the job before the window opens, with the same bench; empty for
     * the beginning
     */
    static Desk sitDown(Opened window, Bench bench, String step) throws TimeoutException {
        Course course = new Course(
                Procedure.builtIn(), new MemoryLog(bench.board().label().name(), bench));
        Hand before = new Hand(bench);
        for (int i = 0;
                i < LONGEST
                        && !step.isEmpty()
                        && !course.state().current().step().id().equals(step);
                i++) {
            Rehearsal.offer(before.next(course.state(), course), course);
        }
        Desk opened = window.fx(() -> {
            JobPage page = JobPage.practice(window.shell, course, bench);
            window.shell.show(page);
            return page.desk();
        });
        window.layOut();
        return opened;
    }

    /** Does the whole job, until it is finished or stopped. */
    void work() throws Exception {
        for (int i = 0; i < LONGEST; i++) {
            if (!step()) {
                return;
            }
        }
        throw new AssertionError("the job does not end");
    }

    /** One answer. @return whether there is anything left to do */
    private boolean step() throws Exception {
        State state = desk.state();
        if (state.complete()
                || state.card().filter(State.Card.Stop.class::isInstance).isPresent()) {
            return false;
        }
        State.StepState current = state.current();
        if (state.card().isPresent()) {
            makeSafe(state.card().get());
            return true;
        }
        give(
                current.open().isEmpty()
                        ? answer(current)
                        : new Answer.Acknowledged(current.open().get(0)));
        if (desk.nextOpen()) {
            window.until("Next in focus", () -> window.focused().equals("next"));
            window.press(KeyCode.ENTER);
        }
        return true;
    }

    /** A fault was seen: what the hint says, and the card wants the dead rail read. */
    private void makeSafe(State.Card card) throws Exception {
        if (!(card instanceof State.Card.MakeSafe) || !hint().equals("card")) {
            throw new AssertionError("a card of another kind: " + card + " after " + deeds);
        }
        turnTo(KeyCode.END);
        switchTo(false);
        volts("output", "ground");
        give(new Answer.Typed("safe.rail", display(), false));
    }

    private Answer answer(State.StepState current) throws Exception {
        if (current.missing().isEmpty()) {
            throw new AssertionError("nothing is asked at " + current.step().id() + ": " + current.findings() + deeds);
        }
        String id = current.missing().get(0);
        Field field = desk.course().field(id).orElseThrow();
        String hint = hint();
        deeds.addLast(id + " (" + hint + ")");
        if (deeds.size() > 12) {
            deeds.removeFirst();
        }
        if (field instanceof Field.Switch) {
            switchTo(hint.equals("switch-on"));
            return new Answer.Switched(id);
        }
        return field instanceof Field.Number number && !known(hint)
                ? new Answer.Typed(id, read(id, number.unit(), hint), false)
                : chosen(id, hint);
    }

    private static boolean known(String hint) {
        return hint.equals("papers") || hint.equals("choose");
    }

    /** Presses the button for a hint and knows the sentence. */
    private String hint() throws TimeoutException {
        press("bench-hint");
        String said = text("bench-hint-text");
        String hint = hints.get(said);
        if (hint == null) {
            throw new AssertionError("no hint that is known: “" + said + "”");
        }
        return hint;
    }

    private Answer chosen(String id, String hint) throws Exception {
        switch (hint) {
            case "watch" -> {
                return new Answer.Picked(id, seen(id));
            }
            case "clip" -> {
                press("meter-volts");
                probes(reference());
            }
            case "solder-trimmer" -> solder("trimmer");
            case "solder-resistor" -> {
                press("trimmer-remove");
                solder("resistor");
            }
            case "turn-up" -> turnTo(KeyCode.END);
            default -> {}
        }
        if (id.equals("cool.how")) {
            minutes(20);
        }
        if (id.equals("fault.again") && desk.state().figures().history(id).size() >= 2) {
            return new Answer.Picked(id, "enough");
        }
        Answer answer = reader.next(desk.state(), desk.course());
        return id.equals("trimmer.pick") ? oneScrew(id) : answer;
    }

    /** The first on the list that has one screw to turn. */
    private Answer oneScrew(String id) {
        Field.Choice choice = (Field.Choice) desk.course().field(id).orElseThrow();
        return choice.options().apply(desk.state().figures()).stream()
                .map(Field.Option::id)
                .filter(option -> !option.contains("+"))
                .findFirst()
                .<Answer>map(option -> new Answer.Picked(id, option))
                .orElseThrow();
    }

    // ---- readings ----

    private String read(String id, Unit unit, String hint) throws Exception {
        switch (hint) {
            case "warmth" -> {
                return warmth(id);
            }
            case "cell" -> holdOn("cell", Unit.VOLT);
            case "together" -> holdOn("together", Unit.OHM);
            case "clip" -> press("meter-volts");
            case "volts-output" -> volts("output", "ground");
            case "volts-input" -> volts("input", "ground");
            case "volts-loaded" -> {
                load();
                volts("output", "ground");
            }
            case "turn-to" -> {
                volts("output", "ground");
                turnTo(Math.abs(target(id)));
            }
            case "turn-down" -> {
                turnTo(KeyCode.HOME);
                ohms(leg());
            }
            case "ohms-output" -> ohms(List.of("output", "ground"));
            case "ohms-lower" -> ohms(List.of("adjust", "ground"));
            case "ohms-upper" -> ohms(List.of("output", "adjust"));
            case "ohms-lower-up", "ohms-upper-up" -> {
                turnTo(KeyCode.END);
                ohms(leg());
            }
            case "alone-up" -> {
                if (!window.has("trimmer-travel")) {
                    press("trimmer-fetch");
                }
                turnTo(KeyCode.END);
                holdOn("trimmer", Unit.OHM);
            }
            case "alone-down" -> {
                turnTo(KeyCode.HOME);
                holdOn("trimmer", Unit.OHM);
            }
            case "lift" -> {
                press("trimmer-lift");
                holdOn("trimmer", Unit.OHM);
                String alone = display();
                press("trimmer-lift");
                return alone;
            }
            case "resistor-alone" -> {
                if (!window.has("resistor-solder")) {
                    press("resistor-fetch");
                }
                holdOn("resistor", Unit.OHM);
            }
            default -> throw new AssertionError("what is to be done for " + id + ": " + hint);
        }
        String shown = display();
        if (!shown.endsWith(unit.symbol())) {
            throw new AssertionError(id + " wants " + unit + ", the meter shows " + shown + " after " + deeds);
        }
        return shown;
    }

    private String display() {
        return text("meter-display");
    }

    private String warmth(String id) throws Exception {
        load();
        if (id.endsWith("room")) {
            String all = text("bench-warmth");
            String before =
                    window.words.of("window.bench.warmth", "|", "|", "|", "|").split("\\|")[2];
            String room = all.substring(all.indexOf(before) + before.length());
            return room.substring(0, room.indexOf("°C") + 2);
        }
        return text(id.endsWith("chip") ? "chip-warmth" : "regulator-warmth");
    }

    /** The named load runs, and has for as long as the step asks. */
    private void load() throws Exception {
        if (text("bench-load").equals(window.words.of("window.bench.load.start"))) {
            press("bench-load");
        }
        dwell();
    }

    private void dwell() throws Exception {
        for (int minutes = 0; desk.course().dwellLeft() > 0; minutes++) {
            if (minutes > 120) {
                throw new AssertionError(
                        "the wait at " + desk.state().current().step().id() + " does not end");
            }
            minutes(1);
        }
    }

    private void minutes(int many) throws Exception {
        for (int i = 0; i < many; i++) {
            press("bench-minute");
        }
    }

    /** What the board is said to show, as the wizard names it. */
    private String seen(String id) throws Exception {
        load();
        String said = text("bench-seen");
        boolean lowest = id.equals("down.seen") && text("trimmer-turned").contains(" 0.00 ");
        for (String kind : List.of("glitch", "reset", "errors", "smoke")) {
            if (said.contains(window.words.of("option.seen." + kind))) {
                return kind;
            }
        }
        return lowest ? "enough" : "well";
    }

    // ---- deeds ----

    /** What the trimmer in the drawer is called: one or two values. */
    String trimmer() {
        String[] parts =
                desk.state().figures().choice("trimmer.pick").orElseThrow().split("[x+]");
        String name = Display.part(Double.parseDouble(parts[0]));
        return parts.length > 2 ? name + " + " + Display.part(Double.parseDouble(parts[2])) : name;
    }

    private List<String> leg() {
        return desk.state().figures().chose("place.leg", "adjust-ground")
                ? List.of("adjust", "ground")
                : List.of("output", "adjust");
    }

    private List<String> reference() {
        return desk.state().figures().chose("place.pair", "adjust-ground")
                ? List.of("adjust", "ground")
                : List.of("output", "adjust");
    }

    private void solder(String part) throws TimeoutException {
        switchTo(false);
        join(part, leg().get(0), leg().get(1));
    }

    /**
     * The part in the hand goes to two pads with the iron.
     *
     * @param manner how, where it is not with care: touch or plenty
     */
    void join(String part, String first, String second, String... manner) throws TimeoutException {
        press(part + "-first-" + first);
        press(part + "-second-" + second);
        for (String how : manner) {
            press(part + "-manner-" + how);
        }
        press(part + "-solder");
    }

    private void switchTo(boolean on) throws TimeoutException {
        if (on) {
            press("meter-volts");
        }
        boolean isOff = text("bench-power").equals(window.words.of("window.bench.power.on"));
        if (isOff == on) {
            press("bench-power");
        }
        if (!on) {
            // Long enough for every rail to drain.
            press("bench-minute");
        }
    }

    private void volts(String red, String black) throws TimeoutException {
        press("meter-volts");
        probes(List.of(red, black));
    }

    private void ohms(List<String> pads) throws TimeoutException {
        switchTo(false);
        press("meter-ohms");
        probes(pads);
    }

    private void probes(List<String> pads) throws TimeoutException {
        press("probe-red");
        press("pad-" + pads.get(0));
        press("pad-" + pads.get(1));
    }

    private void holdOn(String place, Unit unit) throws TimeoutException {
        press(unit == Unit.VOLT ? "meter-volts" : "meter-ohms");
        press("hold-" + place);
    }

    /** To an end of travel, with the key that does it. */
    void turnTo(KeyCode end) throws TimeoutException {
        if (!window.has("trimmer-travel")) {
            return;
        }
        window.fx(() -> {
            window.node("trimmer-travel").requestFocus();
            return null;
        });
        window.press(end);
        double there = end == KeyCode.HOME ? 0 : 1;
        window.until("the screw at its end", () -> ((Slider) window.node("trimmer-travel")).getValue() == there);
    }

    private double target(String id) {
        return id.equals("down.volts")
                ? desk.state().figures().nextTarget().orElseThrow()
                : desk.state().figures().target().orElseThrow();
    }

    /** Down with an eye on the meter: by half turns while far, by touches when near, and back up a touch where it went past. */
    private void turnTo(double wanted) throws TimeoutException {
        double last = 0;
        for (int i = 0; i < MOST_TURNS; i++) {
            double now = shownVolts();
            if (now <= wanted || text("trimmer-turned").contains(" 0.00 ")) {
                break;
            }
            boolean far = last == 0 || now - wanted > 2 * last;
            press(far ? "trimmer-down-more" : "trimmer-down");
            last = far ? Math.max(now - shownVolts(), 0.0005) : last;
        }
        for (int i = 0; i < MOST_TURNS && shownVolts() < wanted; i++) {
            press("trimmer-up");
        }
    }

    private double shownVolts() {
        return Math.abs(QuantityReader.read(display(), Unit.VOLT).value());
    }

    private void give(Answer answer) throws Exception {
        window.fx(() -> {
            focus(answer);
            return null;
        });
        typist.give(answer);
    }

    /** After work on the bench a person goes back to the question. */
    private void focus(Answer answer) {
        if (answer instanceof Answer.Typed typed) {
            window.node(Ids.field(typed.field())).requestFocus();
        } else if (answer instanceof Answer.Switched switched) {
            window.node(Ids.field(switched.field())).requestFocus();
        } else if (answer instanceof Answer.Acknowledged acknowledged) {
            window.node(Ids.acknowledge(acknowledged.caution())).requestFocus();
        } else if (answer instanceof Answer.Picked picked && window.has(Ids.field(picked.field()) + "-list")) {
            window.node(Ids.field(picked.field()) + "-list").requestFocus();
        } else if (answer instanceof Answer.Picked picked) {
            window.node(Ids.option(picked.field(), picked.option())).requestFocus();
        }
    }

    void press(String id) throws TimeoutException {
        ButtonBase button = (ButtonBase) window.node(id);
        if (button.isDisabled() || !Opened.shown(button)) {
            throw new AssertionError("#" + id + " cannot be pressed now, after " + deeds);
        }
        window.press(id);
    }

    String text(String id) {
        return Together.plain(((Labeled) window.node(id)).getText());
    }
}
