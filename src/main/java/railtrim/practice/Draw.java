package railtrim.practice;

import railtrim.heat.Heat;

/**
 * What the chip of a board draws. Its board's stock voltage and warmth are worked out once: while a trimmer turns, the current is asked for
 * thousands of times.
 */
final class Draw {
    /** Leakage doubles for every so many kelvin; from memory of chips of these years. */
    private static final double LEAKAGE_DOUBLES = 25;

    private final Board.Load load;
    private final double otherShare;
    private final double stock;
    private final double warmAtStock;

    Draw(Board board) {
        this.load = board.load();
        this.otherShare = load.other().map(Board.Other::share).orElse(1.0);
        this.stock = board.stock();
        this.warmAtStock = board.warmth().room() + board.warmth().chip() * stock * load.stockAmperes();
    }

    /** Temperature of the chip under the named load as its maker left it, °C. */
    double warmAtStock() {
        return warmAtStock;
    }

    /** Current at a voltage, amperes; @param celsius of the chip */
    double amperes(double volts, Board.Work work, double celsius) {
        if (volts <= 0) {
            return 0;
        }
        double part = volts / stock;
        double busy = switch (work) {
            case IDLE -> load.idle();
            case NAMED -> 1;
            case OTHER -> otherShare;
        };
        double switching = (1 - load.leakage()) * load.clock() * busy;
        double follows = load.kind() == Heat.LoadKind.DIGITAL ? part : 1;
        double leaks = load.leakage() == 0
                ? 0
                : load.leakage() * part * Math.pow(2, (celsius - warmAtStock) / LEAKAGE_DOUBLES);
        return load.stockAmperes() * (switching * follows + leaks);
    }
}
