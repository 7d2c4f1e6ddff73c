package railtrim;

/** Opens the window, or runs a command. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.out.println("railtrim");
    }
}
