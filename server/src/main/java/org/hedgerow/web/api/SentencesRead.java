package org.hedgerow.web.api;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.SentenceFilter;

/** {@code GET /sentences}: the sentences of the bank. */
final class SentencesRead implements Read {

  private static final String PHONOGRAM = "phonogram";
  private static final String VALUE = "value";
  private static final String WORD = "word";
  private static final String LONGEST = "longest";
  private static final int MOST_WORDS = 40;

  private final Json json;

  SentencesRead(Json json) {
    this.json = json;
  }

  @Override
  public List<String> parameters() {
    return List.of(PHONOGRAM, VALUE, AccentParameter.NAMES.get(0), WORD, LONGEST);
  }

  @Override
  public List<Format> formats() {
    return List.of(Format.JSON, Format.NDJSON, Format.TEXT);
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    Optional<Correspondence> value =
        new PhonogramReader(lexicon.catalogue(), parameters.faults())
            .target(parameters.text(PHONOGRAM), parameters.text(VALUE));
    List<String> accents = AccentParameter.tags(lexicon, parameters);
    String word = parameters.text(WORD).orElse("").toLowerCase(Locale.ROOT);
    SentenceFilter filter = new SentenceFilter(value, accents, word, longest(parameters));
    return new Question("sentences?" + filter.key(), format -> answer(lexicon, filter, format));
  }

  private static int longest(Parameters parameters) {
    String text = parameters.text(LONGEST).orElse(String.valueOf(MOST_WORDS));
    int number = text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : 0;
    if (number < 1 || number > MOST_WORDS) {
      parameters
          .faults()
          .invalid(LONGEST, "longest must be a number from 1 to %d.".formatted(MOST_WORDS));
    }
    return number;
  }

  private Question.Body answer(Lexicon lexicon, SentenceFilter filter, Format format) {
    List<Sentence> found = filter.in(lexicon.sentences());
    byte[] bytes =
        switch (format) {
          case JSON -> json.bytes(SentenceListView.of(lexicon.edition(), filter, found));
          case NDJSON -> json.lines(found.stream().map(SentenceListView.Entry::of).toList());
          case CSV, TEXT ->
              String.join("", found.stream().map(each -> each.text() + "\n").toList())
                  .getBytes(UTF_8);
        };
    return new Question.Body(bytes, Optional.empty());
  }
}
