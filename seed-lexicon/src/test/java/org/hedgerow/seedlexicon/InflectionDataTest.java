package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inflected forms against forms written down from memory of English grammar. */
final class InflectionDataTest {
  private final List<InflectionRow> rows = SeedLexicon.bundled().inflections();

  @Test
  void areSortedWithoutRepetition() {
    Ordered.assertStrictly(
        rows.stream()
            .map(row -> row.form() + "\t" + row.base() + "\t" + row.kind().label())
            .toList());
  }

  @ParameterizedTest
  @CsvSource({
    "cats, cat, PLURAL",
    "boxes, box, PLURAL",
    "babies, baby, PLURAL",
    "potatoes, potato, PLURAL",
    "stomachs, stomach, PLURAL",
    "mouths, mouth, PLURAL",
    "baristas, barista, PLURAL",
    "walks, walk, THIRD_PERSON",
    "catches, catch, THIRD_PERSON",
    "cries, cry, THIRD_PERSON",
    "hopped, hop, PAST",
    "hoped, hope, PAST",
    "carried, carry, PARTICIPLE",
    "agreed, agree, PAST",
    "picnicked, picnic, PAST",
    "travelled, travel, PAST",
    "traveled, travel, PAST",
    "running, run, GERUND",
    "lying, lie, GERUND",
    "making, make, GERUND",
    "seeing, see, GERUND",
    "bigger, big, COMPARATIVE",
    "happiest, happy, SUPERLATIVE",
    "longer, long, COMPARATIVE"
  })
  void regularForms(String form, String base, InflectionKind kind) {
    assertThat(row(form, base, kind).regular()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "went, go, PAST",
    "gone, go, PARTICIPLE",
    "ran, run, PAST",
    "sung, sing, PARTICIPLE",
    "told, tell, PAST",
    "told, tell, PARTICIPLE",
    "feet, foot, PLURAL",
    "mice, mouse, PLURAL",
    "leaves, leaf, PLURAL",
    "children, child, PLURAL",
    "better, good, COMPARATIVE",
    "worst, bad, SUPERLATIVE",
    "is, be, THIRD_PERSON",
    "has, have, THIRD_PERSON",
    "says, say, THIRD_PERSON",
    "does, do, THIRD_PERSON"
  })
  void irregularForms(String form, String base, InflectionKind kind) {
    assertThat(row(form, base, kind).regular()).isFalse();
  }

  @Test
  void sangIsAPastAndNoParticiple() {
    assertThat(kindsOf("sang")).containsExactly(InflectionKind.PAST);
    assertThat(kindsOf("sung")).containsExactly(InflectionKind.PARTICIPLE);
  }

  @Test
  void wordsThatOnlyLookInflectedAreNot() {
    Set<String> lookalikes =
        Set.of(
            ("glass bus king thing bed shed red wing string spring need seed feed speed sled hundred her never under"
                    + " river sister corner butter rest forest west lens gas this his us yes during morning evening"
                    + " ceiling teacher farmer owner flower ladder hammer number dinner bother layer weed physics"
                    + " species princess dress bring sing shilling pudding naked wicked sacred")
                .split(" ", -1));

    assertThat(rows).extracting(InflectionRow::form).noneMatch(lookalikes::contains);
  }

  @Test
  void aFormThatIsAlsoAWordOfItsOwnSaysSo() {
    assertThat(row("building", "build", InflectionKind.GERUND).ownLemma()).isTrue();
    assertThat(row("glasses", "glass", InflectionKind.PLURAL).ownLemma()).isTrue();
    assertThat(row("rose", "rise", InflectionKind.PAST).ownLemma()).isTrue();
    assertThat(row("hopped", "hop", InflectionKind.PAST).ownLemma()).isFalse();
    assertThat(row("kept", "keep", InflectionKind.PAST).ownLemma()).isFalse();
  }

  private InflectionRow row(String form, String base, InflectionKind kind) {
    return rows.stream()
        .filter(row -> row.form().equals(form) && row.base().equals(base) && row.kind() == kind)
        .findFirst()
        .orElseThrow(() -> new AssertionError(form + " is no " + kind + " of " + base));
  }

  private Set<InflectionKind> kindsOf(String form) {
    return rows.stream()
        .filter(row -> row.form().equals(form))
        .map(InflectionRow::kind)
        .collect(Collectors.toSet());
  }
}
