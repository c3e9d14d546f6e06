package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the commands list and check print, on the whole first edition. */
class LookUpTest {
  private static final OptionalInt UNSAID = OptionalInt.empty();

  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  private List<String> lines(LexiconTask task) {
    assertThat(
            task.run(
                SeededLexicon.get(), new PrintWriter(out, true), new PrintWriter(errors, true)))
        .isZero();
    return out.toString().lines().toList();
  }

  private static ListTask list(String phonogram, OptionalInt value, OptionalInt limit) {
    return new ListTask(phonogram, value, "en-US", limit);
  }

  @Test
  void listsWordsOneOnALine() {
    assertThat(lines(list("oa", UNSAID, UNSAID)))
        .contains("boat", "goat", "soap", "float")
        .doesNotContain("board", "coach", "boats")
        .allMatch(word -> word.matches("[a-z]+") && word.contains("oa"));
    assertThat(errors.toString()).isEmpty();
  }

  @Test
  void neverMixesTheValuesOfAPhonogram() {
    List<String> moon = lines(list("oo", UNSAID, UNSAID));
    out.getBuffer().setLength(0);
    List<String> wool = lines(list("oo", OptionalInt.of(2), UNSAID));
    assertThat(moon).contains("moon", "spoon").doesNotContainAnyElementsOf(wool);
    assertThat(wool).contains("wool", "foot");
  }

  @Test
  void readsAPhonogramInCapitals() {
    assertThat(lines(list("OA", UNSAID, UNSAID))).contains("boat");
  }

  @Test
  void stopsAtTheLimit() {
    List<String> all = lines(list("sh", UNSAID, UNSAID));
    out.getBuffer().setLength(0);
    assertThat(lines(list("sh", UNSAID, OptionalInt.of(7)))).isEqualTo(all.subList(0, 7));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ao   |   | en-US | oa
          i_e  |   | en-US | i-e
          <b>  |   | en-US | no phonogram
          oo   | 9 | en-US | 1 (moon), 2 (wool)
          oo   | 0 | en-US | 1 (moon), 2 (wool)
          oo   |   | de    | en-US
          """)
  void saysInOneLineWhatThereIsInstead(
      String phonogram, Integer value, String accent, String instead) {
    OptionalInt number = value == null ? UNSAID : OptionalInt.of(value);
    assertThatThrownBy(() -> lines(new ListTask(phonogram, number, accent, UNSAID)))
        .isInstanceOf(CommandFailedException.class)
        .hasMessageContaining(instead)
        .message()
        .hasLineCount(1);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void checksEachWordForAPhonogram() {
    CheckTask task =
        new CheckTask(
            List.of("wool", "moon", "zzgrk"),
            Optional.of("oo"),
            OptionalInt.of(2),
            List.of("en-US"));
    List<String> lines = lines(task);
    assertThat(lines).containsSubsequence("wool: pass", "moon: fail", "zzgrk: look");
    assertThat(lines.get(lines.indexOf("moon: fail") + 1)).startsWith("  ");
    assertThat(lines.get(lines.indexOf("zzgrk: look") + 1)).contains("the bank does not hold");
  }

  @Test
  void checksForBasicSoundsWhereNoPhonogramIsNamed() {
    CheckTask task =
        new CheckTask(List.of("cat", "boat"), Optional.empty(), UNSAID, List.of("en-US"));
    assertThat(lines(task)).containsSubsequence("cat: pass", "boat: fail");
  }

  @Test
  void refusesToCheckForAPhonogramThatThereIsNot() {
    CheckTask task = new CheckTask(List.of("cat"), Optional.of("qqq"), UNSAID, List.of("en-US"));
    assertThatThrownBy(() -> lines(task))
        .isInstanceOf(CommandFailedException.class)
        .hasMessageContaining("qqq");
  }
}
