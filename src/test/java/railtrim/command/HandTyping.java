package railtrim.command;

import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.practice.Answer;
import railtrim.practice.Hand;
import railtrim.procedure.Course;

/** A practice hand at the keyboard: does on the bench what is asked, and types what came of it. Ends when the hand is done. */
class HandTyping extends BufferedReader {
    private static final Pattern QUOTED = Pattern.compile("“([^“”]+)”");

    private final Hand hand;
    private final Course course;
    private final Supplier<String> screen;
    private final Deque<String> lines = new ArrayDeque<>();
    private String stuck = "";

    /** @param screen all that the wizard has written so far */
    HandTyping(Hand hand, Course course, Supplier<String> screen) {
        super(new StringReader(""));
        this.hand = hand;
        this.course = course;
        this.screen = screen;
    }

    @Override
    public String readLine() {
        if (lines.isEmpty()) {
            type(hand.next(course.state(), course));
        }
        return lines.poll();
    }

    /** Why the hand could not go on, empty where it could. */
    String stuck() {
        return stuck;
    }

    private void type(Answer answer) {
        if (answer instanceof Answer.Typed typed) {
            lines.add(typed.text());
            if (typed.sure()) {
                lines.add("sure");
            }
        } else if (answer instanceof Answer.Picked picked) {
            lines.add(picked.option());
        } else if (answer instanceof Answer.Acknowledged || answer instanceof Answer.Switched) {
            lines.add(lastQuoted());
        } else if (answer instanceof Answer.Alarmed) {
            lines.add("safe");
        } else if (answer instanceof Answer.Reopened reopened) {
            lines.add("back " + reopened.reason());
        } else if (answer instanceof Answer.Stuck why) {
            stuck = why.why();
        }
    }

    /** The word the screen asks for: the last one in quotes. */
    private String lastQuoted() {
        Matcher quoted = QUOTED.matcher(screen.get());
        String last = "";
        while (quoted.find()) {
            last = quoted.group(1);
        }
        return last;
    }
}
