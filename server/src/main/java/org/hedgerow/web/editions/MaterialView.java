package org.hedgerow.web.editions;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.lexicon.Changed;
import org.hedgerow.lexicon.MaterialChanges;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.web.view.NamedSetView;
import org.hedgerow.web.view.PictureView;

/**
 * What an edition changed beside words: rules, sequences and sight words as they are sent to be
 * changed.
 */
record MaterialView(
    List<Change<NamedSetView.Rules>> rules,
    List<Change<NamedSetView.SequenceSteps>> sequences,
    List<Change<NamedSetView.Words>> sightWords,
    List<Change<SentenceView>> sentences,
    List<PictureView> pictures) {

  /**
   * @param name of a sentence its text
   * @param before left out if it is new
   * @param after left out if it is withdrawn
   */
  record Change<T>(String name, Optional<T> before, Optional<T> after) {}

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
        all(changes.rules(), NamedSetView.Rules::of),
        all(changes.sequences(), NamedSetView.SequenceSteps::of),
        all(changes.sightWords(), NamedSetView.Words::of),
        all(changes.sentences(), SentenceView::of),
        changes.pictures().stream().map(PictureView::of).toList());
  }

  private static <T, V> List<Change<V>> all(List<Changed<T>> changes, Function<T, V> view) {
    return changes.stream()
        .map(each -> new Change<>(each.name(), each.before().map(view), each.after().map(view)))
        .toList();
  }
}
