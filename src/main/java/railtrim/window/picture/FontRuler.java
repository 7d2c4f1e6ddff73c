package railtrim.window.picture;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** Measures writing with the very fonts it is drawn in. */
final class FontRuler implements Ruler {
    private final String family;
    private final Map<Type, Font> fonts = new EnumMap<>(Type.class);
    private final Map<Type, Map<String, Double>> widths = new EnumMap<>(Type.class);
    private final Text text = new Text();

    FontRuler(String family) {
        this.family = family;
        for (Type type : Type.values()) {
            fonts.put(type, Font.font(family, type.bold() ? FontWeight.BOLD : FontWeight.NORMAL, type.size()));
            widths.put(type, new HashMap<>());
        }
    }

    String family() {
        return family;
    }

    /** @param part size as a part of the type's own */
    Font font(Type type, double part) {
        return part == 1
                ? fonts.get(type)
                : Font.font(family, type.bold() ? FontWeight.BOLD : FontWeight.NORMAL, part * type.size());
    }

    @Override
    public double width(String words, Type type) {
        return widths.get(type).computeIfAbsent(words, each -> {
            text.setFont(fonts.get(type));
            text.setText(each);
            return text.getLayoutBounds().getWidth();
        });
    }
}
