package org.hedgerow.web.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Changed;
import org.hedgerow.lexicon.MaterialChanges;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Switch;
import org.hedgerow.web.page.ShownPicture;

/**
 * What an edition changed beside words, for people.
 *
 * @param kind as in {@code Reading rules}
 * @param what whether it is new, changed or withdrawn
 * @param changes in sentences without a full stop
 */
record MaterialDifference(
    String kind, String name, String what, List<String> changes, Optional<ShownPicture> picture) {

  static List<MaterialDifference> of(MaterialChanges changes) {
    return Stream.of(
            changes.rules().stream().map(MaterialDifference::rules),
            changes.sequences().stream().map(MaterialDifference::sequence),
            changes.sightWords().stream().map(MaterialDifference::sightWords),
            changes.sentences().stream().map(MaterialDifference::sentence),
            changes.pictures().stream().map(MaterialDifference::picture))
        .flatMap(all -> all)
        .toList();
  }

  private static MaterialDifference of(
      String kind, String title, Changed<?> change, List<String> changes) {
    return new MaterialDifference(kind, title, change.what(), changes, Optional.empty());
  }

  private static MaterialDifference rules(Changed<RuleSet> change) {
    List<String> changes = new ArrayList<>();
    texts(change.before().map(RuleSet::title), change.after().map(RuleSet::title), changes);
    change
        .after()
        .ifPresent(
            after -> {
              for (Switch each : Switch.values()) {
                boolean now = after.rules().allow(each);
                if (change.before().map(old -> old.rules().allow(each) != now).orElse(now)) {
                  changes.add(each.label() + (now ? " allowed" : " no longer allowed"));
                }
              }
            });
    RuleSet shown = change.after().or(change::before).orElseThrow();
    return of("Reading rules", shown.title(), change, changes);
  }

  private static void texts(Optional<String> before, Optional<String> after, List<String> changes) {
    if (before.isPresent() && after.isPresent() && !before.equals(after)) {
      changes.add("called “%s”, before “%s”".formatted(after.get(), before.get()));
    }
  }

  private static MaterialDifference sequence(Changed<Sequence> change) {
    List<String> changes = new ArrayList<>();
    texts(change.before().map(Sequence::title), change.after().map(Sequence::title), changes);
    List<String> old = change.before().map(MaterialDifference::steps).orElse(List.of());
    List<String> now = change.after().map(MaterialDifference::steps).orElse(List.of());
    for (int i = 0; change.after().isPresent() && i < Math.max(old.size(), now.size()); i++) {
      String before = i < old.size() ? old.get(i) : "nothing";
      String after = i < now.size() ? now.get(i) : "nothing";
      if (!before.equals(after)) {
        changes.add(
            "step %d: %s".formatted(i + 1, after) + (old.isEmpty() ? "" : ", before " + before));
      }
    }
    Sequence shown = change.after().or(change::before).orElseThrow();
    return of("Order of teaching", shown.title(), change, changes);
  }

  private static List<String> steps(Sequence sequence) {
    return sequence.steps().stream()
        .map(step -> String.join(", ", step.stream().map(Correspondence::label).toList()))
        .toList();
  }

  private static MaterialDifference sightWords(Changed<SightWords> change) {
    List<String> changes = new ArrayList<>();
    texts(change.before().map(SightWords::title), change.after().map(SightWords::title), changes);
    List<String> old = change.before().map(SightWords::words).orElse(List.of());
    change
        .after()
        .map(SightWords::words)
        .ifPresent(
            now -> {
              words("with", now, old).ifPresent(changes::add);
              words("without", old, now).ifPresent(changes::add);
            });
    SightWords shown = change.after().or(change::before).orElseThrow();
    return of("Sight words", shown.title(), change, changes);
  }

  private static Optional<String> words(String what, List<String> all, List<String> others) {
    List<String> only = all.stream().filter(word -> !others.contains(word)).toList();
    return only.isEmpty()
        ? Optional.empty()
        : Optional.of("%s %s".formatted(what, String.join(", ", only)));
  }

  private static MaterialDifference sentence(Changed<Sentence> change) {
    Sentence shown = change.after().or(change::before).orElseThrow();
    return of("Sentence", shown.text(), change, List.of("for " + shown.value().label()));
  }

  private static MaterialDifference picture(Picture picture) {
    return new MaterialDifference(
        "Picture", picture.title(), "new", List.of(), Optional.of(ShownPicture.of(picture)));
  }
}
