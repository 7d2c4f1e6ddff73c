package railtrim.window;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.scene.AccessibleRole;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.job.Origin;
import railtrim.procedure.Outlook;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.JobPage.Kept;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** The band at the top: the power state this step needs as a word, the rail's last reading, where we are, and whether all is saved. */
final class Band {
    private final Words words;
    private final StackPane powerSign = new StackPane();
    private final Label powerWord = Build.label("", "power-word");
    private final HBox power = Build.row("power", powerSign, powerWord);
    private final Label rail = Build.label("", "band-value");
    private final Label phase = Build.label("", "band-label");
    private final Label position = Build.label("", "band-value");
    private final Label saved = Build.label("", "band-value");
    private final VBox savedBox;
    private final HBox bar;
    private final VBox whole;
    private final FileNews news;
    private final MenuButton menu;
    private final Kept kept;
    private boolean tight;

    Band(Words words, Shell shell, Export export, Kept kept, Desk desk) {
        this.words = words;
        this.kept = kept;
        this.news = new FileNews(shell, desk, kept);
        Handle.give(power, "power");
        power.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        Handle.give(rail, "rail");
        Handle.give(position, "position");
        Handle.give(saved, "saved");
        power.setAccessibleRole(AccessibleRole.TEXT);
        savedBox = item("window.band.saved", saved);
        menu = menu(shell, export, desk);
        bar = Build.row(
                "band", power, item("window.band.rail", rail), item(phase, position), Build.spring(), savedBox, menu);
        whole = new VBox(bar, news.node());
        bar.setAccessibleText(kept.name());
    }

    Parent node() {
        return whole;
    }

    /** Whether there is room only for what is not as it should be. */
    void tight(boolean is) {
        tight = is;
        presentSaved();
    }

    private void presentSaved() {
        Build.present(savedBox, !tight || !savedBox.getStyleClass().contains("saved-good"));
    }

    void show(Desk desk) {
        State state = desk.state();
        Step step = desk.shown().step();
        boolean makeSafe = desk.makingSafe();
        showPower(kind(desk), need(desk));
        showMenu(makeSafe);
        OptionalDouble last = state.figures().rail();
        rail.setText(
                last.isPresent() ? words.number(Display.volts(last.getAsDouble())) : words.of("window.band.rail.none"));
        phase.setText(words.of("phase." + step.phase().id()));
        position.setText(position(state, step));
        saved.setText(saved(desk, state));
        presentSaved();
        news.show();
    }

    /** While the board is made safe there is help, and nothing else to do. */
    private void showMenu(boolean makeSafe) {
        boolean practice = kept.journal().isEmpty();
        for (MenuItem item : menu.getItems()) {
            boolean help = "menu-help".equals(item.getId()) || "menu-glossary".equals(item.getId());
            item.setDisable(makeSafe && !help || practice && "menu-plan".equals(item.getId()));
        }
    }

    /**
     * What the step asks of the power, until that was done: a board that was switched on is on, and one whose rail is proven dead is off. While an
     * earlier step is read again it is the step at work that counts; nobody is to switch for one that is only read.
     */
    static PowerNeed need(Desk desk) {
        State state = desk.state();
        State.StepState at = desk.lookingBack() ? state.current() : desk.shown();
        PowerNeed need = at.step().power();
        if (need == PowerNeed.TO_ON && state.power() == State.Power.ON) {
            return PowerNeed.ON;
        }
        boolean dead = at.status() == State.Status.DONE && state.power() == State.Power.OFF;
        return need == PowerNeed.TO_OFF && dead ? PowerNeed.OFF : need;
    }

    /** After a break nobody knows how the board stands, until its rail is read. */
    private static String kind(Desk desk) {
        if (desk.makingSafe()) {
            return "make-safe";
        }
        boolean back =
                desk.state().card().filter(State.Card.Resume.class::isInstance).isPresent();
        return back ? "prove" : need(desk).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void showPower(String kind, PowerNeed need) {
        String styleClass = "power-" + kind;
        if (!power.getStyleClass().contains(styleClass)) {
            power.getStyleClass().setAll("power", styleClass);
            powerWord.setText(words.of("make-safe".equals(kind) ? "card.safe.title" : "power." + kind));
            powerSign
                    .getChildren()
                    .setAll((need.startsOn() || need.endsOn() ? Icon.POWER_ON : Icon.POWER_OFF).draw(20));
        }
        power.setAccessibleText(words.of("window.power.say", powerWord.getText()));
    }

    /** Counts the steps of this job, and the one that is shown even where it is not needed any more. */
    private String position(State state, Step step) {
        Outlook outlook = new Outlook(state);
        List<State.StepState> asked = state.steps().stream()
                .filter(each -> outlook.expected(each) || each.step().id().equals(step.id()))
                .toList();
        long before = asked.stream()
                .takeWhile(each -> !each.step().id().equals(step.id()))
                .count();
        return words.of("window.band.position.value", Long.toString(before + 1), Integer.toString(asked.size()));
    }

    private String saved(Desk desk, State state) {
        savedBox.getStyleClass().removeAll("saved-good", "saved-bad");
        if (kept.readOnly()) {
            boolean elsewhere = state.job().origin() == Origin.ELSEWHERE;
            return words.of(elsewhere ? "window.band.saved.elsewhere" : "window.band.saved.read-only");
        }
        if (desk.pass().isPresent()) {
            return words.of("window.band.saved.practice");
        }
        boolean good = desk.trouble().isEmpty();
        savedBox.getStyleClass().add(good ? "saved-good" : "saved-bad");
        return good
                ? words.of("window.band.saved.value", Long.toString(state.job().last()))
                : words.of("window.band.saved.not");
    }

    private VBox item(String key, Label value) {
        return item(Build.label(words.of(key), "band-label"), value);
    }

    private VBox item(Label label, Label value) {
        label.setLabelFor(value);
        label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        value.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        return Build.column("band-item", label, value);
    }

    private MenuButton menu(Shell shell, Export export, Desk desk) {
        MenuItem write = item("window.export", export::write);
        MenuItem print = item("window.print", export::print);
        MenuItem share =
                item("window.share", () -> new Copies(shell).share(desk.state().job()));
        MenuItem another = item("window.plan", () -> new Copies(shell).plan(desk));
        MenuItem look = item("window.look", new LookSheet(shell)::ask);
        MenuItem back = item("window.take-back.menu", shell::takeBack);
        MenuItem help = item("window.help", shell::helpOnStep);
        MenuItem glossary = item("window.glossary", new HelpSheet(shell)::glossary);
        MenuButton menu = new MenuButton(
                words.of("window.view"),
                null,
                write,
                print,
                share,
                another,
                back,
                new SeparatorMenuItem(),
                help,
                glossary,
                look);
        Handle.give(menu, "view");
        menu.setAccessibleText(words.of("window.view"));
        menu.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        return menu;
    }

    private MenuItem item(String key, Runnable work) {
        MenuItem item = new MenuItem(words.of(key));
        item.setId(key.replace("window.", "menu-").replace('.', '-'));
        item.setOnAction(event -> work.run());
        return item;
    }
}
