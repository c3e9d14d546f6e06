package org.hedgerow.web.editions;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.lexicon.Changed;
import org.hedgerow.lexicon.MaterialChanges;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.reading.RuleSet;
import org.hedgerow.reading.Sequence;
import org.hedgerow.reading.SightWords;
import org.hedgerow.review.RulesDraft;
import org.hedgerow.review.SequenceDraft;
import org.hedgerow.web.people.PeopleBodies;
import org.hedgerow.web.pictures.PictureView;

/**
 * What an edition changed beside words: rules, sequences and sight words as they are sent to be
 * changed.
 */
public record MaterialView(
    List<Change<PeopleBodies.RulesEdit>> rules,
    List<Change<PeopleBodies.SequenceEdit>> sequences,
    List<Change<PeopleBodies.SightWordsEdit>> sightWords,
    List<Change<SentenceView>> sentences,
    List<PictureView> pictures) {

  /**
   * @param name of a sentence its text
   * @param before left out if it is new
   * @param after left out if it is withdrawn
   */
  record Change<T>(
      String name,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<T> before,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<T> after) {}

  /** For which value a sentence is, and in which accents it is right. */
  record SentenceView(String phonogram, int value, List<String> accent) {
    /** The older name, for those who read it. */
    @JsonProperty
    List<String> accents() {
      return accent;
    }

    static SentenceView of(Sentence sentence) {
      return new SentenceView(
          sentence.value().grapheme().text(),
          sentence.value().value().orElseThrow(),
          sentence.accents());
    }
  }

  static MaterialView of(MaterialChanges changes) {
    return new MaterialView(
        all(changes.rules(), MaterialView::rules),
        all(changes.sequences(), MaterialView::sequence),
        all(changes.sightWords(), MaterialView::sightWords),
        all(changes.sentences(), SentenceView::of),
        changes.pictures().stream().map(PictureView::of).toList());
  }

  private static <T, V> List<Change<V>> all(List<Changed<T>> changes, Function<T, V> view) {
    return changes.stream()
        .map(each -> new Change<>(each.name(), each.before().map(view), each.after().map(view)))
        .toList();
  }

  public static PeopleBodies.RulesEdit rules(RuleSet set) {
    RulesDraft draft = RulesDraft.of(set);
    return new PeopleBodies.RulesEdit(draft.title(), draft.note(), draft.switches());
  }

  public static PeopleBodies.SightWordsEdit sightWords(SightWords set) {
    return new PeopleBodies.SightWordsEdit(set.title(), set.note(), set.words());
  }

  public static PeopleBodies.SequenceEdit sequence(Sequence sequence) {
    SequenceDraft draft = SequenceDraft.of(sequence);
    return new PeopleBodies.SequenceEdit(draft.title(), draft.note(), draft.steps());
  }
}
