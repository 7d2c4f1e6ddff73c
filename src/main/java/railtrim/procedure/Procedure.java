package railtrim.procedure;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Job;
import railtrim.quantity.BadInput;

/** The whole way through, as a list of steps, and the rules that hold it together. Pure: reads no clock and no file. */
public final class Procedure {
    private final RegulatorFamilies families;
    private final Map<String, Caution> cautions = new LinkedHashMap<>();
    private final Route route;
    private final UnaryOperator<Job> sight;

    private Procedure(
            RegulatorFamilies families, Collection<Caution> cautions, List<Step> steps, UnaryOperator<Job> sight) {
        this.families = families;
        cautions.forEach(caution -> this.cautions.put(caution.id(), caution));
        this.route = new Route(steps);
        this.sight = sight;
        steps.forEach(step -> step.cautions().forEach(this::caution));
    }

    /** @throws railtrim.quantity.BadInput for a caution a step names but the list lacks */
    public static Procedure standard(RegulatorFamilies families, List<Caution> cautions) {
        return new Procedure(families, cautions, Steps.all(families), job -> job);
    }

    /** The same procedure with other steps, or blind to some facts: for tests that break a rule on purpose. */
    Procedure altered(UnaryOperator<List<Step>> change, UnaryOperator<Job> blinkers) {
        return new Procedure(families, cautions.values(), change.apply(route.steps()), blinkers);
    }

    /** The standard procedure with the families and cautions that travel with the program. */
    public static Procedure builtIn() {
        return standard(
                RegulatorFamilies.of(BuiltIn.text("regulators.json")), Cautions.of(BuiltIn.text("cautions.json")));
    }

    public List<Step> steps() {
        return route.steps();
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
        Job seen = sight.apply(job);
        Job counting = Withdrawals.counting(seen);
        State state = Standing.of(route, families, recall, counting);
        return counting == seen ? state : state.of(seen);
    }
}
