package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.LimitedBody;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;

/** {@code POST /contribution-tables}: many new words at once. */
final class ContributionTables {
  static final List<String> PARAMETERS = List.of("submit");

  private static final String CSV = "text/csv";
  private static final LimitedBody BODY =
      new LimitedBody(WordTables.MAX_BYTES, TableReader.TOO_LARGE);

  private final SubmitMany submitMany;
  private final Supplier<Lexicon> newest;

  ContributionTables(SubmitMany submitMany, Supplier<Lexicon> newest) {
    this.submitMany = submitMany;
    this.newest = newest;
  }

  /**
   * The table judged.
   *
   * @param submitted how many contributions were made of it
   * @param counts of the rows by verdict
   */
  record View(int submitted, Map<String, Integer> counts, List<JudgedRow> rows) {
    static View of(List<JudgedRow> rows) {
      Map<String, Integer> counts = new LinkedHashMap<>();
      for (RowVerdict verdict : RowVerdict.values()) {
        counts.put(verdict.label(), 0);
      }
      rows.forEach(row -> counts.merge(row.verdict(), 1, Integer::sum));
      int submitted = (int) rows.stream().filter(row -> row.contribution().isPresent()).count();
      return new View(submitted, counts, rows);
    }
  }

  static byte[] payload(Context context) {
    return BODY.read(context);
  }

  void judge(ApiRequest request) {
    boolean submit = submit(request.parameters());
    request.parameters().errors().throwIfAny();
    requireCsv(request);
    Table table = new TableReader().read(payload(request.context()));
    RowReader reader = new RowReader(newest.get());
    List<ReadRow> rows = table.rows().stream().map(reader::read).toList();
    List<JudgedRow> judged = new TableJudge(submitMany, request.actor()).judge(rows, submit);
    if (request.format() == Format.CSV) {
      request.context().contentType(Format.CSV.contentType()).result(RefusedRows.of(table, judged));
    } else {
      request.context().json(View.of(judged));
    }
  }

  private static boolean submit(Parameters parameters) {
    Optional<String> text = parameters.text("submit");
    if (text.filter(value -> !List.of("true", "false").contains(value)).isPresent()) {
      parameters
          .errors()
          .invalid(
              "submit", "submit must be true or false, not %s.".formatted(Quoted.of(text.get())));
    }
    return text.filter("true"::equals).isPresent();
  }

  private static void requireCsv(ApiRequest request) {
    String type = String.valueOf(request.context().contentType()).split(";", 2)[0].strip();
    if (!type.toLowerCase(Locale.ROOT).equals(CSV)) {
      throw Problem.of(
              ProblemType.UNSUPPORTED_MEDIA_TYPE,
              "Send a table, with the header Content-Type: text/csv.")
          .exception();
    }
  }
}
