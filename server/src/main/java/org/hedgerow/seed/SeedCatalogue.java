package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Place;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.seedlexicon.CorrespondenceRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.WeightRow;

/**
 * The catalogue of the seed lexicon, and its weights.
 *
 * <p>A row that makes no sense fails with an {@link IllegalArgumentException} that names it.
 */
public final class SeedCatalogue {

  private SeedCatalogue() {}

  /** The catalogue in each accent, with the weights that were learned for it. */
  public static List<AccentCatalogue> weighted(SeedLexicon seed) {
    Map<String, Double> costs = new HashMap<>();
    for (WeightRow row : seed.weights()) {
      costs.put(key(row.accent(), row.grapheme(), row.sounds()), row.cost());
    }
    return unweighted(seed).stream()
        .map(each -> each.weighted(realisation -> cost(costs, each.accent(), realisation)))
        .toList();
  }

  /** The catalogue in each accent, before weights are learned. */
  public static List<AccentCatalogue> unweighted(SeedLexicon seed) {
    List<Accent> accents = SeedAccents.read(seed);
    Catalogue catalogue = catalogue(seed.correspondences(), accents);
    return accents.stream().map(accent -> AccentCatalogue.unweighted(accent, catalogue)).toList();
  }

  private static double cost(Map<String, Double> costs, Accent accent, Realisation realisation) {
    String sounds = Sound.spaced(realisation.sounds());
    Double cost = costs.get(key(accent.tag(), realisation.grapheme().text(), sounds));
    if (cost == null) {
      throw new IllegalArgumentException(
          "no weight for %s in %s: run seed-lexicon/derive/weights.sh"
              .formatted(realisation, accent));
    }
    return cost;
  }

  private static String key(String accent, String grapheme, String sounds) {
    return accent + ' ' + grapheme + ':' + sounds;
  }

  private static Catalogue catalogue(List<CorrespondenceRow> rows, List<Accent> accents) {
    Map<String, SoundReader> readers =
        accents.stream().collect(toMap(Accent::tag, SoundReader::new));
    List<Correspondence> correspondences = new ArrayList<>();
    for (CorrespondenceRow row : rows) {
      correspondences.add(correspondence(correspondences.size(), row, readers));
    }
    return new Catalogue(correspondences);
  }

  private static Correspondence correspondence(
      int id, CorrespondenceRow row, Map<String, SoundReader> readers) {
    try {
      return new Correspondence(
          id,
          new Grapheme(row.grapheme()),
          row.value(),
          kind(row.type()),
          Place.parse(row.place()),
          row.readsAsOne(),
          row.keyWord(),
          sounds(row, readers),
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
      CorrespondenceRow row, Map<String, SoundReader> readers) {
    Map<String, List<List<Sound>>> sounds = new HashMap<>();
    row.sounds()
        .forEach(
            (accent, ways) -> {
              SoundReader reader = readers.get(accent);
              if (reader == null) {
                throw new IllegalArgumentException("there is no accent " + accent);
              }
              sounds.put(accent, ways.stream().map(way -> way(way, reader)).toList());
            });
    return sounds;
  }

  private static List<Sound> way(String way, SoundReader reader) {
    return way.isEmpty() ? List.of() : reader.read(way);
  }
}
