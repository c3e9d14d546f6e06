package org.hedgerow.web.phonograms;

import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.SoundNameReader;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/** {@code GET /sounds/{sound}}: one sound with every spelling. */
final class SoundRead implements Read {

  private static final String SOUND = "sound";

  private final Json json;
  private final CachedSoundFamilies families;

  SoundRead(Json json, CachedSoundFamilies families) {
    this.json = json;
    this.families = families;
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    Accent accent = AccentParameter.one(lexicon, parameters);
    parameters.errors().throwIfAny();
    Sound sound = sound(lexicon, accent, path.getOrDefault(SOUND, ""));
    return Question.json(
        "sounds/%s?%s".formatted(sound, accent),
        json,
        () ->
            SoundFamilyView.of(
                lexicon.edition(), accent.tag(), families.of(lexicon, accent.tag(), sound)));
  }

  private static Sound sound(Lexicon lexicon, Accent accent, String name) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    return new SoundNameReader(lexicon.accent(accent.tag()).orElseThrow(), errors)
        .one(SOUND, name.strip())
        .orElseThrow(() -> missing(errors.list()));
  }

  /** There is nothing at the address of a sound that isn't. */
  private static ProblemException missing(List<ValidationError> errors) {
    return new Problem(
            ProblemType.UNKNOWN_SOUND,
            404,
            errors.get(0).message(),
            errors.stream().map(ValidationError::error).toList())
        .exception();
  }
}
