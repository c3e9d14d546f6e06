package org.hedgerow.seedlexicon;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

final class TsvReaderTest {

  @Test
  void readsCellsByTheNameOfTheirColumn() {
    String table = "# a comment\n# key word\tsound\nboat\toʊ\n";

    assertThat(read(table, row -> row.text("sound") + " in " + row.text("key-word")))
        .containsExactly("oʊ in boat");
  }

  @Test
  void skipsBlankAndCommentLinesAndCountsThem() {
    String table = "# word\n\nsun\n# between\nmoon\n";

    assertThat(read(table, row -> row.line() + row.text("word"))).containsExactly("3sun", "5moon");
  }

  @Test
  void takesWindowsLineEnds() {
    assertThat(read("# word\tnote\r\nsun\t\r\n", row -> row.text("word") + row.text("note")))
        .containsExactly("sun");
  }

  @Test
  void allowsBlankCellsAtTheEndToBeMissing() {
    assertThat(read("# word\tsize\tnote\nsun\t10\n", row -> row.text("note"))).containsExactly("");
  }

  @Test
  void refusesMoreCellsThanColumns() {
    assertMistake("# word\nsun\t10\n", row -> row.text("word"), "line 2", "2 columns instead of 1");
  }

  @Test
  void refusesAColumnNobodyNamed() {
    assertMistake(
        "# word\nsun\n", row -> row.text("size"), "line 2", "\"size\" is not named above");
  }

  @Test
  void refusesABlankCellWhereOneIsRequired() {
    assertMistake("# word\tsize\n\t10\n", row -> row.required("word"), "line 2", "is blank");
  }

  @Test
  void refusesANumberThatIsNone() {
    assertMistake(
        "# cost\n1,5\n", row -> row.decimal("cost"), "line 2", "no decimal number: \"1,5\"");
    assertMistake(
        "# cost\nNaN\n", row -> row.decimal("cost"), "line 2", "no decimal number: \"NaN\"");
    assertMistake("# size\n1.5\n", row -> row.number("size"), "line 2", "no whole number: \"1.5\"");
  }

  @Test
  void refusesSomethingElseThanYesOrBlank() {
    assertMistake("# own\nno\n", row -> row.yes("own"), "line 2", "neither \"yes\" nor blank");
  }

  @Test
  void refusesBytesThatAreNotUtf8() {
    byte[] latin = "# word\ncafé\n".getBytes(ISO_8859_1);

    assertThatThrownBy(() -> TsvReader.read("table.tsv", latin, row -> row.text("word")))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("not UTF-8");
  }

  private static <R> List<R> read(String table, Function<TsvRow, R> toValue) {
    return TsvReader.read("table.tsv", table.getBytes(UTF_8), toValue);
  }

  private static void assertMistake(
      String table, Function<TsvRow, ?> toValue, String line, String problem) {
    assertThatThrownBy(() -> read(table, toValue))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("table.tsv")
        .hasMessageContaining(line)
        .hasMessageContaining(problem);
  }
}
