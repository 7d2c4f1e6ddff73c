package railtrim.window.picture;

import railtrim.procedure.Words;

/** The two probes: red is round, black is square, and each carries its word. */
record ProbeTag(Words words) {
    static final double HEIGHT = 18;

    double width(Sheet sheet, Spot.Probe probe) {
        return sheet.widthOf(word(probe), Type.STRONG) + 16;
    }

    String word(Spot.Probe probe) {
        return words.of(probe == Spot.Probe.RED ? "picture.probe.red" : "picture.probe.black");
    }

    /** A tag with its middle at {@code tagX, tagY} and a needle to {@code x, y}. */
    void draw(Sheet sheet, Spot.Probe probe, double tagX, double tagY, double x, double y) {
        needle(sheet, probe, tagX, tagY, x, y);
        ring(sheet, probe, x, y);
        tag(sheet, probe, tagX, tagY);
    }

    /** A thin wedge that comes to its point on the spot. */
    static void needle(Sheet sheet, Spot.Probe probe, double fromX, double fromY, double x, double y) {
        double length = Math.max(1, Math.hypot(x - fromX, y - fromY));
        double acrossX = -(y - fromY) / length * 3;
        double acrossY = (x - fromX) / length * 3;
        sheet.polygon(
                probe == Spot.Probe.RED ? Ink.RED_PROBE : Ink.BLACK_PROBE,
                fromX + acrossX,
                fromY + acrossY,
                fromX - acrossX,
                fromY - acrossY,
                x,
                y);
    }

    static void ring(Sheet sheet, Spot.Probe probe, double x, double y) {
        if (probe == Spot.Probe.RED) {
            sheet.disc(x, y, 6, Ink.RED_PROBE_RING);
        } else {
            sheet.box(x - 5.5, y - 5.5, 11, 11, 0, Ink.BLACK_PROBE_RING);
        }
    }

    void tag(Sheet sheet, Spot.Probe probe, double x, double y) {
        boolean red = probe == Spot.Probe.RED;
        double wide = width(sheet, probe);
        sheet.box(
                x - wide / 2,
                y - HEIGHT / 2,
                wide,
                HEIGHT,
                red ? HEIGHT / 2 : 2,
                red ? Ink.RED_PROBE : Ink.BLACK_PROBE);
        sheet.write(word(probe), x, y, Align.CENTRE, Type.STRONG, red ? Ink.ON_RED_PROBE : Ink.ON_BLACK_PROBE);
    }
}
