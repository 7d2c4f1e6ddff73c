package railtrim.procedure;

import java.util.List;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.Job;

/** The whole way through, as a list of steps, and the rules that hold it together. Pure: reads no clock and no file. */
public final class Procedure {
    private Procedure() {}

    /** @throws railtrim.quantity.BadInput for a caution a step names but the list lacks */
    public static Procedure standard(RegulatorFamilies families, List<Caution> cautions) {
        throw new UnsupportedOperationException();
    }

    /** The standard procedure with the families and cautions that travel with the program. */
    public static Procedure builtIn() {
        throw new UnsupportedOperationException();
    }

    public List<Step> steps() {
        throw new UnsupportedOperationException();
    }

    public Caution caution(String id) {
        throw new UnsupportedOperationException();
    }

    public State state(Job job) {
        throw new UnsupportedOperationException();
    }
}
