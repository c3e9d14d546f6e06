package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.SpellingContext;
import org.hedgerow.seedlexicon.CorrespondenceRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.WeightRow;

/**
 * The catalogue of the seed lexicon, and its weights.
 *
 * <p>A row that makes no sense fails with an {@link IllegalArgumentException} that names it.
 */
public final class SeedCatalogue {

  /** What a realisation costs that only an accent without weights of its own has. */
  private static final double UNLEARNED = 9;

  private SeedCatalogue() {}

  /** The catalogue in each accent, with the weights that were learned for it. */
  public static List<AccentCatalogue> weighted(SeedLexicon seed) {
    Map<String, Double> costs = new HashMap<>();
    for (WeightRow row : seed.weights()) {
      costs.put(key(row.accent(), row.grapheme(), row.sounds()), row.cost());
    }
    List<AccentCatalogue> unweighted = unweighted(seed);
    Accents accents = new Accents(unweighted.stream().map(AccentCatalogue::accent).toList());
    return unweighted.stream()
        .map(each -> weighted(each, costs, accents.chain(each.accent().tag())))
        .toList();
  }

  /** The catalogue in each accent, before weights are learned. */
  public static List<AccentCatalogue> unweighted(SeedLexicon seed) {
    List<Accent> accents = SeedAccents.read(seed);
    Catalogue catalogue = catalogue(seed.correspondences(), accents);
    return accents.stream().map(accent -> AccentCatalogue.unweighted(accent, catalogue)).toList();
  }

  /** An accent for which nothing was learned, as it has few words, takes its parent's weights. */
  private static AccentCatalogue weighted(
      AccentCatalogue unweighted, Map<String, Double> costs, List<String> chain) {
    return unweighted.weighted(realisation -> cost(costs, chain, realisation));
  }

  private static double cost(
      Map<String, Double> costs, List<String> chain, Realisation realisation) {
    for (String accent : chain) {
      for (List<Sound> sounds : sameValue(accent, chain, realisation)) {
        Double cost = costs.get(key(accent, realisation.grapheme(), sounds));
        if (cost != null) {
          return cost;
        }
      }
    }
    if (chain.size() > 1) {
      return UNLEARNED;
    }
    throw new IllegalArgumentException(
        "no weight for %s in %s: run seed-lexicon/derive/weights.sh"
            .formatted(realisation, chain.get(0)));
  }

  /** The same sounds, and in a parent any that the parent has for the same correspondence. */
  private static List<List<Sound>> sameValue(
      String accent, List<String> chain, Realisation realisation) {
    return accent.equals(chain.get(0))
        ? List.of(realisation.sounds())
        : realisation.correspondence().sounds().getOrDefault(accent, List.of());
  }

  private static String key(String accent, Grapheme grapheme, List<Sound> sounds) {
    return key(accent, grapheme.text(), Sound.spaced(sounds));
  }

  private static String key(String accent, String grapheme, String sounds) {
    return accent + ' ' + grapheme + ':' + sounds;
  }

  private static Catalogue catalogue(List<CorrespondenceRow> rows, List<Accent> accents) {
    Map<String, SoundReader> readers =
        accents.stream().collect(toMap(Accent::tag, SoundReader::new));
    Accents known = new Accents(accents);
    List<Correspondence> correspondences = new ArrayList<>();
    for (CorrespondenceRow row : rows) {
      correspondences.add(correspondence(correspondences.size(), row, readers, known));
    }
    return new Catalogue(correspondences);
  }

  private static Correspondence correspondence(
      int id, CorrespondenceRow row, Map<String, SoundReader> readers, Accents accents) {
    try {
      return new Correspondence(
          id,
          new Grapheme(row.grapheme()),
          row.value(),
          kind(row.type()),
          SpellingContext.parse(row.place()),
          row.readsAsOne(),
          row.keyWord(),
          sounds(row, readers, accents),
          row.note());
    } catch (IllegalArgumentException mistake) {
      throw new IllegalArgumentException(
          "the catalogue's row for %s (%s): %s"
              .formatted(row.grapheme(), row.keyWord(), mistake.getMessage()),
          mistake);
    }
  }

  private static CorrespondenceClass kind(String type) {
    return CorrespondenceClass.labelled(type)
        .orElseThrow(() -> new IllegalArgumentException("there is no class " + type));
  }

  private static Map<String, List<List<Sound>>> sounds(
      CorrespondenceRow row, Map<String, SoundReader> readers, Accents accents) {
    row.sounds().keySet().stream()
        .filter(accent -> !readers.containsKey(accent))
        .forEach(SeedCatalogue::refuse);
    Map<String, List<List<Sound>>> sounds = new HashMap<>();
    readers.forEach(
        (accent, reader) -> {
          List<String> ways = ways(row, accents.chain(accent));
          if (!ways.isEmpty()) {
            sounds.put(accent, ways.stream().map(way -> way(way, reader)).toList());
          }
        });
    return sounds;
  }

  private static void refuse(String accent) {
    throw new IllegalArgumentException("there is no accent " + accent);
  }

  /** What the accent's cell says, or, where that is blank, its parent's. */
  private static List<String> ways(CorrespondenceRow row, List<String> chain) {
    return chain.stream()
        .filter(row.sounds()::containsKey)
        .findFirst()
        .map(accent -> row.sounds().getOrDefault(accent, List.of()))
        .orElse(List.of());
  }

  private static List<Sound> way(String way, SoundReader reader) {
    return way.isEmpty() ? List.of() : reader.read(way);
  }
}
