package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * A step of a sequence.
 *
 * @param sequence its name
 * @param step its number, from 1
 * @param values phonograms, each perhaps with the number of one value: {@code sh}, {@code oo2}
 */
public record StepRow(String sequence, int step, List<String> values) {

  public StepRow {
    values = List.copyOf(values);
  }

  static StepRow from(TsvRow row) {
    return new StepRow(
        row.required("sequence"), row.number("step"), List.of(row.required("values").split(",")));
  }
}
