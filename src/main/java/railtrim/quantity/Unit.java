package railtrim.quantity;

/** The units a reading can have; every number inside a sum is in these SI units (per cent as a plain number of per cent). */
public enum Unit {
    VOLT("V"),
    OHM("Ω"),
    AMPERE("A"),
    WATT("W"),
    CELSIUS("°C"),
    PERCENT("%"),
    SECOND("s"),
    COUNT("");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
