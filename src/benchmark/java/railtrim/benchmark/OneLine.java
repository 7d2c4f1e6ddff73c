package railtrim.benchmark;

/** The least a command can do. */
public final class OneLine {
    private OneLine() {}

    public static void main(String[] arguments) {
        System.out.println("3.139 V");
    }
}
