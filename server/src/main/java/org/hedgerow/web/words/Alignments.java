package org.hedgerow.web.words;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.SoundNameReader;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.view.Margins;
import org.hedgerow.web.view.SpanView;
import org.jspecify.annotations.Nullable;

/** {@code POST /alignments}: which letters spell which sounds? */
final class Alignments {

  private static final int MAX_CHARACTERS = 400;
  private static final String SOUNDS = "sounds";
  private static final String GIVEN = "request";

  private Alignments() {}

  /**
   * The answer.
   *
   * @param guessed whether the sounds are a guess
   * @param margin null where there is no other way
   * @param obstacle left out if there is none
   */
  record View(
      int edition,
      String spelling,
      String accent,
      String sounds,
      boolean guessed,
      boolean aligned,
      List<SpanView> spans,
      @JsonInclude(JsonInclude.Include.ALWAYS) @Nullable Double margin,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String obstacle) {

    static View of(int edition, String spelling, Pronunciation said, boolean guessed) {
      return new View(
          edition,
          spelling,
          said.accent(),
          Sound.spaced(said.sounds()),
          guessed,
          said.alignment().isPresent(),
          said.alignment().map(each -> SpanView.of(each, x -> false)).orElse(List.of()),
          said.alignment().map(Margins::shown).orElse(null),
          said.obstacle());
    }
  }

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  static View answer(Lexicon lexicon, AlignmentBody body, ValidationErrors errors) {
    String spelling =
        new SpellingReader(errors)
            .read("spelling", Optional.ofNullable(body.spelling()).orElse(""))
            .orElse("");
    AccentCatalogue accent =
        new AccentReader(lexicon, errors).one("accent", Optional.ofNullable(body.accent()));
    Optional<List<Sound>> sounds =
        Optional.ofNullable(body.sounds()).map(text -> sounds(text, accent, errors));
    errors.throwIfAny();
    Aligner aligner = lexicon.aligner(accent.accent().tag());
    return sounds
        .map(given -> Pronunciation.aligned(aligner, spelling, given, "", GIVEN, false))
        .map(said -> View.of(lexicon.edition(), spelling, said, false))
        .orElseGet(() -> unsaid(lexicon, spelling, accent.accent().tag(), errors));
  }

  private static List<Sound> sounds(String text, AccentCatalogue accent, ValidationErrors errors) {
    if (text.isBlank()) {
      errors.invalid(SOUNDS, "sounds is empty. Give the sounds, or leave it out.");
      return List.of();
    }
    if (text.length() > MAX_CHARACTERS) {
      errors.invalid(
          SOUNDS, "sounds is too long: %d characters at most.".formatted(MAX_CHARACTERS));
      return List.of();
    }
    return new SoundNameReader(accent, errors).all(SOUNDS, text);
  }

  private static View unsaid(
      Lexicon lexicon, String spelling, String accent, ValidationErrors errors) {
    CheckedWord subject = lexicon.subject(spelling);
    List<Pronunciation> said = subject.saidIn(accent);
    if (said.isEmpty()) {
      errors.invalid(
          SOUNDS,
          "How %s is said can't be guessed from its letters. Give its sounds."
              .formatted(Quoted.of(spelling)));
      errors.throwIfAny();
    }
    return View.of(lexicon.edition(), spelling, said.get(0), !subject.known());
  }
}
