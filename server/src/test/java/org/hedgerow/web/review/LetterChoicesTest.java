package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.review.LetterGroup;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

class LetterChoicesTest {
  private final Lexicon lexicon = SeededLexicon.get();

  @Test
  void lettersOfOneSoundBelongTogether() {
    assertThat(choices("boat", "b oʊ t").pieces(List.of("0", "1", "1", "2")))
        .containsExactly(piece("b", 0), piece("oʊ", 1, 2), piece("t", 3));
  }

  @Test
  void aSplitPhonogramIsOnePiece() {
    assertThat(choices("kite", "k aɪ t").pieces(List.of("0", "1", "2", "1")))
        .containsExactly(piece("k", 0), piece("aɪ", 1, 3), piece("t", 2));
  }

  @Test
  void oneLetterMaySayTwoSounds() {
    assertThat(choices("fox", "f ɑ k s").pieces(List.of("0", "1", "2-3")))
        .containsExactly(piece("f", 0), piece("ɑ", 1), piece("k s", 2));
  }

  @Test
  void silentLettersSideBySideAreOnePieceWhereTheCatalogueSaysSo() {
    AccentCatalogue accent = lexicon.accents().get(0);
    boolean known = accent.find(new org.hedgerow.phonics.Grapheme("gh"), List.of()).isPresent();
    assertThat(choices("high", "h aɪ").pieces(List.of("0", "1", "-", "-"))).hasSize(known ? 3 : 4);
    assertThat(choices("bo", "b").pieces(List.of("0", "-")))
        .containsExactly(piece("b", 0), piece("", 1));
  }

  @Test
  void whatMakesNoSenseCountsAsNothing() {
    assertThat(choices("bo", "b oʊ").pieces(List.of("7", "1-0", "x", "99999"))).isEmpty();
  }

  @Test
  void goesThereAndBack() {
    LetterChoices choices = choices("stripe", "s t ɹ aɪ p");
    List<String> chosen = List.of("0", "1", "2", "3", "4", "3");
    assertThat(choices.choices(choices.pieces(chosen))).isEqualTo(chosen);
  }

  private LetterChoices choices(String spelling, String sounds) {
    AccentCatalogue accent = lexicon.accents().get(0);
    return new LetterChoices(spelling, new SoundReader(accent.accent()).read(sounds), accent);
  }

  private static LetterGroup piece(String sound, Integer... letters) {
    return new LetterGroup(List.of(letters), sound);
  }
}
