package org.hedgerow.store.editions;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SpellingContext;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads accents, correspondences and their realisations. */
final class CatalogueReader {
  private record AccentRow(
      String tag, String name, String vowels, String consonants, String parent, String spelling) {}

  private record CorrespondenceRow(
      int id,
      String grapheme,
      @Nullable Integer value,
      String kind,
      boolean readsAsOne,
      String keyWord,
      String place,
      String note) {}

  private record RealisationRow(
      int correspondenceId, String accent, List<Sound> sounds, double cost) {}

  private final Handle handle;

  CatalogueReader(Handle handle) {
    this.handle = handle;
  }

  /** The accents in the order in which they are shown, each with its realisations. */
  List<AccentCatalogue> read() {
    List<Accent> accents = accents();
    List<List<RealisationRow>> rows = accents.stream().map(this::realisations).toList();
    Catalogue catalogue = catalogue(ways(rows));
    List<AccentCatalogue> catalogues = new ArrayList<>();
    for (int i = 0; i < accents.size(); i++) {
      catalogues.add(accentCatalogue(accents.get(i), catalogue, rows.get(i)));
    }
    return catalogues;
  }

  private List<Accent> accents() {
    return handle
        .createQuery(
            """
            select tag, name, vowels, consonants, coalesce(parent, '') as parent,
              coalesce(spelling, '') as spelling
            from accents order by place
            """)
        .mapTo(AccentRow.class)
        .map(CatalogueReader::accent)
        .list();
  }

  private static Accent accent(AccentRow row) {
    Accent alone =
        Accent.of(row.tag, row.name, symbols(row.vowels), symbols(row.consonants))
            .spelt(row.spelling);
    return row.parent.isEmpty() ? alone : alone.under(row.parent);
  }

  private static List<String> symbols(String text) {
    return List.of(text.split(" "));
  }

  private List<RealisationRow> realisations(Accent accent) {
    return handle
        .createQuery(
            """
            select correspondence_id, sounds, cost from realisations
            where accent = :accent order by id
            """)
        .bind("accent", accent.tag())
        .map(
            (row, context) ->
                new RealisationRow(
                    row.getInt("correspondence_id"),
                    accent.tag(),
                    Sounds.read(row.getString("sounds"), accent),
                    row.getDouble("cost")))
        .list();
  }

  /** By correspondence and accent, how it is said. */
  private static Map<Integer, Map<String, List<List<Sound>>>> ways(
      List<List<RealisationRow>> rows) {
    return rows.stream()
        .flatMap(List::stream)
        .collect(
            groupingBy(
                RealisationRow::correspondenceId,
                groupingBy(RealisationRow::accent, mapping(RealisationRow::sounds, toList()))));
  }

  private Catalogue catalogue(Map<Integer, Map<String, List<List<Sound>>>> ways) {
    return new Catalogue(
        handle
            .createQuery(
                """
                select id, grapheme, value, class as kind, reads_as_one,
                  coalesce(key_word, '') as key_word, coalesce(place, '') as place,
                  coalesce(note, '') as note
                from correspondences order by id
                """)
            .mapTo(CorrespondenceRow.class)
            .map(row -> correspondence(row, ways.getOrDefault(row.id, Map.of())))
            .list());
  }

  private static Correspondence correspondence(
      CorrespondenceRow row, Map<String, List<List<Sound>>> ways) {
    return new Correspondence(
        row.id,
        new Grapheme(row.grapheme),
        row.value == null ? OptionalInt.empty() : OptionalInt.of(row.value),
        CorrespondenceClass.labelled(row.kind).orElseThrow(),
        SpellingContext.parse(row.place),
        row.readsAsOne,
        row.keyWord,
        ways,
        row.note);
  }

  private static AccentCatalogue accentCatalogue(
      Accent accent, Catalogue catalogue, List<RealisationRow> rows) {
    List<Realisation> realisations = new ArrayList<>();
    for (RealisationRow row : rows) {
      Correspondence correspondence = catalogue.get(row.correspondenceId);
      realisations.add(new Realisation(realisations.size(), correspondence, row.sounds, row.cost));
    }
    return new AccentCatalogue(accent, catalogue, realisations);
  }
}
