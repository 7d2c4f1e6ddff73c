package railtrim.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import railtrim.procedure.Words;
import railtrim.report.Checklist;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;
import railtrim.report.Drawing.Shape;

/** All that stands in a printed checklist, in the order in which it is to be read. */
final class ReadingOrder {
    private final List<String> texts = new ArrayList<>();
    private final Checklist checklist;
    private final Words words;

    private ReadingOrder(Checklist checklist, Words words) {
        this.checklist = checklist;
        this.words = words;
    }

    /** Without white space. */
    static String of(Checklist checklist, Words words) {
        ReadingOrder order = new ReadingOrder(checklist, words);
        order.all();
        return Extracted.bare(String.join("", order.texts));
    }

    private void all() {
        texts.add(checklist.title());
        if (!checklist.complete()) {
            texts.addAll(List.of(checklist.mark(), words.of("report.missing.see")));
        }
        for (Section section : checklist.sections()) {
            texts.addAll(List.of(section.title(), section.mark()));
            section.blocks().forEach(this::block);
        }
    }

    private void block(Block block) {
        if (block instanceof Block.Says says) {
            texts.add(says.text());
        } else if (block instanceof Block.Points points) {
            points.texts().forEach(text -> texts.add("•" + text));
        } else if (block instanceof Block.Deeds deeds) {
            IntStream.range(0, deeds.texts().size())
                    .forEach(i -> texts.add((i + 1) + "." + deeds.texts().get(i)));
        } else if (block instanceof Block.Pairs pairs) {
            pairs.pairs().forEach(pair -> texts.add(pair.name() + pair.value()));
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        } else if (block instanceof Block.Picture picture) {
            picture.drawing().shapes().stream()
                    .filter(Shape.Label.class::isInstance)
                    .forEach(shape -> texts.add(((Shape.Label) shape).text()));
            texts.add(picture.inWords());
        } else if (block instanceof Block.PageEnd) {
            afterTheFirstPage();
        } else {
            throw new IllegalArgumentException(block.kind());
        }
    }

    private void grid(Block.Grid grid) {
        int[] shown = IntStream.range(0, grid.head().size())
                .filter(i -> grid.rows().stream().anyMatch(row -> !row.get(i).isEmpty()))
                .toArray();
        IntStream.of(shown).forEach(i -> texts.add(grid.head().get(i)));
        grid.rows().forEach(row -> IntStream.of(shown).forEach(i -> texts.add(row.get(i))));
    }

    private void afterTheFirstPage() {
        if (!checklist.missing().isEmpty()) {
            texts.addAll(List.of(words.of("report.missing.title"), checklist.mark()));
            checklist.missing().forEach(text -> texts.add("•" + text));
        }
        texts.add(words.of("report.note"));
    }
}
