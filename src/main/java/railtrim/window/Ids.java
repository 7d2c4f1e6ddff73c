package railtrim.window;

/** Names of nodes, from the names of fields: {@code leg.ohms} is shown by {@code field-leg-ohms}. */
final class Ids {
    private Ids() {}

    static String field(String field) {
        return "field-" + plain(field);
    }

    static String option(String field, String option) {
        return "option-" + plain(field) + "-" + plain(option);
    }

    static String enter(String field) {
        return "enter-" + plain(field);
    }

    static String sure(String field) {
        return "sure-" + plain(field);
    }

    static String help(String field) {
        return "help-" + plain(field);
    }

    static String sum(String field) {
        return "sum-" + plain(field);
    }

    static String acknowledge(String caution) {
        return "ack-" + plain(caution);
    }

    static String step(String step) {
        return "step-" + plain(step);
    }

    private static String plain(String id) {
        return id.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
