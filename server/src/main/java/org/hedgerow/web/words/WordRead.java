package org.hedgerow.web.words;

import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.SpellingReader;

/** {@code GET /words/{spelling}}: everything known of one word. */
final class WordRead implements Read {

  private static final String SPELLING = "spelling";

  private final Json json;
  private final EditionLog log;

  WordRead(Json json, EditionLog log) {
    this.json = json;
    this.log = log;
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    List<String> accents = AccentParameter.tags(lexicon, parameters);
    String spelling =
        new SpellingReader(parameters.errors())
            .read(SPELLING, path.getOrDefault(SPELLING, ""))
            .orElse("");
    parameters.errors().throwIfAny();
    Word word = lexicon.word(spelling).orElseThrow(() -> missing(spelling, lexicon));
    return Question.json(
        "words/%s?%s".formatted(spelling, String.join(",", accents)),
        json,
        () -> view(lexicon, word, accents));
  }

  private WordEntryView view(Lexicon lexicon, Word word, List<String> accents) {
    Check check =
        new WordChecker(lexicon.catalogue()).check(word.subject(), Standard.basic(), accents);
    return WordEntryView.of(lexicon, word, accents, history(lexicon, word), check);
  }

  /** A word of the first edition that nobody changed has none; nothing need be read for it. */
  private List<PublishedEdition> history(Lexicon lexicon, Word word) {
    return word.since() == lexicon.firstEdition()
        ? List.of()
        : log.ofWord(word.spelling(), lexicon.edition());
  }

  private static ProblemException missing(String spelling, Lexicon lexicon) {
    List<String> nearby = lexicon.nearby(spelling);
    String near = nearby.isEmpty() ? "" : " Near it are %s.".formatted(String.join(", ", nearby));
    return Problem.at(
            ProblemType.UNKNOWN_WORD,
            SPELLING,
            "The bank doesn't hold %s.%s To learn whether it may be used all the same, send it to"
                    .formatted(Quoted.of(spelling), near)
                + " /api/v1/word-checks or /api/v1/alignments.")
        .exception();
  }
}
