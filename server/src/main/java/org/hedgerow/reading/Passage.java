package org.hedgerow.reading;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.function.Predicate;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/**
 * An aligned pronunciation of a word, beside the standard that it is measured by.
 *
 * @param accent the accent that was asked for
 * @param spoken the accent of the pronunciation, which may be the other's parent
 */
record Passage(
    Subject subject,
    String accent,
    String spoken,
    Alignment alignment,
    List<FalsePairs.Pair> falsePairs,
    Standard standard) {

  Passage {
    falsePairs = List.copyOf(falsePairs);
  }

  List<Span> spans() {
    return alignment.spans();
  }

  List<Span> targets() {
    return spans().stream().filter(span -> standard.isTarget(span.correspondence())).toList();
  }

  /** The spans that a child cannot read, the target aside. */
  List<Span> blocked() {
    return spans().stream().filter(Predicate.not(this::isReadable)).toList();
  }

  private boolean isReadable(Span span) {
    boolean inEnding = subject.endsInAddedS() && Standard.isFinalS(subject.spelling(), span);
    return standard.isTarget(span.correspondence())
        || standard.allows(span.realisation(), inEnding);
  }

  boolean hasTargetGrapheme(Span span) {
    return standard.targets().stream().anyMatch(each -> each.grapheme().equals(span.grapheme()));
  }

  Finding finding(FindingCode code, List<Integer> letters, String message) {
    return new Finding(code, accent, letters, message);
  }

  /**
   * The target as a teacher calls it: {@code oo /u/}, or {@code oo 2} where the accent has it not.
   */
  String targetName() {
    return standard.targets().stream().map(this::name).sorted().collect(joining(" or "));
  }

  private String name(Correspondence target) {
    return target.sounds().getOrDefault(spoken, List.of()).stream()
        .findFirst()
        .map(sounds -> target.grapheme() + " /" + Sound.joined(sounds) + "/")
        .orElse(target.label());
  }

  static String said(Span span) {
    return "/" + Sound.joined(span.sounds()) + "/";
  }
}
