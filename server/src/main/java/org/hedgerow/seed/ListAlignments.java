package org.hedgerow.seed;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import java.io.PrintStream;
import java.nio.file.Path;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;
import org.hedgerow.seedlexicon.SeedLexicon;

/**
 * Prints how the dictionary's words are aligned, for the scripts that derive other accents from
 * them: word, sounds in ARPAbet, {@code aside} or nothing, and the spans as in {@code oa:oʊ},
 * separated by tabs.
 */
final class ListAlignments {

  private ListAlignments() {}

  /** Takes the seed folder. */
  public static void main(String[] arguments) {
    SeedLexicon seed = SeedLexicon.inFolder(Path.of(arguments[0]));
    PrintStream out = new PrintStream(System.out, false, UTF_8);
    new SeedWords(seed, SeedCatalogue.weighted(seed).subList(0, 1))
        .words(word -> {})
        .forEach(word -> print(out, word));
    out.flush();
  }

  private static void print(PrintStream out, Word word) {
    for (Pronunciation each : word.pronunciations()) {
      out.println(
          String.join(
              "\t",
              word.spelling(),
              each.stressed(),
              each.aside() ? "aside" : "",
              each.alignment().stream()
                  .flatMap(alignment -> alignment.spans().stream())
                  .map(Span::toString)
                  .collect(joining(" "))));
    }
  }
}
