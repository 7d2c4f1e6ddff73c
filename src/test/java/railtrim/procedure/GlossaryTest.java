package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;

class GlossaryTest {
    private final Glossary glossary = new Glossary(Words.english());

    private List<String> terms(String... texts) {
        return glossary.in(texts).stream().map(Glossary.Gloss::term).toList();
    }

    @Test
    void theTermsOfAStepComeInTheOrderTheyAreRead() {
        assertEquals(
                List.of("Trimmer", "Leg", "Adjust pin"),
                terms("Solder the trimmer across the leg.", "Keep off the adjust pin."));
    }

    @Test
    void aTermIsFoundInThePluralAndAtTheStartOfASentence() {
        assertEquals(List.of("Leg"), terms("Legs are measured with the power off."));
    }

    @Test
    void aTermInsideAnotherWordIsNotMeant() {
        // "legal", "trail", "default", "download" only look like terms.
        assertEquals(List.of(), terms("A legal trail by default after the download."));
    }

    @Test
    void aTextWithoutTermsOfTheTradeNeedsNoGloss() {
        assertEquals(List.of(), terms("Pull the board’s power plug."));
    }

    @Test
    void everyGlossInTheBundleIsKnownAndSaysWhatTheTermIs() {
        long written = BuiltIn.text("words.properties")
                .lines()
                .filter(line -> line.startsWith("glossary."))
                .count();
        assertEquals(written, glossary.all().size());
        glossary.all().forEach(gloss -> assertTrue(gloss.meaning().matches("\\p{Ll}.*\\."), gloss.term()));
    }
}
