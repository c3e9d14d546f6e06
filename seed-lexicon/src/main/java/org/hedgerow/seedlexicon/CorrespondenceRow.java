package org.hedgerow.seedlexicon;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * A row of the catalogue: a grapheme and what it says.
 *
 * @param grapheme the letters; a split grapheme has a hyphen, such as {@code i-e}
 * @param value the number of this value of a phonogram, the same in all accents; empty where values
 *     aren't taught
 * @param type the column {@code class}: basic, doubled, phonogram, silent, ending, irregular
 * @param place where in a word the grapheme stands; empty for anywhere
 * @param readsAsOne whether a learner reads the letters as one sign
 * @param keyWord a word that shows the value
 * @param sounds by accent (a BCP 47 tag), the alternative sounds, commonest first, each as IPA
 *     sounds separated by blanks and the empty string for silence; no alternatives where the accent
 *     has it not although its parent has; an accent with a blank cell is absent
 * @param note for teachers; often empty
 */
public record CorrespondenceRow(
    String grapheme,
    OptionalInt value,
    String type,
    String place,
    boolean readsAsOne,
    String keyWord,
    Map<String, List<String>> sounds,
    String note) {
  private static final String ABSENT = "-";
  private static final Pattern ACCENT = Pattern.compile("[a-z]{2}-[A-Z]{2}(-[a-z0-9]+)*");

  public CorrespondenceRow {
    sounds = Collections.unmodifiableMap(new LinkedHashMap<>(sounds));
  }

  static CorrespondenceRow from(TsvRow row) {
    return new CorrespondenceRow(
        row.required("grapheme"),
        row.optionalNumber("value"),
        row.required("class"),
        row.text("place"),
        row.yes("reads-as-one"),
        row.text("key word"),
        soundsFrom(row),
        row.text("note"));
  }

  private static List<String> ways(String cell) {
    return cell.strip().equals(ABSENT) ? List.of() : Sounds.alternatives(cell);
  }

  private static Map<String, List<String>> soundsFrom(TsvRow row) {
    Map<String, List<String>> sounds = new LinkedHashMap<>();
    for (String column : row.columns()) {
      if (ACCENT.matcher(column).matches() && !row.text(column).isBlank()) {
        sounds.put(column, ways(row.text(column)));
      }
    }
    return sounds;
  }
}
