package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.review.WordTables.Judgement;
import org.hedgerow.web.security.RateLimit;
import org.hedgerow.web.security.TooFastException;

/** Many words at once: judged, the good ones sent, the rest given back with reasons. */
final class TablePages {
  private final ReviewPageSupport desk;
  private final WordTables tables;
  private final RateLimit pace;

  TablePages(ReviewPageSupport desk, RateLimit pace) {
    this.desk = desk;
    this.pace = pace;
    this.tables = new WordTables(desk.review().submitMany(), desk.newest());
  }

  void show(Context context) {
    show(context, new PastedWords("", "", ""), List.of(), Optional.empty());
  }

  void judge(Context context) {
    Fields fields = Fields.of(context);
    PastedWords pasted = pasted("", fields);
    boolean submit = fields.text("do").equals("submit");
    try {
      pasted = pasted(text(context), fields);
      pace.count(context);
      Judgement judgement = tables.judge(desk.actor(context), pasted.csv(), submit);
      if (fields.text("do").equals("rest")) {
        download(context, judgement.refused());
      } else {
        show(context, pasted, List.of(), Optional.of(judgement));
      }
    } catch (TooFastException tooFast) {
      context.status(429);
      List<String> errors = List.of(String.valueOf(tooFast.getMessage()));
      show(context, pasted, errors, Optional.empty());
    } catch (InvalidQueryException unreadable) {
      context.status(400);
      show(
          context,
          pasted,
          unreadable.errors().stream().map(ValidationError::message).toList(),
          Optional.empty());
    }
  }

  private static PastedWords pasted(String text, Fields fields) {
    return new PastedWords(text, fields.text("accent"), fields.text("wantedFor"));
  }

  /** A file that was chosen stands for what was pasted. */
  private static String text(Context context) {
    return Optional.of(context)
        .filter(Context::isMultipartFormData)
        .flatMap(form -> Optional.ofNullable(form.uploadedFile("file")))
        .filter(file -> file.size() > 0)
        .map(TablePages::text)
        .orElseGet(() -> Optional.ofNullable(context.formParam("words")).orElse(""));
  }

  private static String text(UploadedFile file) {
    try (InputStream content = file.content()) {
      return WordTables.text(content.readNBytes(WordTables.MAX_BYTES + 1));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static void download(Context context, String csv) {
    context
        .header(Header.CONTENT_DISPOSITION, "attachment; filename=\"to-correct.csv\"")
        .contentType("text/csv; charset=utf-8")
        .result(csv);
  }

  private void show(
      Context context, PastedWords pasted, List<String> errors, Optional<Judgement> judgement) {
    Lexicon lexicon = desk.newest().get();
    List<WordTables.Row> rows = judgement.map(Judgement::rows).orElse(List.of());
    desk.show(
        context,
        "review/table.jte",
        new TablePage(
            desk.token(context),
            pasted.text(),
            accents(lexicon, pasted.accent()),
            new ValueOptions(lexicon).options("Nothing in particular", pasted.wantedFor()),
            errors,
            rows.stream().map(row -> row(row, lexicon)).toList(),
            (int) rows.stream().filter(WordTables.Row::good).count(),
            (int) rows.stream().filter(row -> row.contribution().isPresent()).count()));
  }

  private static List<Option> accents(Lexicon lexicon, String chosen) {
    return lexicon.accents().stream()
        .map(AccentCatalogue::accent)
        .map(each -> Option.of(each.tag(), each.name(), chosen))
        .toList();
  }

  private static TablePage.Row row(WordTables.Row row, Lexicon lexicon) {
    boolean sent = row.contribution().isPresent();
    String verdict = !row.good() ? "fail" : row.certain() ? "pass" : "look";
    return new TablePage.Row(
        row.number(),
        row.spelling(),
        verdict,
        sent ? "Sent" : row.good() ? "Can be sent" : "Not as it is",
        row.sounds().isEmpty() ? "" : "/" + row.sounds() + "/" + (row.guessed() ? ", a guess" : ""),
        row.remarks(),
        row.good()
            ? String.join(
                ", ", row.serves().stream().map(new ValueOptions(lexicon)::words).toList())
            : "",
        row.contribution().orElse(0));
  }
}
