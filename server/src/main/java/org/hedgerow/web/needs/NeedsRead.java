package org.hedgerow.web.needs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Need;
import org.hedgerow.lexicon.Needs;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /needs}: what full material lacks, the greatest need first. */
public final class NeedsRead implements Read {

  private final Json json;

  public NeedsRead(Json json) {
    this.json = json;
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public List<Format> formats() {
    return List.of(Format.JSON, Format.CSV, Format.NDJSON, Format.TEXT);
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    List<String> accents = AccentParameter.tags(lexicon, parameters);
    return new Question(
        "needs?" + String.join(",", accents), format -> answer(lexicon, accents, format));
  }

  private Question.Body answer(Lexicon lexicon, List<String> accents, Format format) {
    List<Need> needs =
        accents.stream().flatMap(accent -> Needs.in(lexicon, accent).stream()).toList();
    byte[] bytes =
        switch (format) {
          case JSON -> json.bytes(NeedsView.of(lexicon, accents, needs));
          case NDJSON -> json.lines(needs.stream().map(NeedsView.Entry::of).toList());
          case CSV -> NeedsTable.of(needs).getBytes(UTF_8);
          case TEXT -> needs.stream().map(NeedsRead::line).collect(joining()).getBytes(UTF_8);
          default -> throw format.notOffered();
        };
    return new Question.Body(bytes, OptionalInt.of(needs.size()), Optional.empty());
  }

  /** As in {@code oa 1 (boat), en-US: lacks 12 words, 8 pictures, 3 sentences}. */
  private static String line(Need need) {
    return "%s (%s), %s: lacks %d words, %d pictures, %d sentences\n"
        .formatted(
            need.value().label(),
            need.value().keyWord(),
            need.accent(),
            need.lackingWords(),
            need.lackingPictures(),
            need.lackingSentences());
  }
}
