package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import railtrim.procedure.State.Card;

/** A break that is not yet answered for. */
final class Pending {
    private Break gap;
    private final long seconds;
    private final String note;
    private final Break.Reentry reentry;
    private final Set<String> known;
    private final Set<String> answered = new HashSet<>();

    Pending(Break gap, long seconds, String note, Break.Reentry reentry, Set<String> known) {
        this.gap = gap;
        this.seconds = seconds;
        this.note = note;
        this.reentry = reentry;
        this.known = known;
    }

    Break gap() {
        return gap;
    }

    /** The break turned out longer than the clock says. */
    void gap(Break longer) {
        gap = longer;
    }

    Break.Reentry reentry() {
        return reentry;
    }

    void railDead() {
        answered.add("resume.rail");
    }

    void answered(String field, boolean well) {
        if (well) {
            answered.add(field);
        } else {
            answered.remove(field);
        }
    }

    /** What is asked: the rail always; more the longer the break was. */
    private List<String> asked() {
        List<String> fields = new ArrayList<>(List.of("resume.rail"));
        if (gap != Break.SHORT) {
            fields.add("resume.zero");
        }
        if (gap == Break.LONG || answered.contains("resume.where")) {
            fields.add("resume.where");
        }
        if (gap == Break.NEW_DAY && known.contains("reg.marking")) {
            fields.add("resume.marking");
        }
        if (gap == Break.NEW_DAY && known.contains("leg.ohms")) {
            fields.add("resume.total");
        }
        return fields;
    }

    boolean over() {
        return answered.containsAll(asked());
    }

    Card.Resume card() {
        return new Card.Resume(seconds, note.isBlank() ? Optional.empty() : Optional.of(note), asked());
    }
}
