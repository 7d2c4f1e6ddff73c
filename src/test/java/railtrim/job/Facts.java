package railtrim.job;

import java.util.List;
import railtrim.quantity.Unit;

/** One fact of every kind, with texts that are hard to write. */
final class Facts {
    /** The same on every run. */
    static final Mark MARK = Mark.forShow();

    private Facts() {}

    static List<Fact> ofEveryKind() {
        return List.of(
                new Fact.Note("scope", "board.name", "Orgel „Nr. 3“ \"left\" \\ \u2028 \u202e\u0007 Ω µ 🎹\n<b>"),
                new Fact.Choice("scope", "supply.kind", "adapter"),
                new Fact.Reading("meter", "meter.zero", 0.1 + 0.2, Unit.OHM, "0R3"),
                new Fact.Acknowledged("workplace", "iron"),
                new Fact.Power("base.on", true),
                new Fact.Alarm("down.watch", "smoke"),
                new Fact.Reopened("legs", "read with the lamp on"),
                new Fact.Skipped("warm", ""),
                new Fact.Paused("aim", "dinner"),
                new Fact.Resumed("resume", -3600),
                new Fact.Proposed("plan", "reg.marking", "LM317 „Ω“"),
                new Fact.Withdrawn("plan", 11),
                new Fact.Power("base.off", false));
    }
}
