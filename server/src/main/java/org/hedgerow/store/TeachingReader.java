package org.hedgerow.store;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.reading.RuleSet;
import org.hedgerow.reading.RuleSets;
import org.hedgerow.reading.Sequence;
import org.hedgerow.reading.SightWordSets;
import org.hedgerow.reading.SightWords;
import org.hedgerow.reading.Teaching;
import org.jdbi.v3.core.Handle;

/** Reads the sets of rules, the sequences and the sight words of an edition. */
final class TeachingReader {
  private static final String STANDING =
      """
       where since_edition <= :edition and (until_edition is null or until_edition > :edition)
      order by place, name
      """;

  private static final String CHANGED =
      Stream.of("rule_sets", "sequences", "sight_words")
          .map(
              """
              exists (select from %s where since_edition > :after and since_edition <= :edition
                or until_edition > :after and until_edition <= :edition)
              """
                  ::formatted)
          .collect(joining(" or ", "select ", ""));

  private record Row(String name, String title, String note, String content) {}

  private final Handle handle;
  private final TeachingJson json;

  TeachingReader(Handle handle, Catalogue catalogue) {
    this.handle = handle;
    this.json = new TeachingJson(catalogue);
  }

  /** As it stands in an edition. */
  Teaching at(int edition) {
    List<RuleSet> rules = rows("rule_sets", "switches", edition).stream().map(this::rules).toList();
    List<Sequence> sequences =
        rows("sequences", "steps", edition).stream().map(this::sequence).toList();
    List<SightWords> sightWords =
        rows("sight_words", "words", edition).stream().map(TeachingReader::sightWords).toList();
    return new Teaching(
        rules.isEmpty() ? RuleSets.DEFAULT_ONLY : new RuleSets(rules),
        sequences,
        new SightWordSets(sightWords));
  }

  private List<Row> rows(String table, String column, int edition) {
    return handle
        .createQuery(
            "select name, title, note, %s #>> '{}' as content from %s".formatted(column, table)
                + STANDING)
        .bind("edition", edition)
        .mapTo(Row.class)
        .list();
  }

  private RuleSet rules(Row row) {
    return new RuleSet(row.name, row.title, TeachingJson.rules(row.content), row.note);
  }

  private Sequence sequence(Row row) {
    return new Sequence(row.name, row.title, row.note, json.steps(row.content));
  }

  private static SightWords sightWords(Row row) {
    return new SightWords(row.name, row.title, TeachingJson.words(row.content), row.note);
  }

  /** As it stands in an edition, if anything was changed after another; else empty. */
  Optional<Teaching> changed(int after, int edition) {
    return isChanged(after, edition) ? Optional.of(at(edition)) : Optional.empty();
  }

  private boolean isChanged(int after, int edition) {
    return handle
        .createQuery(CHANGED)
        .bind("after", after)
        .bind("edition", edition)
        .mapTo(Boolean.class)
        .one();
  }
}
