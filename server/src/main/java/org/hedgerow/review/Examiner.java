package org.hedgerow.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.sentences.SentenceCheck;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;

/**
 * Judges what a proposal would make of a word: whether it may stand in the list that it is wanted
 * for, in each accent in which it is said, and which lists would have it.
 */
final class Examiner {
  private final Lexicon lexicon;
  private final WordChecker checker;
  private final Accents accents;

  Examiner(Lexicon lexicon) {
    this.lexicon = lexicon;
    this.checker = new WordChecker(lexicon.catalogue());
    this.accents = new Accents(lexicon.accents().stream().map(AccentCatalogue::accent).toList());
  }

  /**
   * @param content without errors on the snapshot
   */
  Examination examine(Content content, BankSnapshot snapshot) {
    Change change = content.proposal().change(snapshot, "");
    List<ContributionFinding> remarks = new ArrayList<>();
    Set<String> serves = new TreeSet<>();
    Optional<Correspondence> target = content.target(lexicon);
    for (Word word : change.words()) {
      CheckedWord subject = word.among(accents).subject();
      List<String> said = saidIn(subject);
      Standard standard = target.map(Standard::of).orElse(anything(word));
      Check check = checker.check(subject, standard, said);
      check.findings().forEach(finding -> remarks.add(ContributionFinding.of(finding)));
      serves.addAll(serves(subject, said));
    }
    change.sentences().forEach(sentence -> serves.add(sentence.value().label()));
    change.sentences().forEach(sentence -> remarks.addAll(remarks(sentence)));
    target.ifPresent(value -> serves.add(value.label()));
    return new Examination(List.copyOf(serves), remarks);
  }

  /** By the usual rules and with the usual sight words. */
  private List<ContributionFinding> remarks(Sentence sentence) {
    SentenceStandard standard =
        new SentenceStandard(
            Standard.of(sentence.value()),
            sentence.accents(),
            lexicon.plans().sightWords().usualWords(),
            SentenceStandard.DEFAULT_TARGETS,
            SentenceStandard.DEFAULT_WORDS);
    SentenceCheck check = new SentenceChecker(lexicon, standard).check(sentence.text());
    List<ContributionFinding> remarks =
        new ArrayList<>(check.findings().stream().map(ContributionFinding::of).toList());
    check.tokens().stream()
        .flatMap(token -> token.word().stream())
        .filter(word -> word.verdict() != Verdict.PASS)
        .forEach(
            word ->
                word.findings().forEach(each -> remarks.add(ContributionFinding.of(word, each))));
    return remarks;
  }

  /** The accents of the bank in which the word is said, an accent like its parent's left out. */
  private List<String> saidIn(CheckedWord subject) {
    return lexicon.accents().stream()
        .map(AccentCatalogue::accent)
        .map(Accent::tag)
        .filter(
            tag -> subject.pronunciations().stream().anyMatch(each -> each.accent().equals(tag)))
        .toList();
  }

  /** For a word that nobody wants for something, whatever phonogram it holds is no error. */
  private static Standard anything(Word word) {
    Set<Correspondence> held = new HashSet<>();
    word.pronunciations().stream()
        .flatMap(each -> each.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .map(Span::correspondence)
        .filter(Correspondence::isTaught)
        .forEach(held::add);
    return new Standard(ReadingRules.DEFAULT, Set.of(), held);
  }

  private Set<String> serves(CheckedWord subject, List<String> said) {
    Set<String> serves = new TreeSet<>();
    for (Correspondence value : held(subject)) {
      for (String accent : said) {
        Check check = checker.check(subject, Standard.of(value), List.of(accent));
        if (check.verdict() == Verdict.PASS) {
          serves.add(value.label());
        }
      }
    }
    return serves;
  }

  private static List<Correspondence> held(CheckedWord subject) {
    return subject.pronunciations().stream()
        .flatMap(each -> each.alignment().stream().map(Alignment::spans))
        .flatMap(List::stream)
        .map(Span::correspondence)
        .filter(Correspondence::isTaught)
        .distinct()
        .toList();
  }
}
