package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.web.http.SafeCell;
import org.hedgerow.web.http.Spreadsheet;

/** A list of words as a table: a row for each pronunciation of each word. */
final class WordTable {

  private static final List<String> HEADER =
      List.of(
          "spelling",
          "status",
          "commonness",
          "syllables",
          "accent",
          "sounds",
          "graphemes",
          "target",
          "picturable",
          "starter");

  private final WordRequest request;
  private final WordList list;

  WordTable(WordRequest request, WordList list) {
    this.request = request;
    this.list = list;
  }

  /** As in RFC 4180. */
  byte[] csv() {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer =
        CSVFormat.RFC4180.builder().setHeader(HEADER.toArray(String[]::new)).get().print(text)) {
      for (List<Object> row : rows((word, red) -> word.spelling())) {
        printer.printRecord(row.stream().map(WordTable::safe).toList());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static Object safe(Object cell) {
    return cell instanceof String text ? SafeCell.of(text) : cell;
  }

  /** As a spreadsheet file, with the phonogram in red. */
  byte[] spreadsheet() {
    return Spreadsheet.of(
        "words", HEADER, rows((word, red) -> RedLetters.of(word.spelling(), red)));
  }

  /**
   * @param spelling the cell of a word with the positions of its target's letters
   */
  private List<List<Object>> rows(BiFunction<Word, List<Integer>, Object> spelling) {
    List<List<Object>> rows = new ArrayList<>();
    for (Word word : list.words()) {
      for (String accent : request.query().accents()) {
        for (Pronunciation each : word.saidIn(accent)) {
          rows.add(row(word, each, spelling));
        }
      }
    }
    return rows;
  }

  private List<Object> row(
      Word word, Pronunciation pronunciation, BiFunction<Word, List<Integer>, Object> spelling) {
    List<Span> spans = pronunciation.alignment().map(Alignment::spans).orElse(List.of());
    List<Span> targets = spans.stream().filter(this::isTarget).toList();
    List<Integer> red = targets.stream().flatMap(span -> span.letters().stream()).toList();
    return List.of(
        spelling.apply(word, red),
        word.status().label(),
        word.commonness(),
        pronunciation.syllables(),
        pronunciation.accent(),
        Sound.spaced(pronunciation.sounds()),
        graphemes(spans),
        graphemes(targets),
        word.picturable().isPresent() ? (Object) word.picturable().getAsInt() : "",
        word.isStarter() ? "yes" : "");
  }

  private boolean isTarget(Span span) {
    return request.query().standard().isTarget(span.correspondence());
  }

  private static String graphemes(List<Span> spans) {
    return spans.stream().map(span -> span.grapheme().text()).collect(joining(" "));
  }
}
