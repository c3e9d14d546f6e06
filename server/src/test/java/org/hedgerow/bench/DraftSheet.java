package org.hedgerow.bench;

import java.util.List;
import java.util.Set;
import org.hedgerow.language.TrigramModel;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.ComposedSentence;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.CompositionRequest;
import org.hedgerow.sentences.compose.SentenceKind;

/**
 * Prints composed sentences as a table to be judged: {@code DraftSheet SEED COUNT oa1,ow2}, with
 * sight words from the usual list, in both American and British English.
 */
public final class DraftSheet {
  private DraftSheet() {}

  public static void main(String[] args) {
    Lexicon lexicon = SeededLexicon.get();
    Composer composer =
        new Composer(SeedKnowledge.of(SeedLexicon.bundled()), TrigramModel.bundled());
    System.out.println("# value\tsentence\tjudgement\treason");
    for (String name : args[2].split(",", -1)) {
      int at = name.length() - 1;
      Correspondence value =
          lexicon
              .catalogue()
              .value(name.substring(0, at), name.charAt(at) - '0')
              .orElseThrow(() -> new IllegalArgumentException(name));
      for (ComposedSentence draft :
          composer
              .compose(
                  new CompositionRequest(
                      Integer.parseInt(args[1]),
                      Long.parseLong(args[0]),
                      Set.of(),
                      Set.of(SentenceKind.values())),
                  lexicon,
                  standard(value))
              .sentences()) {
        System.out.printf("%s\t%s%n", name, draft.text());
      }
    }
  }

  private static SentenceStandard standard(Correspondence value) {
    return new SentenceStandard(
        Standard.of(value),
        List.of("en-US", "en-GB"),
        SeededLexicon.get().plans().sightWords().usualWords(),
        SentenceStandard.DEFAULT_TARGETS,
        SentenceStandard.DEFAULT_WORDS);
  }
}
