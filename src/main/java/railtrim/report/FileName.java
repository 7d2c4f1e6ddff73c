package railtrim.report;

import java.util.Locale;
import java.util.Set;

/** A file name that every system takes and that stays in its folder, made from any text. */
public final class FileName {
    private static final int LONGEST = 60;

    /** Names some systems keep for devices, whatever their ending. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "clock");

    private FileName() {}

    /** Letters, digits, spaces, hyphens and underscores of {@code wished}, at most 60; {@code otherwise} where nothing usable is left. */
    public static String of(String wished, String otherwise) {
        String name = wished.replaceAll("[^A-Za-z0-9 _-]+", "_").strip().replaceAll("^[_ -]+|[_ -]+$", "");
        if (name.length() > LONGEST) {
            name = name.substring(0, LONGEST).strip();
        }
        return name.isEmpty() || device(name) ? otherwise : name;
    }

    private static boolean device(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return DEVICES.contains(small) || small.matches("(com|lpt)\\d?");
    }
}
