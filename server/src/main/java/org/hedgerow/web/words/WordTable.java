package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.web.http.SafeCell;

/** A list of words as CSV (RFC 4180): a line for each pronunciation of each word. */
final class WordTable {

  private static final CSVFormat CSV =
      CSVFormat.RFC4180
          .builder()
          .setHeader(
              "spelling",
              "status",
              "commonness",
              "syllables",
              "accent",
              "sounds",
              "graphemes",
              "target",
              "picturable",
              "starter")
          .get();

  private final WordRequest request;
  private final CSVPrinter printer;

  private WordTable(WordRequest request, CSVPrinter printer) {
    this.request = request;
    this.printer = printer;
  }

  static String of(WordRequest request, WordList list) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = CSV.print(text)) {
      WordTable table = new WordTable(request, printer);
      for (Word word : list.words()) {
        table.print(word);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private void print(Word word) throws IOException {
    for (String accent : request.query().accents()) {
      for (Pronunciation each : word.saidIn(accent)) {
        print(word, each);
      }
    }
  }

  private void print(Word word, Pronunciation pronunciation) throws IOException {
    List<Span> spans = pronunciation.alignment().map(Alignment::spans).orElse(List.of());
    printer.printRecord(
        SafeCell.of(word.spelling()),
        word.status().label(),
        word.commonness(),
        pronunciation.syllables(),
        pronunciation.accent(),
        SafeCell.of(Sound.spaced(pronunciation.sounds())),
        SafeCell.of(graphemes(spans)),
        SafeCell.of(graphemes(spans.stream().filter(this::isTarget).toList())),
        picturable(word),
        word.isStarter() ? "yes" : "");
  }

  private static String picturable(Word word) {
    return word.picturable().isPresent() ? String.valueOf(word.picturable().getAsInt()) : "";
  }

  private boolean isTarget(Span span) {
    return request.query().standard().isTarget(span.correspondence());
  }

  private static String graphemes(List<Span> spans) {
    return spans.stream().map(span -> span.grapheme().text()).collect(joining(" "));
  }
}
