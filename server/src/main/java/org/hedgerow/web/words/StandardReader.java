package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.RulesReader;
import org.hedgerow.web.query.SoundNameReader;
import org.hedgerow.web.query.TaughtReader;

/** Reads what the words of a list must meet, in which accents. */
final class StandardReader {

  private final Lexicon lexicon;
  private final Parameters parameters;
  private final Resolved resolved;

  StandardReader(Lexicon lexicon, Parameters parameters, Resolved resolved) {
    this.lexicon = lexicon;
    this.parameters = parameters;
    this.resolved = resolved;
  }

  Standard standard(
      Optional<Correspondence> phonogram, Optional<Sound> sound, List<AccentCatalogue> accents) {
    return new Standard(rules(), targets(phonogram, sound, accents), taught(accents));
  }

  Optional<Correspondence> phonogram() {
    Optional<Correspondence> found =
        new PhonogramReader(lexicon.catalogue(), parameters.faults())
            .target(
                parameters.text(ParameterNames.PHONOGRAM), parameters.text(ParameterNames.VALUE));
    resolved.note(ParameterNames.PHONOGRAM, found, each -> each.grapheme().text());
    return resolved.note(
        ParameterNames.VALUE, found, each -> String.valueOf(each.value().orElseThrow()));
  }

  List<AccentCatalogue> accents() {
    List<AccentCatalogue> accents =
        new AccentReader(lexicon, parameters.faults())
            .list(ParameterNames.ACCENT, parameters.text(ParameterNames.ACCENT));
    String tags = accents.stream().map(each -> each.accent().tag()).collect(joining(","));
    resolved.note(ParameterNames.ACCENT, tags);
    return accents;
  }

  /** The tag of an accent other than those in which the words must pass. */
  Optional<String> differsIn(List<AccentCatalogue> accents) {
    Optional<String> tag = parameters.text(ParameterNames.DIFFERS_IN);
    if (tag.isPresent() && accents.stream().anyMatch(each -> isTag(tag.get(), each))) {
      differsFromItself();
      return Optional.empty();
    }
    Optional<AccentCatalogue> other =
        tag.map(
            text ->
                new AccentReader(lexicon, parameters.faults()).one(ParameterNames.DIFFERS_IN, tag));
    return resolved.note(
        ParameterNames.DIFFERS_IN, other.map(each -> each.accent().tag()), text -> text);
  }

  private static boolean isTag(String text, AccentCatalogue accent) {
    return accent.accent().tag().equalsIgnoreCase(text);
  }

  private void differsFromItself() {
    parameters
        .faults()
        .invalid(
            ParameterNames.DIFFERS_IN,
            "differs-in must be another accent than those in which the words must pass."
                + " Name another, or leave it out.");
  }

  /** A sound that each of the accents must have. */
  Optional<Sound> sound(List<AccentCatalogue> accents) {
    Optional<String> name = parameters.text(ParameterNames.SOUND);
    Optional<Sound> sound = Optional.empty();
    for (AccentCatalogue accent : accents) {
      sound =
          name.flatMap(
              text ->
                  new SoundNameReader(accent, parameters.faults()).one(ParameterNames.SOUND, text));
    }
    return resolved.note(ParameterNames.SOUND, sound, Sound::ipa);
  }

  /** Without a phonogram, a list for a sound is one for all of its spellings. */
  private static Set<Correspondence> targets(
      Optional<Correspondence> phonogram, Optional<Sound> sound, List<AccentCatalogue> accents) {
    if (phonogram.isPresent() || sound.isEmpty()) {
      return phonogram.map(Set::of).orElse(Set.of());
    }
    List<Sound> alone = List.of(sound.get());
    return accents.stream()
        .flatMap(accent -> accent.realisations().stream())
        .filter(realisation -> realisation.sounds().equals(alone))
        .map(Realisation::correspondence)
        .collect(toUnmodifiableSet());
  }

  private ReadingRules rules() {
    ReadingRules rules =
        new RulesReader(lexicon.plans().rules(), parameters.faults())
            .read(ParameterNames.RULES, parameters.text(ParameterNames.RULES));
    resolved.note(ParameterNames.RULES, rules.label());
    return rules;
  }

  /** A step of a sequence is what it is in the accent that is named first. */
  private Set<Correspondence> taught(List<AccentCatalogue> accents) {
    TaughtReader reader =
        new TaughtReader(lexicon, accents.get(0).accent().tag(), parameters.faults());
    Set<Correspondence> taught =
        reader.read(ParameterNames.TAUGHT, parameters.text(ParameterNames.TAUGHT));
    resolved.note(ParameterNames.TAUGHT, String.join(",", reader.labels(taught)));
    return taught;
  }
}
