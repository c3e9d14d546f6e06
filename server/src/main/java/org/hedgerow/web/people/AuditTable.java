package org.hedgerow.web.people;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.SafeCell;

/** The record of what was done as CSV (RFC 4180), before and after as JSON in a cell each. */
record AuditTable(Json json) {
  private static final CSVFormat CSV =
      CSVFormat.RFC4180
          .builder()
          .setHeader("id", "at", "actor", "action", "subject", "before", "after")
          .get();

  String of(List<AuditView.Entry> records) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = CSV.print(text)) {
      for (AuditView.Entry record : records) {
        print(record, printer);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private void print(AuditView.Entry record, CSVPrinter printer) throws IOException {
    printer.printRecord(
        record.id(),
        record.at(),
        SafeCell.of(record.actor()),
        SafeCell.of(record.action()),
        SafeCell.of(record.subject()),
        SafeCell.of(json.text(record.before())),
        SafeCell.of(json.text(record.after())));
  }
}
