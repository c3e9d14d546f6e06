package org.hedgerow.web.needs;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.lexicon.Need;
import org.hedgerow.lexicon.Word;
import org.hedgerow.web.http.SafeCell;

/** What is lacking as CSV (RFC 4180): a line for each value in each accent. */
final class NeedsTable {

  private static final CSVFormat CSV =
      CSVFormat.RFC4180
          .builder()
          .setHeader(
              "phonogram",
              "value",
              "accent",
              "keyWord",
              "words",
              "approved",
              "starter",
              "other",
              "picturable",
              "pictures",
              "sentences",
              "lackingWords",
              "lackingPictures",
              "lackingSentences",
              "candidates",
              "toPicture")
          .get();

  private NeedsTable() {}

  static String of(List<Need> needs) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = CSV.print(text)) {
      for (Need need : needs) {
        print(need, printer);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void print(Need need, CSVPrinter printer) throws IOException {
    printer.printRecord(
        SafeCell.of(need.value().grapheme().text()),
        need.value().value().orElseThrow(),
        need.accent(),
        SafeCell.of(need.value().keyWord()),
        need.words(),
        need.approved(),
        need.starter(),
        need.other(),
        need.picturable(),
        need.pictures(),
        need.sentences(),
        need.lackingWords(),
        need.lackingPictures(),
        need.lackingSentences(),
        SafeCell.of(spellings(need.candidates())),
        SafeCell.of(spellings(need.toPicture())));
  }

  private static String spellings(List<Word> words) {
    return words.stream().map(Word::spelling).collect(joining(" "));
  }
}
