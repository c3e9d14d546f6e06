package org.hedgerow.web.review;

import java.util.Map;
import java.util.Optional;

/**
 * A row of a table as it was sent.
 *
 * @param number from 1, as a spreadsheet counts; the names of the columns stand in row 1
 * @param cells those that aren't empty
 */
record TableRow(int number, Map<Column, String> cells) {
  TableRow {
    cells = Map.copyOf(cells);
  }

  Optional<String> cell(Column column) {
    return Optional.ofNullable(cells.get(column));
  }
}
