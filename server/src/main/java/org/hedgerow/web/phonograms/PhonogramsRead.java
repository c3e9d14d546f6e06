package org.hedgerow.web.phonograms;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.ValueCounts;

/** {@code GET /phonograms}: all phonograms, with how many words each value has. */
final class PhonogramsRead implements Read {

  private final Json json;
  private final ValueCounts counts;

  PhonogramsRead(Json json, ValueCounts counts) {
    this.json = json;
    this.counts = counts;
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public List<Format> formats() {
    return List.of(Format.JSON, Format.CSV);
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    Accent accent = AccentParameter.one(lexicon, parameters);
    return new Question("phonograms?" + accent.tag(), format -> answer(lexicon, accent, format));
  }

  private Question.Body answer(Lexicon lexicon, Accent accent, Format format) {
    PhonogramsView view = PhonogramsView.of(lexicon, accent, counts.in(lexicon, accent.tag()));
    return Question.Body.whole(
        format == Format.CSV ? PhonogramTable.of(view).getBytes(UTF_8) : json.bytes(view));
  }
}
