package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Catalogue;

/** The accents of a bank with the tools for each, made when they are first needed. Thread-safe. */
final class Speech {
  private final Catalogue catalogue;
  private final Accents known;
  private final Map<String, AccentCatalogue> accents = new LinkedHashMap<>();
  private final Map<String, Lazy<AccentTools>> tools = new HashMap<>();
  private final ComputingCache<WordQuery, ResolvedQuery> sought =
      ComputingCache.ofSize(Segment.QUERIES_KEPT);

  /**
   * @param accents at least one, all with one catalogue
   */
  Speech(List<AccentCatalogue> accents) {
    this.catalogue = accents.get(0).catalogue();
    this.known = new Accents(accents.stream().map(AccentCatalogue::accent).toList());
    for (AccentCatalogue each : accents) {
      String tag = each.accent().tag();
      this.accents.put(tag, each);
      tools.put(tag, new Lazy<>(() -> new AccentTools(chain(tag))));
    }
  }

  /** An accent and those that it falls back on. */
  private List<AccentCatalogue> chain(String tag) {
    return known.chain(tag).stream().flatMap(each -> accent(each).stream()).toList();
  }

  Catalogue catalogue() {
    return catalogue;
  }

  Accents known() {
    return known;
  }

  List<AccentCatalogue> accents() {
    return List.copyOf(accents.values());
  }

  List<String> tags() {
    return List.copyOf(accents.keySet());
  }

  Optional<AccentCatalogue> accent(String tag) {
    return Optional.ofNullable(accents.get(tag));
  }

  /**
   * @throws IllegalArgumentException if there is no such accent
   */
  AccentTools tools(String tag) {
    Lazy<AccentTools> its = tools.get(tag);
    if (its == null) {
      throw new IllegalArgumentException("no accent " + tag + " in this edition");
    }
    return its.get();
  }

  /**
   * @throws IllegalArgumentException if there is no such accent
   */
  ResolvedQuery sought(WordQuery query) {
    return sought.get(query, this::workOut);
  }

  private ResolvedQuery workOut(WordQuery query) {
    return new ResolvedQuery(
        query,
        query.accents().stream().map(tag -> standard(query, tag)).toList(),
        query.differsIn().map(tag -> standard(query, tag)));
  }

  private AccentStandard standard(WordQuery query, String tag) {
    return tools(tag).standard(query.standard());
  }
}
