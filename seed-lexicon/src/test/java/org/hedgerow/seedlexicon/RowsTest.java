package org.hedgerow.seedlexicon;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** How the rows of the single tables become values. */
final class RowsTest {
  private static final String CATALOGUE_COLUMNS =
      "# grapheme\tvalue\tclass\tplace\treads-as-one\tkey word\ten-US\ten-GB\tnote\n";

  @Test
  void aCorrespondenceHasItsSoundsByAccent() {
    CorrespondenceRow row =
        one(
            CATALOGUE_COLUMNS + "oo\t2\tphonogram\t\tyes\twool\tʊ\tʊ|uː\tas in foot\n",
            CorrespondenceRow::from);

    assertThat(row.value()).isEqualTo(OptionalInt.of(2));
    assertThat(row.readsAsOne()).isTrue();
    assertThat(row.keyWord()).isEqualTo("wool");
    assertThat(row.sounds())
        .containsExactly(entry("en-US", List.of("ʊ")), entry("en-GB", List.of("ʊ", "uː")));
  }

  @Test
  void aSilentCorrespondenceHasTheEmptySoundAndAMissingAccentNone() {
    CorrespondenceRow row =
        one(CATALOGUE_COLUMNS + "b\t\tsilent\t\t\tlamb\t∅\t\t\n", CorrespondenceRow::from);

    assertThat(row.value()).isEmpty();
    assertThat(row.sounds()).containsExactly(entry("en-US", List.of("")));
  }

  @Test
  void aWeightHasACost() {
    assertThat(one("# accent\tgrapheme\tsounds\tcost\nen-US\tx\tk s\t0.25\n", WeightRow::from))
        .isEqualTo(new WeightRow("en-US", "x", "k s", 0.25));
    assertThat(one("# accent\tgrapheme\tsounds\tcost\nen-US\tb\t∅\t3\n", WeightRow::from))
        .isEqualTo(new WeightRow("en-US", "b", "", 3));
  }

  @Test
  void aSightWordIsInASet() {
    assertThat(one("# set\tword\ndolch\tdon't\n", SightWordRow::from))
        .isEqualTo(new SightWordRow("dolch", "don't"));
    assertThatThrownBy(() -> one("# set\tword\ndolch\t\n", SightWordRow::from))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("\"word\" is blank");
  }

  @Test
  void theLinesOfAWordBecomeOneEntry() {
    List<PronunciationRow> rows =
        read(
            "# word\tsounds\nlive\tL AY1 V\nlive\tL IH1 V\nliver\tL IH1 V ER0\n",
            PronunciationRow::from);

    assertThat(DictionaryEntry.grouped(rows))
        .containsExactly(
            new DictionaryEntry("live", List.of("L AY1 V", "L IH1 V")),
            new DictionaryEntry("liver", List.of("L IH1 V ER0")));
  }

  @Test
  void anUnknownKindIsRefused() {
    String table = "# form\tbase\tkind\tregularity\town-lemma\nran\trun\tflight\tirregular\t\n";

    assertThatThrownBy(() -> one(table, InflectionRow::from))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("\"kind\" is unknown: \"flight\"");
  }

  @Test
  void anUnknownRegularityIsRefused() {
    String table = "# form\tbase\tkind\tregularity\town-lemma\nran\trun\tpast\tmaybe\t\n";

    assertThatThrownBy(() -> one(table, InflectionRow::from))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("neither regular nor irregular");
  }

  private static <R> R one(String table, Function<TsvRow, R> toValue) {
    List<R> rows = read(table, toValue);
    assertThat(rows).hasSize(1);
    return rows.get(0);
  }

  private static <R> List<R> read(String table, Function<TsvRow, R> toValue) {
    return TsvReader.read("table.tsv", table.getBytes(UTF_8), toValue);
  }
}
