package railtrim.window;

import javafx.scene.Node;
import javafx.scene.control.Button;
import railtrim.procedure.Field;
import railtrim.procedure.Words;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;

/** "I have switched it on": a change of power, said with one clear button. */
final class SwitchView implements FieldView {
    private final Words words;
    private final Field.Switch field;
    private final Button button;
    private final FieldFrame frame;

    SwitchView(Words words, Desk desk, Field.Switch field) {
        this.words = words;
        this.field = field;
        button = Build.button(Ids.field(field.id()), "", () -> desk.turn(field.id()), "switch");
        button.getStyleClass().add(field.on() ? "switch-on" : "switch-off");
        button.setMaxWidth(Double.MAX_VALUE);
        frame = new FieldFrame(words, field, button, button, () -> {});
    }

    @Override
    public Node node() {
        return frame.node();
    }

    @Override
    public void show(Standing standing) {
        frame.show(standing, Unit.COUNT);
        boolean done = standing.answer().isPresent();
        String way = field.on() ? "on" : "off";
        button.setText(words.of((done ? "window.switched." : "window.switch.") + way));
        button.setAccessibleText(button.getText());
        button.setGraphic((done ? Icon.TICK : field.on() ? Icon.POWER_ON : Icon.POWER_OFF).draw(18));
        button.setDisable(!standing.open() || done);
    }

    @Override
    public void focus() {
        button.requestFocus();
    }
}
