package railtrim.window.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import javafx.scene.Node;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;

/** The picture beside a step, drawn from the job as it stands. */
public final class Pictures {
    private Pictures() {}

    /**
     * A node that fills its space, at least 260 × 260, with words for people who do not see it. It does not change by itself: ask for a new one
     * when the state has changed. It belongs to a step that is looked at, be it the current one or one that is read again: what to touch is said by that step.
     *
     * @param kind mostly the step's own
     * @param answering what can be answered in the picture itself
     */
    public static Node of(Step.Picture kind, State.StepState shown, State state, Words words, Answering answering) {
        return new PictureView(drawing(kind, state.lookingAt(shown), words), answering);
    }

    /**
     * What a picture wears. It belongs to the place where pictures come and go: a sheet that came with each picture would be read anew, and all
     * styles around it worked out anew, with every step.
     */
    public static String style() {
        return Pictures.class.getResource("/railtrim/style/pictures.css").toExternalForm();
    }

    /**
     * Keeps a picture that is shown as a file: SVG where the name ends so, else PNG.
     *
     * @param picture from {@link #of}
     * @throws IOException where the file cannot be written
     */
    public static void save(Node picture, Path file) throws IOException {
        PictureFile.write((PictureView) picture, file);
    }

    /** Which picture belongs beside a step now. A line of one reading tells nothing, so the ladder stands in its place until there are two. */
    public static Step.Picture beside(State.StepState shown, State state) {
        boolean noLine = shown.picture() == Step.Picture.LINE
                && LineData.of(state.figures()).drawable().size() < 2;
        return noLine ? Step.Picture.LADDER : shown.picture();
    }

    private static Drawing meter(State state, Words words) {
        return state.current().step().id().equals("ranges")
                ? new RangesDrawing(RangesData.of(state.figures()), words)
                : new MeterDrawing(MeterData.of(state.figures()), words);
    }

    /** All that can be bought; once one was bought, that one alone. */
    private static Drawing resistors(State state, Words words) {
        ResistorsData data = ResistorsData.of(state.figures());
        if (!state.current().step().id().equals("hand") || data.picked().isEmpty()) {
            return new ResistorsDrawing(data, words);
        }
        // The first reading stays hidden until the second was taken without it.
        boolean twice = state.figures().ohms("hand.again").isPresent();
        OptionalDouble measured = twice ? state.figures().ohms("hand.ohms") : OptionalDouble.empty();
        return new HandDrawing(data.picked().orElseThrow(), measured, data.sign(), words);
    }

    static Drawing drawing(Step.Picture kind, State state, Words words) {
        return switch (kind) {
            case DIVIDER -> new DividerDrawing(DividerData.of(state), words);
            case PACKAGE -> new PackageDrawing(PackageData.of(state), words);
            case LADDER -> new LadderDrawing(LadderData.of(state.figures()), words);
            case LINE -> new LineDrawing(LineData.of(state.figures()), words);
            case LOG -> new LogDrawing(LogData.of(state.figures()), words);
            case BOARD -> new BoardDrawing(BoardData.of(state), words);
            case TRIMMER -> new TrimmerDrawing(TrimmerData.of(state), words);
            case METER -> meter(state, words);
            case BUDGET -> new BudgetDrawing(BudgetData.of(state.figures()), words);
            case RESISTORS -> resistors(state, words);
            case FAULTS -> new FaultsDrawing(FaultsData.of(state.figures()), words);
            case HEAT -> new HeatDrawing(HeatData.of(state.figures()), words);
        };
    }
}
