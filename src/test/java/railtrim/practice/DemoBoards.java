package railtrim.practice;

import railtrim.job.BuiltIn;

/** The boards that come with the program. */
final class DemoBoards {
    private DemoBoards() {}

    static String text(String name) {
        return BuiltIn.text("demo-data/boards/" + name + ".json");
    }

    static Board named(String name) {
        return Board.of(text(name));
    }
}
