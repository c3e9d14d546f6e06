package org.hedgerow.review;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.Span;
import org.hedgerow.phonics.UnknownSoundException;

/**
 * Turns what a person says about letters and sounds into an alignment: every letter and every sound
 * in exactly one span, every span a correspondence of the catalogue. What a person has aligned has
 * no second best, and so an infinite margin.
 */
record HandAlignment(String spelling, List<Sound> said, AccentCatalogue catalogue) {

  List<FieldError> errors(String field, List<LetterGroup> pieces) {
    List<FieldError> errors = new ArrayList<>();
    if (!coversEveryLetterOnce(pieces)) {
      errors.add(new FieldError(field, "Each letter must belong to one group."));
      return errors;
    }
    for (LetterGroup piece : inOrder(pieces)) {
      if (realisation(piece).isEmpty()) {
        errors.add(new FieldError(field, noCorrespondence(piece)));
      }
    }
    if (errors.isEmpty() && !of(pieces).sounds().equals(said)) {
      errors.add(
          new FieldError(
              field,
              "The sounds of the pieces, in the order of the letters, must be /%s/."
                  .formatted(Sound.spaced(said))));
    }
    return errors;
  }

  Alignment of(List<LetterGroup> pieces) {
    return new Alignment(
        inOrder(pieces).stream()
            .map(piece -> new Span(piece.letters(), realisation(piece).orElseThrow()))
            .toList(),
        Double.POSITIVE_INFINITY);
  }

  private boolean coversEveryLetterOnce(List<LetterGroup> pieces) {
    BitSet covered = new BitSet();
    for (LetterGroup piece : pieces) {
      int last = -1;
      for (int letter : piece.letters()) {
        if (letter <= last || letter >= spelling.length() || covered.get(letter)) {
          return false;
        }
        covered.set(letter);
        last = letter;
      }
      if (piece.letters().isEmpty()) {
        return false;
      }
    }
    return covered.cardinality() == spelling.length();
  }

  private static List<LetterGroup> inOrder(List<LetterGroup> pieces) {
    return pieces.stream()
        .sorted(Comparator.comparingInt((LetterGroup piece) -> piece.letters().get(0)))
        .toList();
  }

  private Optional<Realisation> realisation(LetterGroup piece) {
    try {
      List<Sound> sounds =
          piece.sound().isEmpty()
              ? List.of()
              : new SoundReader(catalogue.accent()).read(piece.sound());
      return grapheme(piece).flatMap(grapheme -> catalogue.find(grapheme, sounds));
    } catch (UnknownSoundException unknown) {
      return Optional.empty();
    }
  }

  /** Letters side by side, or a vowel letter and an e with something between. */
  private Optional<Grapheme> grapheme(LetterGroup piece) {
    int first = piece.letters().get(0);
    int count = piece.letters().size();
    int last = piece.letters().get(count - 1);
    if (last - first == count - 1) {
      return Optional.of(new Grapheme(spelling.substring(first, last + 1)));
    }
    return count == 2
            && spelling.charAt(last) == 'e'
            && "aeiouy".indexOf(spelling.charAt(first)) >= 0
        ? Optional.of(new Grapheme(spelling.charAt(first) + "-e"))
        : Optional.empty();
  }

  private String noCorrespondence(LetterGroup piece) {
    StringBuilder letters = new StringBuilder();
    piece.letters().forEach(letter -> letters.append(spelling.charAt(letter)));
    return piece.sound().isEmpty()
        ? "The catalogue doesn’t know “%s” as silent in %s."
            .formatted(letters, catalogue.accent().name())
        : "The catalogue doesn’t know “%s” for /%s/ in %s."
            .formatted(letters, piece.sound(), catalogue.accent().name());
  }
}
