package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

class KindFormTest {
  private final Lexicon lexicon = SeededLexicon.get();

  @Test
  void proposesSoundsWhereNobodyHasSaidAny() {
    assertThat(word("spelling=broam").pronunciations())
        .containsExactly(new ProposedPronunciation("en-US", "b ɹ oʊ m", List.of()));
  }

  @Test
  void whatNobodyTouchedFollowsTheWord() {
    NewWord word =
        word("spelling=floam", "accent-0=en-US", "sounds-0=b ɹ oʊ m", "proposed-0=b ɹ oʊ m");
    assertThat(word.pronunciations().get(0).sounds()).isEqualTo("f l oʊ m");
  }

  @Test
  void whatSomebodyTypedStays() {
    NewWord word =
        word("spelling=floam", "accent-0=en-US", "sounds-0=f l  ɔ m", "proposed-0=f l oʊ m");
    assertThat(word.pronunciations().get(0).sounds()).isEqualTo("f l ɔ m");
  }

  @Test
  void lettersPutTogetherByHandStay() {
    assertThat(byHand("broam en-US b ɹ oʊ m").spans())
        .extracting(piece -> piece.letters() + piece.sound())
        .containsExactly("[0]b", "[1]ɹ", "[2]oʊ", "[3]", "[4]m");
  }

  @Test
  void butNotForOtherSounds() {
    assertThat(byHand("broam en-US b ɹ ɔ m").spans()).isEmpty();
  }

  @Test
  void aSmallButtonAddsASound() {
    NewWord word = word("spelling=broam", "do=say-0-z");
    assertThat(word.pronunciations().get(0).sounds()).isEqualTo("b ɹ oʊ m z");
  }

  @Test
  void anotherBlockIsInAnotherAccent() {
    NewWord word = word("spelling=broam", "do=add");
    assertThat(word.pronunciations())
        .extracting(ProposedPronunciation::accent)
        .containsExactly("en-US", "en-GB");
  }

  @Test
  void nonsenseIsNoReasonToFail() {
    NewWord word =
        word("spelling=<b>", "accent-0=xx", "sounds-0=?!", "letter-0=9-1", "commonness=many");
    assertThat(word.pronunciations()).hasSize(1);
    assertThat(word.labels().commonness()).isEmpty();
  }

  private ProposedPronunciation byHand(String base) {
    return word(
            "spelling=broam",
            "accent-0=en-US",
            "sounds-0=b ɹ oʊ m",
            "proposed-0=",
            "base-0=" + base,
            "letter-0=0",
            "letter-0=1",
            "letter-0=2",
            "letter-0=-",
            "letter-0=3")
        .pronunciations()
        .get(0);
  }

  private NewWord word(String... fields) {
    Map<String, List<String>> sent = new LinkedHashMap<>();
    Arrays.stream(fields)
        .map(field -> field.split("=", 2))
        .forEach(
            field ->
                sent.merge(
                    field[0],
                    List.of(field[1]),
                    (one, two) ->
                        java.util.stream.Stream.concat(one.stream(), two.stream()).toList()));
    return (NewWord) KindForm.content(ContributionKind.WORD, new Fields(sent), lexicon).proposal();
  }
}
