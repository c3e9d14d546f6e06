package org.hedgerow.web.sentences;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.hedgerow.web.page.LetterRun;
import org.junit.jupiter.api.Test;

class SentenceWordTest {

  private static SentenceWord word(String text, boolean spaced) {
    return new SentenceWord(LetterRun.of(text, List.of()), "phonetic", "readable", spaced);
  }

  /** As texts, for reading. */
  private static List<String> together(SentenceWord... words) {
    return SentenceWord.together(List.of(words)).stream()
        .map(group -> group.stream().map(SentenceWordTest::text).collect(Collectors.joining("+")))
        .toList();
  }

  private static String text(SentenceWord word) {
    return word.pieces().stream().map(LetterRun::letters).collect(Collectors.joining());
  }

  @Test
  void marksStayWithTheWordBeforeThem() {
    assertThat(
            together(
                word("Can", false),
                word("a", true),
                word("goat", true),
                word(",", false),
                word("float", true),
                word("?", false)))
        .containsExactly("Can", "a", "goat+,", "float+?");
  }

  @Test
  void aTextMayBeginWithAMarkOrASpace() {
    assertThat(together(word("“", false), word("No", false))).containsExactly("“+No");
    assertThat(together(word("No", true))).containsExactly("No");
    assertThat(together()).isEmpty();
  }
}
