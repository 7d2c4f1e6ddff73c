package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.threshold.DoseResponse;
import railtrim.threshold.Trial;
import railtrim.threshold.UpAndDown;

/** The published estimators that fit the shape of a list of trials, beside the bracket of each run. */
final class Estimates {
    /** @param onePercent where one in a hundred fails, volts; NaN where the method gives none; {@code spread} likewise */
    record Estimate(String method, double middle, double onePercent, double spread) {}

    /** Of a normal threshold one in a hundred lies this many deviations above the middle (any table). */
    private static final double ONE_PERCENT = 2.326348;

    private Estimates() {}

    static List<Estimate> of(List<Trial> trials) {
        List<Estimate> found = new ArrayList<>();
        UpAndDown.of(trials)
                .ifPresent(stairs -> found.add(new Estimate(
                        "up-down", stairs.middle(), stairs.middle() + ONE_PERCENT * stairs.spread(), stairs.spread())));
        List<DoseResponse.Group> groups = DoseResponse.groups(trials);
        curve("logit", DoseResponse.Link.LOGIT, groups).ifPresent(found::add);
        curve("probit", DoseResponse.Link.PROBIT, groups).ifPresent(found::add);
        DoseResponse.spearmanKaerber(groups)
                .ifPresent(stress -> found.add(new Estimate("spearman-kaerber", -stress, Double.NaN, Double.NaN)));
        return found;
    }

    /** Stress is the voltage with its sign turned, so a share of 1 % lies at more volts than the middle. */
    private static Optional<Estimate> curve(String method, DoseResponse.Link link, List<DoseResponse.Group> groups) {
        return DoseResponse.fit(link, groups)
                .map(fit -> new Estimate(
                        method,
                        -fit.stressAt(0.5),
                        -fit.stressAt(0.01),
                        link == DoseResponse.Link.PROBIT ? 1 / fit.slope() : Double.NaN));
    }

    static List<Object> json(List<Estimate> estimates) {
        return estimates.stream()
                .<Object>map(each -> Json.object()
                        .put("method", each.method())
                        .put("middle", each.middle())
                        .put("onePercent", each.onePercent())
                        .put("spread", each.spread())
                        .map())
                .toList();
    }

    static void onto(Sheet sheet, List<Estimate> estimates, Words words) {
        if (estimates.isEmpty()) {
            return;
        }
        sheet.blank().say(words.of("command.margin.estimates"));
        sheet.table(
                1,
                List.of(
                        words.of("command.margin.head.method"),
                        words.of("command.margin.head.half"),
                        words.of("command.margin.head.one-percent"),
                        words.of("command.margin.head.spread")),
                estimates.stream()
                        .map(each -> List.of(
                                words.of("command.margin.method." + each.method()),
                                Display.volts(each.middle()),
                                volts(each.onePercent()),
                                volts(each.spread())))
                        .toList());
    }

    private static String volts(double volts) {
        return Double.isNaN(volts) ? "–" : Display.volts(volts);
    }
}
