package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.seedlexicon.NounClassRow;
import org.hedgerow.sentences.compose.Selection;

/** What kinds of nouns there are, and which belong to which. */
final class NounClasses {

  private final Map<String, List<String>> parents;

  NounClasses(List<NounClassRow> rows) {
    this.parents = rows.stream().collect(toMap(NounClassRow::name, NounClassRow::parents));
  }

  /** The classes with all that they belong to. */
  Set<String> withAncestors(Collection<String> names) {
    Set<String> all = new HashSet<>();
    names.forEach(name -> add(name, all));
    return all;
  }

  private void add(String name, Set<String> all) {
    if (all.add(name)) {
      of(name).forEach(parent -> add(parent, all));
    }
  }

  private List<String> of(String name) {
    List<String> of = parents.get(name);
    if (of == null) {
      throw new IllegalArgumentException("there is no class of nouns named " + name);
    }
    return of;
  }

  /** The selection itself, if all its classes exist. */
  Selection checked(Selection selection) {
    selection.classes().forEach(this::of);
    return selection;
  }
}
