package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/**
 * What a word is measured by: the reading rules, the correspondence it is wanted for, and the
 * values that the child has been taught.
 *
 * @param targets of which the word must hold exactly one: a single phonogram value, or all
 *     spellings of one sound; empty where words without any phonogram are wanted
 */
public record Standard(
    ReadingRules rules, Set<Correspondence> targets, Set<Correspondence> taught) {

  private static final String REDUCIBLE = "ae";

  public Standard {
    requireNonNull(rules);
    targets = Set.copyOf(targets);
    taught = Set.copyOf(taught);
  }

  /** Words with nothing but basic sounds, by the default rules. */
  public static Standard basic() {
    return new Standard(ReadingRules.DEFAULT, Set.of(), Set.of());
  }

  /** Words for one phonogram value, by the default rules. */
  public static Standard of(Correspondence target) {
    return new Standard(ReadingRules.DEFAULT, Set.of(target), Set.of());
  }

  public boolean isTarget(Correspondence correspondence) {
    return targets.contains(correspondence);
  }

  /**
   * Whether a child can read the span, the target aside.
   *
   * @param inEnding whether the span is an s that was added to the word as an ending
   */
  public boolean allows(Realisation realisation, boolean inEnding) {
    Correspondence correspondence = realisation.correspondence();
    if (taught.contains(correspondence)) {
      return true;
    }
    return switch (correspondence.kind()) {
      case BASIC -> rules.allow(Switch.X) || !isX(correspondence);
      case DOUBLED -> rules.allow(isCk(correspondence) ? Switch.CK : Switch.DOUBLED);
      case PHONOGRAM -> allowsPhonogram(realisation, inEnding);
      case IRREGULAR -> rules.allow(Switch.REDUCED_VOWELS) && isReducedVowel(realisation);
      case SILENT, ENDING -> false;
    };
  }

  private boolean allowsPhonogram(Realisation realisation, boolean inEnding) {
    return switch (realisation.grapheme().text()) {
      case "tch" -> rules.allow(Switch.TCH_AS_CH) && readsCh();
      case "s" -> rules.allow(Switch.S_AS_Z) && inEnding && says(realisation, "z");
      case "n" -> rules.allow(Switch.N_BEFORE_K) && says(realisation, "ŋ");
      default -> false;
    };
  }

  private static boolean says(Realisation realisation, String ipa) {
    List<Sound> sounds = realisation.sounds();
    return sounds.size() == 1 && sounds.get(0).ipa().equals(ipa);
  }

  private boolean readsCh() {
    return targets.stream().anyMatch(Standard::isCh) || taught.stream().anyMatch(Standard::isCh);
  }

  /** Whether a vowel letter says the weak sound of an unstressed syllable. */
  public static boolean isReducedVowel(Realisation realisation) {
    List<Sound> sounds = realisation.sounds();
    if (realisation.correspondence().kind() != CorrespondenceClass.IRREGULAR || sounds.isEmpty()) {
      return false;
    }
    Sound last = sounds.get(sounds.size() - 1);
    return last.isSchwa()
        || (last.ipa().equals("ɪ") && REDUCIBLE.contains(realisation.grapheme().text()));
  }

  /** Whether the span is the final s of a word. */
  public static boolean isFinalS(String spelling, Span span) {
    return span.grapheme().text().equals("s") && span.firstLetter() == spelling.length() - 1;
  }

  private static boolean isX(Correspondence correspondence) {
    return correspondence.grapheme().text().equals("x");
  }

  private static boolean isCk(Correspondence correspondence) {
    return correspondence.grapheme().text().equals("ck");
  }

  private static boolean isCh(Correspondence correspondence) {
    return correspondence.grapheme().text().equals("ch")
        && correspondence.value().isPresent()
        && correspondence.value().getAsInt() == 1;
  }
}
