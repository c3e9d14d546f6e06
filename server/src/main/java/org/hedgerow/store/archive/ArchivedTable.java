package org.hedgerow.store.archive;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A table as an archive keeps it: a file of JSON Lines, a row in each line.
 *
 * @param order columns by which its rows are ordered, so that the same bank makes the same file
 * @param instead what an archive says in place of a column, as SQL
 */
record ArchivedTable(String name, String order, Map<String, String> instead) {

  /** A password that nothing matches; whoever has it needs a new link. */
  static final String NO_PASSWORD_HASH = "$argon2id$none";

  private static final String NO_PASSWORD = "'" + NO_PASSWORD_HASH + "'";

  /** Tables of which the first archives knew nothing. */
  private static final Set<String> LATER =
      Set.of("centre", "rule_sets", "sequences", "sight_words");

  private static final Set<String> WITH_PICTURES = Set.of("uploads", "pictures");

  private static final Map<String, String> NAMELESS =
      Map.of(
          "name", "'person-' || id",
          "display_name", "'Person ' || id",
          "active", "false",
          "password_hash", NO_PASSWORD);

  /** What an archive leaves out: it is secret, or means nothing elsewhere. */
  static final List<String> LEFT_OUT =
      List.of(
          "links",
          "sessions",
          "api_tokens",
          "sign_in_failures",
          "known_devices",
          "idempotency_keys",
          "flyway_schema_history");

  /**
   * All tables of an archive, each after those that it refers to; only editions and contributions
   * refer to each other.
   *
   * @param people whether to say who people are, and to keep the record of what was done
   */
  static List<ArchivedTable> all(boolean people) {
    Map<String, String> accounts = people ? Map.of("password_hash", NO_PASSWORD) : NAMELESS;
    Map<String, String> centre = people ? Map.of() : Map.of("name", "null::text");
    List<ArchivedTable> tables =
        List.of(
            new ArchivedTable("accounts", "id", accounts),
            new ArchivedTable("centre", "only_one", centre),
            of("editions", "number"),
            of("accents", "place"),
            of("correspondences", "id"),
            of("realisations", "id"),
            of("words", "id"),
            of("word_tags", "word_id, tag"),
            of("pronunciations", "id"),
            of("spans", "pronunciation_id, position"),
            of("rule_sets", "id"),
            of("sequences", "id"),
            of("sight_words", "id"),
            of("contributions", "id"),
            of("decisions", "id"),
            of("uploads", "id"),
            of("pictures", "id"),
            of("sentences", "id"),
            of("audit", "id"));
    return people
        ? tables
        : tables.stream().filter(table -> !table.name().equals("audit")).toList();
  }

  private static ArchivedTable of(String name, String order) {
    return new ArchivedTable(name, order, Map.of());
  }

  /** Whether there are archives that don't hold it. */
  boolean isLater() {
    return LATER.contains(name);
  }

  boolean holdsPictures() {
    return WITH_PICTURES.contains(name);
  }

  String file() {
    return name + ".jsonl";
  }

  /**
   * Its rows as JSON objects.
   *
   * @param columns the names of all its columns
   */
  String query(List<String> columns) {
    String values =
        String.join(
            ", ",
            columns.stream()
                .map(column -> instead.getOrDefault(column, column) + " as " + column)
                .toList());
    return "select row_to_json(row) from (select %s from %s order by %s) row"
        .formatted(values, name, order);
  }
}
