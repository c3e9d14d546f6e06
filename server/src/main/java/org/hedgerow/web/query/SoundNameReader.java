package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.UnknownSoundException;
import org.hedgerow.web.problems.ProblemType;

/** Reads sounds in IPA, ARPAbet or X-SAMPA. */
public final class SoundNameReader {

  private final AccentCatalogue accent;
  private final ValidationErrors errors;

  public SoundNameReader(AccentCatalogue accent, ValidationErrors errors) {
    this.accent = accent;
    this.errors = errors;
  }

  /** One sound; empty if the accent has none of this name. */
  public Optional<Sound> one(String parameter, String name) {
    List<Sound> sounds = all(parameter, name);
    if (sounds.size() > 1) {
      errors.invalid(parameter, "These are several sounds. Ask for one at a time.");
      return Optional.empty();
    }
    return sounds.stream().findFirst();
  }

  /** Sounds with spaces between; empty if the accent doesn't have them all. */
  public List<Sound> all(String parameter, String names) {
    try {
      return new SoundReader(accent.accent()).read(names);
    } catch (UnknownSoundException unknown) {
      errors.add(error(parameter, unknown));
      return List.of();
    }
  }

  private ValidationError error(String parameter, UnknownSoundException unknown) {
    String tag = accent.accent().tag();
    return ValidationError.unknown(
        ProblemType.UNKNOWN_SOUND,
        parameter,
        unknown.isRead()
            ? unknown.lackingIn(tag)
            : "%s has no sound %s.".formatted(tag, Quoted.of(unknown.symbol())),
        spelt(unknown.symbol()),
        "Its sounds are " + inventory(accent.accent()) + ".");
  }

  /** Somebody who asks for the sound {@code sh} means what these letters say. */
  private Optional<String> spelt(String symbol) {
    return accent.catalogue().values(symbol.toLowerCase(Locale.ROOT)).stream()
        .map(value -> value.soundsIn(accent.accent()))
        .flatMap(ways -> ways.stream().limit(1))
        .filter(sounds -> sounds.size() == 1)
        .map(Sound::joined)
        .findFirst();
  }

  private static String inventory(Accent accent) {
    return accent.inventory().stream().map(Sound::ipa).collect(joining(" "));
  }
}
