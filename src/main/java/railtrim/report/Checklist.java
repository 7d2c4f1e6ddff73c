package railtrim.report;

import java.util.List;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;

/**
 * A job written out for people: what was done, how it was proven, and how to undo it. Every text in it is plain (see {@link railtrim.quantity.PlainText}) and still has
 * to be escaped by whoever writes it out. Made from the job alone, without a clock: the same job gives the same checklist.
 *
 * @param mark the words NOT COMPLETE, or empty
 * @param missing what an unfinished job lacks
 */
public record Checklist(String title, String mark, List<String> missing, List<Section> sections) {
    public Checklist {
        missing = List.copyOf(missing);
        sections = List.copyOf(sections);
    }

    public static Checklist of(State state, Procedure procedure, Words words) {
        return new ChecklistBuilder(state, procedure, words).build();
    }

    public boolean complete() {
        return mark.isEmpty();
    }

    /** Whether it is a job's record, with a first page, and not a form or a comparison. */
    public boolean ofAJob() {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .anyMatch(Block.PageEnd.class::isInstance);
    }

    /**
     * @param level 2 for a part of the checklist, 3 for a step in it
     * @param mark a word after the heading: NOT COMPLETE, or how the step stands; empty for none
     */
    public record Section(int level, String title, String mark, List<Block> blocks) {
        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /** A piece of a section. {@link #kind()} is for the page template. */
    public sealed interface Block {
        String kind();

        record Says(String text) implements Block {
            @Override
            public String kind() {
                return "says";
            }
        }

        record Points(List<String> texts) implements Block {
            @Override
            public String kind() {
                return "points";
            }
        }

        /** Things to do, in order. */
        record Deeds(List<String> texts) implements Block {
            @Override
            public String kind() {
                return "deeds";
            }
        }

        /** Names and their values. */
        record Pairs(List<Pair> pairs) implements Block {
            @Override
            public String kind() {
                return "pairs";
            }
        }

        record Grid(List<String> head, List<List<String>> rows) implements Block {
            @Override
            public String kind() {
                return "grid";
            }
        }

        /** Things to be filled in by hand. */
        record Form(List<Entry> entries) implements Block {
            @Override
            public String kind() {
                return "form";
            }
        }

        /** A table with a head and so many empty rows. */
        record Blank(List<String> head, int rows) implements Block {
            @Override
            public String kind() {
                return "blank";
            }
        }

        /** What follows begins on a new sheet of paper; where there are no sheets it is nothing. */
        record PageEnd() implements Block {
            @Override
            public String kind() {
                return "page-end";
            }
        }

        /** A drawing with its meaning in words, for those who cannot see it and for pages without drawings. */
        record Picture(Drawing drawing, String inWords) implements Block {
            @Override
            public String kind() {
                return "picture";
            }
        }
    }

    /**
     * Something asked on a form.
     *
     * @param hint what to expect, empty for none
     * @param choices to be ticked; where there are none, there is an empty box to write in
     */
    public record Entry(String asked, String hint, List<String> choices) {
        public Entry {
            choices = List.copyOf(choices);
        }
    }

    public record Pair(String name, String value) {}
}
