package org.hedgerow.reading;

import static java.util.stream.Collectors.joining;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/** A word that fits in some accents and not in others, and which letters make the difference. */
final class AccentsDiffer {
  private final CheckedWord subject;
  private final Judgement passing;

  private AccentsDiffer(CheckedWord subject, Judgement passing) {
    this.subject = subject;
    this.passing = passing;
  }

  /** The finding, if the word passes in some but not all accents. */
  static Optional<Finding> among(List<Judgement> judgements, CheckedWord subject) {
    List<Judgement> others = judgements.stream().filter(each -> !each.passes()).toList();
    return judgements.stream()
        .filter(Judgement::passes)
        .findFirst()
        .filter(passing -> !others.isEmpty())
        .map(passing -> new AccentsDiffer(subject, passing).finding(others));
  }

  private Finding finding(List<Judgement> others) {
    List<Integer> letters =
        others.stream()
            .flatMap(other -> differing(other).stream())
            .flatMap(span -> span.letters().stream())
            .distinct()
            .sorted()
            .toList();
    String message = others.stream().map(this::how).collect(joining("; "));
    return new Finding(FindingCode.ACCENTS_DIFFER, "", letters, message);
  }

  private String how(Judgement other) {
    List<Span> there = differing(other);
    List<Span> here =
        spans(passing.accent()).stream().filter(span -> overlaps(span, there)).toList();
    if (there.isEmpty()) {
      return "this word fits in %s but not in %s".formatted(name(passing), name(other));
    }
    if (here.size() == 1 && there.size() == 1 && sameLetters(here.get(0), there.get(0))) {
      return "%s %s in %s and %s in %s"
          .formatted(
              there.get(0).grapheme(),
              says(here.get(0)),
              name(passing),
              says(there.get(0)).replaceFirst("^says (?=/)", ""),
              name(other));
    }
    return "in %s %s; in %s %s".formatted(name(passing), list(here), name(other), list(there));
  }

  /** The spans that the passing accent has not, and of them those that a finding is about. */
  private List<Span> differing(Judgement other) {
    List<Span> here = spans(passing.accent());
    List<Span> there =
        spans(other.accent()).stream()
            .filter(span -> here.stream().noneMatch(each -> isSame(each, span)))
            .toList();
    Set<Integer> found = new HashSet<>();
    other.findings().forEach(finding -> found.addAll(finding.letters()));
    List<Span> blamed =
        there.stream().filter(span -> span.letters().stream().anyMatch(found::contains)).toList();
    return blamed.isEmpty() ? there : blamed;
  }

  private List<Span> spans(String accent) {
    return subject.saidIn(accent).stream()
        .map(Pronunciation::alignment)
        .flatMap(Optional::stream)
        .findFirst()
        .map(Alignment::spans)
        .orElse(List.of());
  }

  private static boolean isSame(Span one, Span other) {
    return sameLetters(one, other) && one.correspondence().equals(other.correspondence());
  }

  private static boolean sameLetters(Span one, Span other) {
    return one.letters().equals(other.letters());
  }

  private static boolean overlaps(Span span, List<Span> others) {
    return others.stream()
        .anyMatch(other -> span.letters().stream().anyMatch(other.letters()::contains));
  }

  private String name(Judgement judgement) {
    return subject.accents().name(judgement.accent());
  }

  private static String list(List<Span> spans) {
    return spans.stream().map(span -> span.grapheme() + " " + says(span)).collect(joining(", "));
  }

  private static String says(Span span) {
    if (span.realisation().isSilent()) {
      return "is silent";
    }
    if (span.correspondence().kind() == CorrespondenceClass.BASIC) {
      return "says its basic sound";
    }
    String sounds = "says /" + Sound.joined(span.sounds()) + "/";
    return span.correspondence().isTaught()
        ? "%s (%s)".formatted(sounds, span.correspondence().label())
        : sounds;
  }
}
