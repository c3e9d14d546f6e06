package org.hedgerow.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hedgerow.sentences.compose.PlacePhrase;
import org.hedgerow.sentences.compose.Selection;

/** Reads where something may be done: {@code on in by under:tree =bush}. */
final class Places {

  /** Prepositions that may stand alone; any other word belongs to the one before it. */
  private static final Set<String> ALONE = Set.of("on", "in", "by", "under", "at", "near");

  private Places() {}

  static List<PlacePhrase> of(List<String> terms, Function<List<String>, Selection> selection) {
    List<List<String>> groups = new ArrayList<>();
    for (String term : terms) {
      if (ALONE.contains(term) || term.contains(":")) {
        groups.add(new ArrayList<>(List.of(term.split(":"))));
      } else {
        groups.get(groups.size() - 1).add(term);
      }
    }
    return groups.stream().map(group -> place(group, selection)).toList();
  }

  private static PlacePhrase place(
      List<String> group, Function<List<String>, Selection> selection) {
    List<String> nouns = group.subList(1, group.size());
    return new PlacePhrase(
        group.get(0), nouns.isEmpty() ? Optional.empty() : Optional.of(selection.apply(nouns)));
  }
}
