package org.hedgerow.reading;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/** An aligned pronunciation of a word, beside the standard that it is measured by. */
final class Passage {
  private final CheckedWord subject;
  private final String accent;
  private final String spoken;
  private final Alignment alignment;
  private final List<FalsePairs.Pair> falsePairs;
  private final Standard standard;
  private final List<Span> targets;
  private final List<Span> blocked;

  /**
   * @param accent the accent that was asked for
   * @param spoken the accent of the pronunciation, which may be the other's parent
   */
  Passage(
      CheckedWord subject,
      String accent,
      String spoken,
      Alignment alignment,
      List<FalsePairs.Pair> falsePairs,
      Standard standard) {
    this.subject = subject;
    this.accent = accent;
    this.spoken = spoken;
    this.alignment = alignment;
    this.falsePairs = List.copyOf(falsePairs);
    this.standard = standard;
    List<Span> wanted = new ArrayList<>();
    List<Span> unreadable = new ArrayList<>();
    for (Span span : alignment.spans()) {
      if (standard.isTarget(span.correspondence())) {
        wanted.add(span);
      } else if (!isReadable(span)) {
        unreadable.add(span);
      }
    }
    this.targets = List.copyOf(wanted);
    this.blocked = List.copyOf(unreadable);
  }

  Standard standard() {
    return standard;
  }

  Alignment alignment() {
    return alignment;
  }

  List<FalsePairs.Pair> falsePairs() {
    return falsePairs;
  }

  List<Span> spans() {
    return alignment.spans();
  }

  List<Span> targets() {
    return targets;
  }

  /** The spans that a child cannot read, the target aside. */
  List<Span> blocked() {
    return blocked;
  }

  private boolean isReadable(Span span) {
    boolean inEnding = subject.endsInAddedS() && Standard.isFinalS(subject.spelling(), span);
    return standard.allows(span.realisation(), inEnding);
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
