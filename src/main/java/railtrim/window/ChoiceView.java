package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Words;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Together;

/**
 * One of several answers. Few are buttons below each other, each saying what it means; many are a list that drops down. Moving
 * through them picks none: an answer is taken by Space, Enter or a click.
 */
final class ChoiceView implements FieldView {
    private static final int FEW = 6;

    private final Words words;
    private final Desk desk;
    private final Field.Choice field;
    private final VBox options = Build.column("options");
    private final FieldFrame frame;
    private List<Field.Option> offered = List.of();
    private Optional<ComboBox<Field.Option>> combo = Optional.empty();
    private boolean showing;

    ChoiceView(Words words, Desk desk, Field.Choice field) {
        this.words = words;
        this.desk = desk;
        this.field = field;
        Handle.give(options, Ids.field(field.id()));
        frame = new FieldFrame(words, field, options, options, () -> {});
    }

    @Override
    public Node node() {
        return frame.node();
    }

    @Override
    public void show(Standing standing) {
        showing = true;
        frame.show(standing, Unit.COUNT);
        frame.proposed(desk.proposed(field, words)
                .filter(says -> standing.open() && standing.answer().isEmpty()));
        List<Field.Option> now = field.options().apply(desk.state().figures());
        if (!now.equals(offered)) {
            offered = List.copyOf(now);
            build();
        }
        if (combo.isPresent()) {
            showCombo(combo.get(), standing);
        } else {
            showButtons(standing);
        }
        showing = false;
    }

    @Override
    public void focus() {
        options.getChildren().stream()
                .filter(each -> !(each instanceof ToggleButton toggle) || toggle.isSelected())
                .findFirst()
                .or(() -> options.getChildren().stream().findFirst())
                .ifPresent(Node::requestFocus);
    }

    private void build() {
        combo = Optional.empty();
        options.getChildren().clear();
        boolean cards = field.id().endsWith(".pick");
        if (offered.size() <= FEW || cards) {
            offered.forEach(option -> options.getChildren().add(toggle(option)));
        } else {
            ComboBox<Field.Option> box = comboBox();
            combo = Optional.of(box);
            options.getChildren().add(box);
        }
    }

    private ToggleButton toggle(Field.Option option) {
        String text = words.of(option.label());
        ToggleButton toggle = new ToggleButton(Together.of(text));
        toggle.setUserData(option.id());
        toggle.setGraphic(dot());
        toggle.setWrapText(true);
        toggle.setMaxWidth(Double.MAX_VALUE);
        toggle.setMinHeight(Region.USE_PREF_SIZE);
        toggle.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        return Build.dress(
                toggle,
                Ids.option(field.id(), option.id()),
                Labels.of(words, field.id()) + ": " + text,
                () -> picked(toggle, option),
                "option");
    }

    private static Node dot() {
        StackPane ring = new StackPane(new Region());
        ring.getStyleClass().add("option-ring");
        ring.getChildren().get(0).getStyleClass().add("option-dot");
        return ring;
    }

    private void picked(ToggleButton toggle, Field.Option option) {
        toggle.setSelected(!toggle.isSelected());
        desk.choose(field.id(), option.id());
    }

    private void showButtons(Standing standing) {
        for (Node node : new ArrayList<>(options.getChildren())) {
            ToggleButton toggle = (ToggleButton) node;
            boolean chosen =
                    standing.answer().filter(toggle.getUserData()::equals).isPresent();
            toggle.setSelected(chosen);
            toggle.setDisable(!standing.open());
        }
    }

    private ComboBox<Field.Option> comboBox() {
        ComboBox<Field.Option> box = new ComboBox<>();
        Handle.give(box, Ids.field(field.id()) + "-list");
        box.getItems().setAll(offered);
        box.setPromptText(words.of("window.choose"));
        box.setMaxWidth(Double.MAX_VALUE);
        box.setVisibleRowCount(8);
        box.setCellFactory(list -> new OptionCell(words, field.id()));
        box.setButtonCell(new OptionCell(words, field.id()));
        box.setAccessibleText(Labels.of(words, field.id()));
        // Taken when the list closes or an answer is clicked, not while arrow keys run through a closed list.
        box.setOnHidden(event -> take(box));
        box.addEventFilter(javafx.scene.input.KeyEvent.KEY_PRESSED, event -> openFirst(box, event));
        return box;
    }

    private static void openFirst(ComboBox<Field.Option> box, javafx.scene.input.KeyEvent event) {
        boolean arrow = event.getCode() == javafx.scene.input.KeyCode.DOWN
                || event.getCode() == javafx.scene.input.KeyCode.UP
                || event.getCode() == javafx.scene.input.KeyCode.SPACE
                || event.getCode() == javafx.scene.input.KeyCode.ENTER;
        if (arrow && !box.isShowing()) {
            box.show();
            event.consume();
        }
    }

    private void take(ComboBox<Field.Option> box) {
        Field.Option option = box.getValue();
        // A list that closes because its page leaves answers nothing.
        if (!showing && option != null && box.getScene() != null) {
            desk.choose(field.id(), option.id());
        }
    }

    private void showCombo(ComboBox<Field.Option> box, Standing standing) {
        Optional<Field.Option> chosen = offered.stream()
                .filter(option -> standing.answer().filter(option.id()::equals).isPresent())
                .findFirst();
        if (chosen.isPresent() || standing.verdict().isEmpty()) {
            box.setValue(chosen.orElse(null));
        }
        box.setDisable(!standing.open());
    }

    private static final class OptionCell extends ListCell<Field.Option> {
        private final Words words;
        private final String field;

        OptionCell(Words words, String field) {
            this.words = words;
            this.field = field;
        }

        @Override
        protected void updateItem(Field.Option option, boolean empty) {
            super.updateItem(option, empty);
            setText(empty || option == null ? words.of("window.choose") : words.of(option.label()));
            Handle.give(this, empty || option == null ? "" : Ids.option(field, option.id()));
        }
    }
}
