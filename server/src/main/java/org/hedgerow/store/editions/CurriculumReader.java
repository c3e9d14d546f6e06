package org.hedgerow.store.editions;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.phonics.Catalogue;
import org.jdbi.v3.core.Handle;

/** Reads the sets of rules, the sequences and the sight words of an edition. */
final class CurriculumReader {
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
  private final CurriculumJson json;

  CurriculumReader(Handle handle, Catalogue catalogue) {
    this.handle = handle;
    this.json = new CurriculumJson(catalogue);
  }

  /** As it stands in an edition. */
  Curriculum at(int edition) {
    List<RuleSet> rules = rows("rule_sets", "switches", edition).stream().map(this::rules).toList();
    List<Sequence> sequences =
        rows("sequences", "steps", edition).stream().map(this::sequence).toList();
    List<SightWords> sightWords =
        rows("sight_words", "words", edition).stream().map(CurriculumReader::sightWords).toList();
    return new Curriculum(
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
    return new RuleSet(row.name, row.title, CurriculumJson.rules(row.content), row.note);
  }

  private Sequence sequence(Row row) {
    return new Sequence(row.name, row.title, row.note, json.steps(row.content));
  }

  private static SightWords sightWords(Row row) {
    return new SightWords(row.name, row.title, CurriculumJson.words(row.content), row.note);
  }

  /** As it stands in an edition, if anything was changed after another; else empty. */
  Optional<Curriculum> changed(int after, int edition) {
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
