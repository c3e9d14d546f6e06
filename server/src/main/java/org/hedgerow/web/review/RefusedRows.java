package org.hedgerow.web.review;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.web.http.SafeCell;
import org.hedgerow.web.problems.ParameterError;

/** The rows that can't be submitted, as CSV with a column that says why; to be corrected. */
final class RefusedRows {
  private static final String WHY = "why";

  private RefusedRows() {}

  static String of(Table table, List<JudgedRow> judged) {
    Map<Integer, TableRow> rows =
        table.rows().stream().collect(Collectors.toMap(TableRow::number, Function.identity()));
    List<String> header = new ArrayList<>(table.columns().stream().map(Column::label).toList());
    header.add(WHY);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader(header.toArray(String[]::new)).get();
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = format.print(text)) {
      for (JudgedRow each : judged) {
        if (!each.isGood()) {
          printer.printRecord(cells(table, requireNonNull(rows.get(each.row())), each));
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static List<String> cells(Table table, TableRow row, JudgedRow judged) {
    List<String> cells = new ArrayList<>();
    for (Column column : table.columns()) {
      cells.add(SafeCell.of(row.cell(column).orElse("")));
    }
    cells.add(SafeCell.of(why(judged)));
    return cells;
  }

  private static String why(JudgedRow row) {
    return row.errors().isEmpty()
        ? "Another contribution about this word waits for a decision: %s."
            .formatted(row.waiting().stream().map(String::valueOf).collect(joining(", ")))
        : row.errors().stream().map(ParameterError::detail).collect(joining(" "));
  }
}
