package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.UnknownSoundException;
import org.jspecify.annotations.Nullable;

/**
 * A proposed pronunciation of a word.
 *
 * @param accent its tag
 * @param sounds with spaces between, in the accent's IPA, in ARPAbet or in X-SAMPA
 * @param spans which letters spell which sounds; empty to leave it to the machine
 */
public record ProposedPronunciation(String accent, String sounds, List<LetterGroup> spans) {
  private static final int MAX_LENGTH = 400;

  public ProposedPronunciation {
    accent = Given.text(accent);
    sounds = Given.text(sounds);
    spans = Given.list(spans);
  }

  static ProposedPronunciation given(@Nullable ProposedPronunciation saying) {
    return saying == null ? new ProposedPronunciation("", "", List.of()) : saying;
  }

  /**
   * @param field by which an error names it
   */
  List<FieldError> errors(String field, String spelling, Lexicon lexicon) {
    Optional<AccentCatalogue> known = lexicon.accent(accent);
    if (known.isEmpty()) {
      return List.of(Accented.unknown(field + ".accent", accent, lexicon));
    }
    List<FieldError> errors = new ArrayList<>();
    List<Sound> said = sounds(field + ".sounds", known.get(), errors);
    if (errors.isEmpty() && !spans.isEmpty()) {
      errors.addAll(new HandAlignment(spelling, said, known.get()).errors(field + ".spans", spans));
    }
    return errors;
  }

  private List<Sound> sounds(String field, AccentCatalogue known, List<FieldError> errors) {
    if (sounds.isEmpty() || sounds.length() > MAX_LENGTH) {
      errors.add(
          new FieldError(
              field,
              sounds.isEmpty()
                  ? "Give the sounds, one after the other with spaces between."
                  : "At most %d characters.".formatted(MAX_LENGTH)));
      return List.of();
    }
    try {
      return said(known);
    } catch (UnknownSoundException unknown) {
      errors.add(new FieldError(field, unknown.lackingIn(known.accent().name())));
      return List.of();
    }
  }

  /** Accent and sounds, the same in whatever notation they were given. */
  String read(Lexicon lexicon) {
    return accent + "/" + Sound.spaced(said(lexicon.accent(accent).orElseThrow()));
  }

  private List<Sound> said(AccentCatalogue known) {
    return new SoundReader(known.accent()).read(sounds);
  }

  /** As the bank keeps it; to be asked only where there are no errors. */
  Pronunciation pronunciation(String spelling, Lexicon lexicon, String source) {
    AccentCatalogue known = lexicon.accent(accent).orElseThrow();
    List<Sound> said = said(known);
    if (spans.isEmpty()) {
      return Pronunciation.aligned(lexicon.aligner(accent), spelling, said, "", source, false);
    }
    return new Pronunciation(
        accent,
        said,
        "",
        source,
        false,
        Optional.of(new HandAlignment(spelling, said, known).of(spans)),
        "");
  }
}
