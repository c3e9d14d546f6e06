package org.hedgerow.web.review;

import java.util.List;

/**
 * A table of new words.
 *
 * @param columns in their order
 */
record Table(List<Column> columns, List<TableRow> rows) {
  Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }
}
