package org.hedgerow.reading;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Pronunciation;

/**
 * Judges words: what the rules find in every pronunciation of every accent asked for, and the
 * verdict that follows.
 *
 * <p>A word passes only if it passes in each accent, and in an accent only if it passes in each of
 * its pronunciations there; where only some pass, a person must look.
 */
public final class WordChecker {

  private final FalsePairs falsePairs;

  public WordChecker(Catalogue catalogue) {
    this.falsePairs = new FalsePairs(catalogue);
  }

  /**
   * @param accents tags of the accents in which the word must pass; at least one
   */
  public Check check(CheckedWord subject, Standard standard, List<String> accents) {
    List<Finding> findings = new ArrayList<>(aboutTheWord(subject, standard));
    Verdict verdict = worst(findings);
    List<Judgement> judgements = new ArrayList<>();
    for (String accent : accents) {
      Judgement judgement = judge(subject, accent, standard);
      judgements.add(judgement);
      findings.addAll(judgement.findings());
      verdict = verdict.and(judgement.verdict());
    }
    AccentsDiffer.among(judgements, subject).ifPresent(findings::add);
    return new Check(
        subject.spelling(), verdict, List.copyOf(new LinkedHashSet<>(findings)), !subject.known());
  }

  private static List<Finding> aboutTheWord(CheckedWord subject, Standard standard) {
    List<Finding> findings = new ArrayList<>();
    if (!subject.known()) {
      findings.add(Finding.ofWord(FindingCode.UNKNOWN_WORD, unknown(subject)));
    }
    if (!subject.name().isEmpty()) {
      findings.add(Finding.ofWord(FindingCode.NAME, "this is known only as a name"));
    }
    if (!subject.unfit().isEmpty()) {
      String message = "not a word for small children (" + subject.unfit() + ")";
      findings.add(Finding.ofWord(FindingCode.NOT_FOR_CHILDREN, message));
    }
    if (!standard.rules().allow(Switch.INFLECTED_FORMS)) {
      subject.inflection().map(WordChecker::inflected).ifPresent(findings::add);
    }
    return findings;
  }

  private static String unknown(CheckedWord subject) {
    return subject.pronunciations().isEmpty()
        ? "the bank does not hold this word, and its sounds cannot be guessed"
        : "the bank does not hold this word; its sounds are a guess from its letters";
  }

  private static Finding inflected(Inflection inflection) {
    String message =
        "a form of %s (%s); lists leave such forms out, sentences may use them"
            .formatted(inflection.base(), inflection.kind());
    return Finding.ofWord(FindingCode.INFLECTED, message);
  }

  private Judgement judge(CheckedWord subject, String accent, Standard standard) {
    List<Pronunciation> said = subject.saidIn(accent);
    if (said.isEmpty()) {
      return unsaid(subject, accent);
    }
    List<Finding> findings = new ArrayList<>();
    Set<Verdict> verdicts = new LinkedHashSet<>();
    for (Pronunciation pronunciation : said) {
      List<Finding> found = find(subject, accent, pronunciation, standard);
      verdicts.add(worst(found));
      findings.addAll(found);
    }
    if (verdicts.contains(Verdict.PASS) && verdicts.size() > 1) {
      findings.add(0, several(said, accent));
      return new Judgement(accent, Verdict.LOOK, findings);
    }
    return new Judgement(accent, verdicts.stream().reduce(Verdict.PASS, Verdict::and), findings);
  }

  private static Judgement unsaid(CheckedWord subject, String accent) {
    if (!subject.known()) {
      return new Judgement(accent, Verdict.LOOK, List.of());
    }
    String message = "the bank does not hold a pronunciation of this word in this accent";
    Finding finding = new Finding(FindingCode.UNKNOWN_WORD, accent, List.of(), message);
    return new Judgement(accent, Verdict.LOOK, List.of(finding));
  }

  private static Finding several(List<Pronunciation> said, String accent) {
    String ways =
        said.stream()
            .map(each -> "/" + org.hedgerow.phonics.Sound.spaced(each.sounds()) + "/")
            .distinct()
            .collect(joining(", "));
    String message = "said in several ways, and not all of them fit: " + ways;
    return new Finding(FindingCode.SEVERAL_PRONUNCIATIONS, accent, List.of(), message);
  }

  private List<Finding> find(
      CheckedWord subject, String accent, Pronunciation pronunciation, Standard standard) {
    if (pronunciation.alignment().isEmpty()) {
      return List.of(unexplained(accent, pronunciation));
    }
    Alignment alignment = pronunciation.alignment().get();
    Passage passage =
        new Passage(
            subject, accent, pronunciation.accent(), alignment, falsePairs.in(alignment), standard);
    return SpanRules.ALL.stream().flatMap(rule -> rule.find(passage).stream()).toList();
  }

  private static Finding unexplained(String accent, Pronunciation pronunciation) {
    return new Finding(FindingCode.IRREGULAR, accent, List.of(), pronunciation.obstacle());
  }

  private static Verdict worst(List<Finding> findings) {
    return findings.stream()
        .map(finding -> finding.code().verdict())
        .reduce(Verdict.PASS, Verdict::and);
  }
}
