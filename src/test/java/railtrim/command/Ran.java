package railtrim.command;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import com.google.gson.Strictness;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A command that was run: its exit code and what it wrote. */
record Ran(int exit, String out, String err) {
    private static final Gson STRICT =
            new GsonBuilder().setStrictness(Strictness.STRICT).create();

    static Ran of(String... arguments) {
        return reading("", arguments);
    }

    /** The arguments of {@code line} parted at spaces, then the others as they are. */
    static Ran line(String line, String... more) {
        List<String> all = new ArrayList<>(List.of(line.strip().split(" +")));
        all.addAll(Arrays.asList(more));
        return of(all.toArray(String[]::new));
    }

    static Ran reading(String typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new BufferedReader(new StringReader(typed)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        int exit = CommandLineStart.run(terminal, arguments);
        return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Standard output as the one JSON object it has to be, read strictly. */
    JsonObject json() {
        return STRICT.fromJson(out, JsonObject.class);
    }

    double number(String key) {
        return json().get(key).getAsDouble();
    }
}
