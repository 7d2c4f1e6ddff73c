package railtrim.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.util.List;

/** A screen in memory, so that measuring neither disturbs the real one nor is disturbed by it. */
final class Screen implements AutoCloseable {
    private final Process server;
    private final String name;

    private Screen(Process server, String name) {
        this.server = server;
        this.name = name;
    }

    static Screen open() throws IOException {
        Process server;
        try {
            server = new ProcessBuilder(
                            List.of("Xvfb", "-displayfd", "1", "-screen", "0", "1280x1024x24", "-nolisten", "tcp"))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new IOException("The windows are measured on a screen in memory: install xvfb.", e);
        }
        String number = new BufferedReader(new InputStreamReader(server.getInputStream())).readLine();
        return new Screen(server, ":" + number);
    }

    /** As it stands in {@code DISPLAY}. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        server.destroy();
    }
}
