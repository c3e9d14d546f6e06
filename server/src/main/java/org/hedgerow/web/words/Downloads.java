package org.hedgerow.web.words;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.RichText;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Spreadsheet;
import org.hedgerow.web.page.ShownWord;

/** Whole lists as files, for a teacher's own computer; programs have the HTTP interface. */
public final class Downloads {

  /** Without this mark spreadsheet programs misread the phonetic alphabet. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final List<String> HEADER =
      List.of("word", "phonogram", "letters", "sounds", "syllables", "commonness");

  private final Editions editions;

  public Downloads(Editions editions) {
    this.editions = editions;
  }

  public void text(Context context) {
    PageQuestion question = PageQuestion.of(context.queryParamMap());
    Lexicon lexicon = question.edition(editions);
    WordRequest request = question.request(lexicon);
    String lines =
        WordList.all(lexicon, request).stream()
            .map(word -> word.spelling() + "\n")
            .collect(Collectors.joining());
    answer(context, "text/plain; charset=utf-8", name(request) + ".txt", lines);
  }

  public void csv(Context context) {
    PageQuestion question = PageQuestion.of(context.queryParamMap());
    Lexicon lexicon = question.edition(editions);
    WordRequest request = question.request(lexicon);
    StringWriter text = new StringWriter();
    try (CSVPrinter printer =
        CSVFormat.RFC4180.builder().setHeader(HEADER.toArray(String[]::new)).get().print(text)) {
      for (Word word : WordList.all(lexicon, request)) {
        printer.printRecord(row(word.spelling(), word, request));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    answer(context, "text/csv; charset=utf-8", name(request) + ".csv", BYTE_ORDER_MARK + text);
  }

  public void spreadsheet(Context context) {
    PageQuestion question = PageQuestion.of(context.queryParamMap());
    Lexicon lexicon = question.edition(editions);
    WordRequest request = question.request(lexicon);
    List<List<Object>> rows =
        WordList.all(lexicon, request).stream()
            .map(word -> row(coloured(word, request), word, request))
            .toList();
    attach(context, Format.XLSX.contentType(), name(request) + ".xlsx")
        .result(Spreadsheet.of("words", HEADER, rows));
  }

  private static RichText coloured(Word word, WordRequest request) {
    return RedLetters.of(
        word.spelling(), shown(word, request).targetLetters(request.query().standard()));
  }

  private static ShownWord shown(Word word, WordRequest request) {
    return ShownWord.of(word, request.query().accents().get(0));
  }

  /**
   * @param spelling the first cell
   */
  private static List<Object> row(Object spelling, Word word, WordRequest request) {
    ShownWord shown = shown(word, request);
    List<Span> spans = shown.alignment().map(Alignment::spans).orElse(List.of());
    List<Span> targets =
        spans.stream()
            .filter(span -> request.query().standard().isTarget(span.correspondence()))
            .toList();
    String sounds = shown.alignment().map(each -> Sound.spaced(each.sounds())).orElse("");
    return List.of(
        spelling,
        graphemes(targets),
        graphemes(spans),
        sounds,
        word.syllables(),
        word.commonness());
  }

  private static String graphemes(List<Span> spans) {
    return spans.stream().map(span -> span.grapheme().text()).collect(Collectors.joining(" "));
  }

  /** As in {@code oo-2-wool}; letters, digits and hyphens only. */
  private static String name(WordRequest request) {
    return request
        .phonogram()
        .map(
            value ->
                "%s-%d-%s"
                    .formatted(value.grapheme(), value.value().orElseThrow(), value.keyWord()))
        .or(() -> request.query().shape().map(shape -> shape + "-words"))
        .orElse("words");
  }

  private static void answer(Context context, String mediaType, String name, String text) {
    attach(context, mediaType, name).result(text);
  }

  private static Context attach(Context context, String mediaType, String name) {
    return context
        .header(Header.CONTENT_DISPOSITION, "attachment; filename=\"%s\"".formatted(name))
        .header(Header.CACHE_CONTROL, "no-cache")
        .contentType(mediaType);
  }
}
