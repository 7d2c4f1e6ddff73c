package railtrim.command;

/** A bar that grows while many rehearsals run; on a person's terminal only, and on standard error, so that figures stay clean. */
final class Progress {
    private static final int WIDTH = 40;

    private final Terminal terminal;
    private final int all;

    Progress(Terminal terminal, int all) {
        this.terminal = terminal;
        this.all = all;
    }

    void done(int boards) {
        if (terminal.person()) {
            int filled = (int) ((long) WIDTH * boards / all);
            terminal.err().print("\r[" + "#".repeat(filled) + ".".repeat(WIDTH - filled) + "] " + boards + "/" + all);
            terminal.err().flush();
        }
    }

    /** Wipes the bar. */
    void over() {
        if (terminal.person()) {
            terminal.err().print("\r" + " ".repeat(WIDTH + 20) + "\r");
            terminal.err().flush();
        }
    }
}
