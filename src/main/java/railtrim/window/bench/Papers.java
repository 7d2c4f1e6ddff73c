package railtrim.window.bench;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.job.BuiltIn;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.PlainScroll;

/** What can be read off the practice board and its papers without measuring: labels, markings, and the data sheet's page. */
public final class Papers {
    private final Words words;
    private final VBox list = Build.column("papers");

    /** @param meter id of the class of the meter on the bench */
    public Papers(Words words, Board board, String meter) {
        this.words = words;
        list.getChildren().add(Build.prose(board.label().story(), "papers-story"));
        line("board", board.label().name());
        line("feed", words.of("option.supply.kind." + board.feed().kind()));
        line("highest", volts(board.feed().highestRail()));
        line("chip", board.chip().name());
        line(
                "rated",
                board.chip()
                        .rated()
                        .map(range -> words.of("window.papers.range", volts(range.low()), volts(range.high())))
                        .orElseGet(() -> words.of("window.papers.unknown")));
        line("load", board.load().name());
        line("current", amperes(board.load().stockAmperes()));
        board.load().other().ifPresent(other -> line("other-load", other.name()));
        line("meter", words.of("option.meter.class." + meter));
        regulator(board.regulator(), board.divider().place());
    }

    public javafx.scene.Node node() {
        ScrollPane scroll = new PlainScroll(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("step-scroll");
        return scroll;
    }

    private void regulator(Board.Regulator regulator, Place place) {
        line("marking", regulator.marking());
        line("control", words.of("option.reg.control." + regulator.control().id()));
        line("family", family(regulator.family()));
        line("outline", regulator.outline().id());
        List<PinRole> pins = regulator.pins();
        for (int pin = 0; pin < pins.size(); pin++) {
            add(words.of("window.papers.pin", Integer.toString(pin + 1)), role(pins.get(pin)));
        }
        regulator.tab().ifPresent(role -> line("tab", role(role)));
        line("between", words.of("option.pair." + Node.Pair.reference(place).id()));
        regulator.sheet().ifPresent(this::sheet);
    }

    private void sheet(Board.Sheet sheet) {
        line(
                "reference",
                words.of(
                        "window.papers.three",
                        volts(sheet.referenceLow()),
                        volts(sheet.reference()),
                        volts(sheet.referenceHigh())));
        line("bias", amperes(sheet.bias()));
        line("dropout", volts(sheet.dropout()));
        line("minimum-load", amperes(sheet.minimumLoad()));
        line("input", volts(sheet.inputHighest()));
    }

    private String family(String id) {
        return id.equals("other")
                ? words.of("option.reg.family.other")
                : RegulatorFamilies.of(BuiltIn.text("regulators.json"))
                        .named(id)
                        .map(RegulatorFamily::name)
                        .orElse(id);
    }

    /** As printed on a label: "12 V", not "12.000 V". */
    private static String volts(double volts) {
        return Display.brief(volts, Unit.VOLT);
    }

    private static String amperes(double amperes) {
        return Display.brief(amperes, Unit.AMPERE);
    }

    private String role(PinRole role) {
        return words.of("option.role." + role.id());
    }

    private void line(String key, String value) {
        add(words.of("window.papers." + key), words.number(value));
    }

    private void add(String name, String value) {
        Label label = Build.prose(name, "papers-label");
        Label text = Build.prose(value, "papers-value");
        label.setLabelFor(text);
        list.getChildren().add(Build.column("papers-line", label, text));
    }
}
