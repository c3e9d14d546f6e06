package org.hedgerow.review;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.reading.FindingCode;

/**
 * What reviewers overruled, and what it does to an entry: a finding that rests on a guess of the
 * machine's goes, and its reason stays on the entry as a tag. What letters and sounds say can't be
 * overruled: there the pronunciation or the alignment is to be corrected.
 *
 * @param reasons by the code of the finding
 */
record Overruled(Map<FindingCode, String> reasons) {

  /** The findings that may be overruled. */
  static boolean isPossible(FindingCode code) {
    return switch (code) {
      case SMALL_MARGIN, NAME, NOT_FOR_CHILDREN, INFLECTED -> true;
      case NO_TARGET,
          OTHER_VALUE,
          SECOND_PHONOGRAM,
          REPEATED_TARGET,
          SILENT_LETTER,
          IRREGULAR,
          REDUCED_VOWEL,
          FALSE_PAIR,
          SEVERAL_PRONUNCIATIONS,
          ACCENTS_DIFFER,
          UNKNOWN_WORD ->
          false;
    };
  }

  static Overruled of(List<Decision> decisions, int revision) {
    return new Overruled(
        decisions.stream()
            .filter(each -> each.kind() == DecisionKind.OVERRULE && each.revision() == revision)
            .flatMap(
                each ->
                    each.overruled().flatMap(FindingCode::labelled).stream()
                        .map(code -> Map.entry(code, each.comment())))
            .collect(toMap(Map.Entry::getKey, Map.Entry::getValue, (first, second) -> second)));
  }

  Change on(Change change) {
    return new Change(
        change.words().stream().map(this::on).toList(),
        change.withdrawnWords(),
        change.pictures(),
        change.sentences(),
        change.withdrawnSentences());
  }

  private Word on(Word word) {
    Word changed = word;
    for (Map.Entry<FindingCode, String> each : reasons.entrySet()) {
      changed =
          without(changed, each.getKey())
              .tagged(new Tag(Tag.OVERRULED + each.getKey().label(), "yes", each.getValue()));
    }
    return changed;
  }

  private static Word without(Word word, FindingCode code) {
    return switch (code) {
      case SMALL_MARGIN ->
          word.saying(word.pronunciations().stream().map(Overruled::certain).toList());
      case NAME -> word.without(Tag.NAME);
      case NOT_FOR_CHILDREN -> word.without(Tag.NOT_FOR_CHILDREN);
      case INFLECTED -> word.without(Tag.INFLECTED);
      case NO_TARGET,
          OTHER_VALUE,
          SECOND_PHONOGRAM,
          REPEATED_TARGET,
          SILENT_LETTER,
          IRREGULAR,
          REDUCED_VOWEL,
          FALSE_PAIR,
          SEVERAL_PRONUNCIATIONS,
          ACCENTS_DIFFER,
          UNKNOWN_WORD ->
          word;
    };
  }

  private static Pronunciation certain(Pronunciation pronunciation) {
    Optional<Alignment> alignment = pronunciation.alignment();
    return alignment.isEmpty()
        ? pronunciation
        : pronunciation.aligned(new Alignment(alignment.get().spans(), Double.POSITIVE_INFINITY));
  }
}
