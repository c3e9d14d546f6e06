package org.hedgerow.web.phonograms;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.web.http.SafeCell;

/** All phonograms as CSV (RFC 4180): a line for each value. */
final class PhonogramTable {

  private static final CSVFormat CSV =
      CSVFormat.RFC4180
          .builder()
          .setHeader(
              "phonogram",
              "value",
              "accent",
              "sound",
              "class",
              "keyWord",
              "words",
              "approved",
              "starter",
              "other",
              "picturable",
              "pictures",
              "note")
          .get();

  private PhonogramTable() {}

  static String of(PhonogramsView view) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = CSV.print(text)) {
      for (PhonogramsView.Phonogram phonogram : view.phonograms()) {
        for (PhonogramsView.Value value : phonogram.values()) {
          print(view.accent(), phonogram.grapheme(), value, printer);
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void print(
      String accent, String grapheme, PhonogramsView.Value value, CSVPrinter printer)
      throws IOException {
    PhonogramsView.Words words = value.words();
    printer.printRecord(
        SafeCell.of(grapheme),
        value.value(),
        accent,
        SafeCell.of(value.sound()),
        value.kind(),
        SafeCell.of(value.keyWord()),
        words.total(),
        words.approved(),
        words.starter(),
        words.other(),
        words.picturable(),
        words.pictures(),
        SafeCell.of(value.note()));
  }
}
