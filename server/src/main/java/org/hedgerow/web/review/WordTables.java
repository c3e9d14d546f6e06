package org.hedgerow.web.review;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.problems.ParameterError;

/** Tables of new words, for whoever doesn't ask over HTTP. */
final class WordTables {
  /** The most that is read, in bytes. */
  public static final int MAX_BYTES = 1_000_000;

  private final SubmitMany submitMany;
  private final Supplier<Lexicon> newest;

  public WordTables(SubmitMany submitMany, Supplier<Lexicon> newest) {
    this.submitMany = submitMany;
    this.newest = newest;
  }

  /**
   * A row judged.
   *
   * @param number as a spreadsheet counts, the names of the columns being in the first
   * @param accent its tag
   * @param good whether it can be submitted
   * @param certain whether nothing asks for a second look
   * @param remarks why it can't, or what a person should look at
   * @param serves labels of phonogram values whose lists would gain by it
   * @param contribution its number, where it was submitted
   */
  public record Row(
      int number,
      String spelling,
      String accent,
      String sounds,
      boolean guessed,
      boolean good,
      boolean certain,
      List<String> remarks,
      List<String> serves,
      OptionalInt contribution) {
    public Row {
      remarks = List.copyOf(remarks);
      serves = List.copyOf(serves);
    }
  }

  /**
   * A table judged.
   *
   * @param refused the rows that can't be submitted, as CSV, with a column that says why
   */
  public record Judgement(List<Row> rows, String refused) {
    public Judgement {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param submit whether the good ones are submitted, rather than only judged
   * @throws org.hedgerow.web.query.InvalidQueryException if it is no such table
   */
  public Judgement judge(Actor actor, byte[] csv, boolean submit) {
    Table table = new TableReader().read(csv);
    RowReader reader = new RowReader(newest.get());
    List<ReadRow> rows = table.rows().stream().map(reader::read).toList();
    List<JudgedRow> judged = new TableJudge(submitMany, actor).judge(rows, submit);
    return new Judgement(
        judged.stream().map(WordTables::row).toList(), RefusedRows.of(table, judged));
  }

  /**
   * The text of a file.
   *
   * @throws org.hedgerow.web.query.InvalidQueryException if it is too large, or not in UTF-8
   */
  public static String text(byte[] file) {
    return new TableReader().text(file);
  }

  private static Row row(JudgedRow judged) {
    return new Row(
        judged.row(),
        judged.spelling(),
        judged.accent(),
        judged.sounds(),
        judged.guessed(),
        judged.isGood(),
        judged.verdict().equals(RowVerdict.READY.label()),
        remarks(judged),
        judged.serves(),
        judged.contribution());
  }

  private static List<String> remarks(JudgedRow judged) {
    if (!judged.errors().isEmpty()) {
      return judged.errors().stream().map(ParameterError::detail).toList();
    }
    return judged.isGood()
        ? judged.findings().stream().map(ContributionFindingView::message).distinct().toList()
        : List.of("Another contribution about this word waits for a decision.");
  }
}
