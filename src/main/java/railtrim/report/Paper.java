package railtrim.report;

import java.util.Locale;
import java.util.Set;

/** Sheets to print on; sides in points of 1/72 inch (ISO 216, ANSI/ASME Y14.1). */
public enum Paper {
    A4("a4", 595.28, 841.89),
    LETTER("letter", 612, 792);

    private static final Set<String> LETTER_COUNTRIES =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private final String id;
    private final double width;
    private final double height;

    Paper(String id, double width, double height) {
        this.id = id;
        this.width = width;
        this.height = height;
    }

    /** What printers hold where people live (Unicode CLDR, territories with US letter paper); A4 where that is not known. */
    public static Paper usual(Locale where) {
        return LETTER_COUNTRIES.contains(where.getCountry()) ? LETTER : A4;
    }

    /** The name used on the command line. */
    public String id() {
        return id;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }
}
