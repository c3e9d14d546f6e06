package org.hedgerow.seedlexicon;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The nouns that sentences are composed of hold together with the other tables. */
final class NounDataTest {

  /** <em>does</em> would be read as the verb. */
  private static final Set<String> WITHOUT_PLURAL = Set.of("doe");

  private final SeedLexicon seed = SeedLexicon.bundled();
  private final List<NounRow> nouns = seed.nouns();

  @Test
  void areSortedWithoutRepetition() {
    Ordered.assertStrictly(nouns.stream().map(NounDataTest::key).toList());
  }

  @Test
  void areOfClassesThatExist() {
    Set<String> classes = seed.nounClasses().stream().map(NounClassRow::name).collect(toSet());

    assertThat(nouns).flatExtracting(NounRow::classes).isSubsetOf(classes);
    assertThat(seed.nounClasses()).flatExtracting(NounClassRow::parents).isSubsetOf(classes);
  }

  @Test
  void haveSizesNumbersAndPlacesThatExist() {
    assertThat(nouns).allMatch(noun -> noun.size() >= 0 && noun.size() <= 6);
    assertThat(nouns).extracting(NounRow::number).isSubsetOf("count", "mass", "pair");
    assertThat(nouns)
        .flatExtracting(NounRow::landmarks)
        .isSubsetOf("on", "in", "at", "by", "under", "near");
  }

  @Test
  void areWordsOfTheDictionary() {
    Set<String> words = seed.dictionary().stream().map(DictionaryEntry::word).collect(toSet());

    assertThat(nouns).extracting(NounRow::noun).isSubsetOf(words);
  }

  @Test
  void thatAreCountedHaveOnePlural() {
    Set<String> told =
        nouns.stream().filter(noun -> !noun.plural().isEmpty()).map(NounRow::noun).collect(toSet());

    Map<String, Long> plurals = plurals(seed);
    assertThat(counted().filter(noun -> !told.contains(noun.noun())).map(NounRow::noun))
        .filteredOn(noun -> plurals.getOrDefault(noun, 0L) != 1)
        .isSubsetOf(WITHOUT_PLURAL);
  }

  private Stream<NounRow> counted() {
    return nouns.stream().filter(noun -> noun.number().equals("count"));
  }

  private static Map<String, Long> plurals(SeedLexicon seed) {
    return seed.inflections().stream()
        .filter(row -> row.kind() == InflectionKind.PLURAL)
        .collect(groupingBy(InflectionRow::base, counting()));
  }

  private static String key(NounRow noun) {
    return noun.noun() + "\t" + noun.number() + "\t" + String.join(" ", noun.classes());
  }
}
