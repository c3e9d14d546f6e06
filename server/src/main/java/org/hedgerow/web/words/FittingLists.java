package org.hedgerow.web.words;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ListAddress;

/** Finds the lists that a word fits: those of its own phonograms, or that of its shape. */
final class FittingLists {

  private final WordChecker checker;
  private final String accent;
  private final List<String> accents;
  private final String parameter;

  FittingLists(Lexicon lexicon, List<String> accents) {
    this.checker = new WordChecker(lexicon.catalogue());
    this.accent = accents.get(0);
    this.accents = accents;
    this.parameter = ChosenAccents.of(lexicon, accents).parameter();
  }

  List<FittingList> of(CheckedWord subject) {
    if (!subject.known()) {
      return List.of();
    }
    return Stream.concat(forPhonograms(subject), forShape(subject)).toList();
  }

  private Stream<FittingList> forPhonograms(CheckedWord subject) {
    return alignments(subject)
        .flatMap(alignment -> alignment.spans().stream())
        .map(span -> span.correspondence())
        .filter(Correspondence::isTaught)
        .distinct()
        .filter(value -> passes(subject, Standard.of(value)))
        .map(this::fit);
  }

  private FittingList fit(Correspondence value) {
    String name = "%s as in %s".formatted(value.grapheme(), value.keyWord());
    return new FittingList(name, ListAddress.of(value, parameter));
  }

  private Stream<FittingList> forShape(CheckedWord subject) {
    return alignments(subject)
        .map(Shape::of)
        .filter(shape -> shape.matches(Shape.FORM))
        .distinct()
        .filter(shape -> passes(subject, Standard.basic()))
        .map(
            shape ->
                new FittingList(
                    shape + " words without a phonogram", ListAddress.ofShape(shape, parameter)));
  }

  private Stream<Alignment> alignments(CheckedWord subject) {
    return subject.saidIn(accent).stream()
        .map(Pronunciation::alignment)
        .flatMap(alignment -> alignment.stream());
  }

  private boolean passes(CheckedWord subject, Standard standard) {
    return checker.check(subject, standard, accents).verdict() == Verdict.PASS;
  }
}
