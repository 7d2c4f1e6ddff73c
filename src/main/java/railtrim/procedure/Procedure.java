package railtrim.procedure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Job;
import railtrim.quantity.BadInput;

/** The whole way through, as a list of steps, and the rules that hold it together. Pure: reads no clock and no file. */
public final class Procedure {
    private final RegulatorFamilies families;
    private final Map<String, Caution> cautions = new LinkedHashMap<>();
    private final List<Step> steps;

    private Procedure(RegulatorFamilies families, List<Caution> cautions) {
        this.families = families;
        cautions.forEach(caution -> this.cautions.put(caution.id(), caution));
        this.steps = Steps.all(families);
        steps.forEach(step -> step.cautions().forEach(this::caution));
    }

    /** @throws railtrim.quantity.BadInput for a caution a step names but the list lacks */
    public static Procedure standard(RegulatorFamilies families, List<Caution> cautions) {
        return new Procedure(families, cautions);
    }

    /** The standard procedure with the families and cautions that travel with the program. */
    public static Procedure builtIn() {
        return standard(
                RegulatorFamilies.of(BuiltIn.text("regulators.json")), Cautions.of(BuiltIn.text("cautions.json")));
    }

    public List<Step> steps() {
        return steps;
    }

    public RegulatorFamilies families() {
        return families;
    }

    public Caution caution(String id) {
        Caution caution = cautions.get(id);
        if (caution == null) {
            throw BadInput.of("verdict.caution-missing", id);
        }
        return caution;
    }

    public State state(Job job) {
        return state(job, new Recall());
    }

    /** The same, with sums worked out for an earlier state of the job recalled. */
    State state(Job job, Recall recall) {
        return Standing.of(steps, families, recall, job);
    }
}
