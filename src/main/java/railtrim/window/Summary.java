package railtrim.window;

import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import railtrim.procedure.Figures;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.RailSign;
import railtrim.window.kit.Build;

/** What the job came to, in a few lines of figures. */
final class Summary {
    private final Words words;
    private final GridPane grid = new GridPane();
    private int rows;

    Summary(Words words, Figures figures) {
        this.words = words;
        grid.getStyleClass().add("summary");
        RailSign sign = figures.sign();
        volts("window.summary.stock", sign.shown(figures.stock()));
        volts("window.summary.fault", sign.shown(figures.fault()));
        volts("window.summary.target", sign.shown(figures.target()));
        volts("window.summary.fitted", sign.shown(figures.fitted()));
        warmth("window.summary.before", figures.number("temp.chip"));
        warmth("window.summary.after", figures.number("fit.temp.chip"));
    }

    Node node() {
        return grid;
    }

    private void volts(String key, OptionalDouble value) {
        value.ifPresent(each -> line(key, Display.volts(each)));
    }

    private void warmth(String key, OptionalDouble value) {
        value.ifPresent(each -> line(key, Display.of(each, railtrim.quantity.Unit.CELSIUS)));
    }

    private void line(String key, String value) {
        Label number = Build.label(words.number(value), "summary-value");
        number.setMinWidth(Region.USE_PREF_SIZE);
        grid.addRow(rows++, Build.prose(words.of(key), "summary-label"), number);
    }
}
