package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.http.Json;
import org.junit.jupiter.api.Test;

/** Which lists are written anew. */
class WordJsonCacheTest {
  private final Lexicon lexicon = SeededLexicon.get();
  private final WordJsonCache written = new WordJsonCache(new Json(JsonMapping.mapper()));
  private final AtomicInteger views = new AtomicInteger();

  private String json(String list, Word... words) {
    return written.json(
        list,
        List.of(words),
        () -> {
          views.incrementAndGet();
          return Arrays.stream(words)
              .map(word -> WordView.of(word, Pictures.NONE, List.of("en-US"), value -> false))
              .toList();
        });
  }

  private Word word(String spelling) {
    return lexicon.word(spelling).orElseThrow();
  }

  @Test
  void theSameWordsAreWrittenOnce() {
    String first = json("oa", word("boat"), word("coat"));
    assertThat(first).startsWith("[{\"spelling\":\"boat\"").contains("\"spelling\":\"coat\"");
    assertThat(json("oa", word("boat"), word("coat"))).isEqualTo(first);
    assertThat(views).hasValue(1);
  }

  @Test
  void aWordThatChangesComesOrGoesIsSeen() {
    json("oa", word("boat"), word("coat"));
    Word rarer = word("coat").ofCommonness(1);
    assertThat(json("oa", word("boat"), rarer)).contains("\"commonness\":1");
    assertThat(json("oa", word("boat"))).doesNotContain("coat");
    assertThat(json("oa", word("boat"), word("goat"))).contains("goat");
    assertThat(views).hasValue(4);
  }

  @Test
  void listsAreNotTakenForEachOther() {
    json("oa", word("boat"));
    assertThat(json("ea", word("seat"))).contains("seat").doesNotContain("boat");
    assertThat(json("oa", word("boat"))).contains("boat");
    assertThat(views).hasValue(2);
  }
}
