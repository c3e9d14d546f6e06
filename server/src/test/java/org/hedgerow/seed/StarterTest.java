package org.hedgerow.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.StarterRow;
import org.junit.jupiter.api.Test;

/** The starter set, row by row, against the catalogue. */
class StarterTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final List<StarterRow> ROWS = SeedLexicon.bundled().starter();
  private static final List<String> ACCENTS =
      List.of("en-US", "en-GB").stream().filter(tag -> LEXICON.accent(tag).isPresent()).toList();

  @Test
  void noRowContradictsTheCatalogue() {
    List<String> contradicted = new ArrayList<>();
    for (StarterRow row : ROWS) {
      if (row.isIn()) {
        contradiction(row).ifPresent(contradicted::add);
      }
    }
    assertThat(contradicted)
        .as("rows of starter/starter.tsv that the catalogue contradicts: correct one or the other")
        .isEmpty();
  }

  private static Optional<String> contradiction(StarterRow row) {
    Check check =
        new WordChecker(LEXICON.catalogue())
            .check(LEXICON.subject(row.word()), standard(row), said(row.word()));
    return check.verdict() == Verdict.PASS
        ? Optional.empty()
        : Optional.of(
            "line %d: %s for %s: %s"
                .formatted(
                    row.line(),
                    row.word(),
                    row.group(),
                    check.findings().stream()
                        .map(each -> each.accent() + " " + each.message())
                        .toList()));
  }

  /** Where the bank doesn't know how a word is said, it can't contradict. */
  private static List<String> said(String word) {
    return ACCENTS.stream()
        .filter(accent -> !LEXICON.subject(word).saidIn(accent).isEmpty())
        .toList();
  }

  private static Standard standard(StarterRow row) {
    String[] parts = row.group().split(" ", -1);
    if (parts.length == 1) {
      return Standard.basic();
    }
    Correspondence value =
        LEXICON.catalogue().value(parts[0], Integer.parseInt(parts[1])).orElseThrow();
    return Standard.of(value);
  }

  @Test
  void itsWordsComeFirst() {
    List<Boolean> marks = LEXICON.words().stream().map(word -> word.isStarter()).toList();
    assertThat(marks.lastIndexOf(true)).isLessThan(marks.indexOf(false));
  }
}
