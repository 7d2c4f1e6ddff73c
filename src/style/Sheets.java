import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.css.Stylesheet;

/**
 * Run by the build on the program's libraries: the theme, less what is for kinds of control that this program has not, and
 * every style sheet in the toolkit's own form beside the written one, which it reads without parsing. The toolkit tries each
 * style class a sheet names on each kind of node, so what is left out is saved at the start and again on each new page.
 */
final class Sheets {
    private static final Pattern REMARK = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern STYLE_CLASS = Pattern.compile("\\.([A-Za-z][A-Za-z0-9_-]*)");

    /** Style classes of the toolkit's controls and their parts, as they are in the window. {@code ThemeTest} finds one that is missing. */
    private static final Set<String> KEPT = Set.of(
            ("root label text mnemonic-underline button toggle-button left-pill center-pill right-pill"
                            + " text-input text-field text-area content scroll-pane viewport corner edge-to-edge"
                            + " scroll-bar track track-background thumb increment-button decrement-button increment-arrow decrement-arrow"
                            + " check-box radio-button box mark radio dot slider axis progress-indicator progress-bar bar"
                            + " combo-box combo-box-base combo-box-popup arrow arrow-button list-view cell list-cell virtual-flow clipped-container"
                            + " menu-button menu menu-item context-menu separator line graphic-container label-container right-container left-container"
                            + " scroll-arrow menu-up-arrow menu-down-arrow tooltip popup popover border title icon tile card"
                            + " table-view table-column table-cell table-row-cell column-header column-header-background column-resize-line column-drag-header"
                            + " column-overlay filler placeholder sort-order sort-order-dot sort-order-dots-container"
                            + " show-hide-columns-button show-hide-column-image sheet")
                    .split(" "));

    private Sheets() {}

    /** @param arguments the folder of the program's own style sheets */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        for (String colours : List.of("light", "dark")) {
            try (var theme = ClassLoader.getSystemResourceAsStream("atlantafx/base/theme/primer-" + colours + ".css")) {
                String whole = new String(theme.readAllBytes(), StandardCharsets.UTF_8);
                Files.writeString(folder.resolve("theme-" + colours + ".css"), kept(whole));
            }
        }
        try (Stream<Path> written = Files.list(folder)) {
            for (Path sheet : written.filter(file -> file.toString().endsWith(".css")).toList()) {
                Stylesheet.convertToBinary(
                        sheet.toFile(), new java.io.File(sheet.toString().replaceAll("css$", "bss")));
            }
        }
    }

    private static String kept(String sheet) {
        StringBuilder kept = new StringBuilder();
        Matcher rule = RULE.matcher(REMARK.matcher(sheet).replaceAll(""));
        while (rule.find()) {
            String selectors = Stream.of(rule.group(1).split(","))
                    .map(String::strip)
                    .filter(Sheets::isOurs)
                    .collect(Collectors.joining(", "));
            if (!selectors.isEmpty()) {
                kept.append(selectors).append(" {").append(rule.group(2)).append("}\n");
            }
        }
        return kept.toString();
    }

    private static boolean isOurs(String selector) {
        return STYLE_CLASS.matcher(selector).results().allMatch(name -> KEPT.contains(name.group(1)));
    }
}
