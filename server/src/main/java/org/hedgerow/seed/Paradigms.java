package org.hedgerow.seed;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.seedlexicon.InflectionKind;
import org.hedgerow.seedlexicon.InflectionRow;

/**
 * The inflected forms of words; where a word has several of a kind, none, for it must be chosen.
 */
final class Paradigms {

  private record Key(String base, InflectionKind kind) {}

  private static final String SEVERAL = "";

  private final Map<Key, String> forms = new HashMap<>();

  Paradigms(List<InflectionRow> rows) {
    rows.forEach(
        row -> forms.merge(new Key(row.base(), row.kind()), row.form(), (one, other) -> SEVERAL));
  }

  /** Empty where there is none, or several. */
  String form(String base, InflectionKind kind) {
    return forms.getOrDefault(new Key(base, kind), SEVERAL);
  }
}
