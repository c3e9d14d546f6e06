package org.hedgerow.web.review;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.review.WordLabels;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/** Makes proposals of the rows of a table: each a new word. */
final class RowReader {
  /** Stays with the contribution, so that nobody takes a guess for knowledge. */
  private static final String GUESSED = "How it is said is the bank’s guess.";

  private final Lexicon lexicon;

  RowReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  ReadRow read(TableRow row) {
    ValidationErrors errors = ValidationErrors.ofBody();
    String spelling = spelling(row.cell(Column.SPELLING).orElse(""));
    String accent =
        row.cell(Column.ACCENT).orElseGet(() -> lexicon.accents().get(0).accent().tag());
    Optional<String> given = row.cell(Column.SOUNDS);
    String sounds = given.orElseGet(() -> guess(spelling, accent));
    boolean guessed = given.isEmpty() && !sounds.isEmpty();
    if (sounds.isEmpty() && isWord(spelling) && lexicon.accent(accent).isPresent()) {
      errors.invalid(
          Column.SOUNDS.label(),
          "How %s is said can’t be guessed from its letters. Give its sounds."
              .formatted(Quoted.of(spelling)));
    }
    WordLabels labels = labels(row, errors);
    ProposalContext frame = frame(row, guessed, errors);
    NewWord word =
        new NewWord(
            spelling, List.of(new ProposedPronunciation(accent, sounds, List.of())), labels);
    return new ReadRow(
        row,
        errors.isEmpty() ? Optional.of(frame.around(word)) : Optional.empty(),
        accent,
        sounds,
        guessed,
        errors.list().stream().map(ValidationError::error).toList());
  }

  /** Spreadsheets begin cells with a capital. */
  private static String spelling(String typed) {
    return typed.matches("[A-Za-z]+") ? typed.toLowerCase(Locale.ROOT) : typed;
  }

  private static boolean isWord(String spelling) {
    return spelling.matches("[a-z]{1,40}");
  }

  private String guess(String spelling, String accent) {
    return isWord(spelling) && lexicon.accent(accent).isPresent()
        ? lexicon.guess(spelling, accent).map(each -> Sound.spaced(each.sounds())).orElse("")
        : "";
  }

  private static WordLabels labels(TableRow row, ValidationErrors errors) {
    return new WordLabels(
        level(row, Column.COMMONNESS, errors),
        level(row, Column.PICTURABLE, errors),
        row.cell(Column.PARTS_OF_SPEECH)
            .map(cell -> Arrays.asList(cell.toLowerCase(Locale.ROOT).split("[,;/|\\s]+")))
            .orElse(List.of()),
        List.of(),
        Optional.empty());
  }

  private static Optional<Integer> level(TableRow row, Column column, ValidationErrors errors) {
    Optional<String> cell = row.cell(column);
    if (cell.isPresent() && !cell.get().matches("[0-9]")) {
      errors.invalid(
          column.label(),
          "%s must be a number, not %s.".formatted(column.label(), Quoted.of(cell.get())));
      return Optional.empty();
    }
    return cell.map(Integer::valueOf);
  }

  private ProposalContext frame(TableRow row, boolean guessed, ValidationErrors errors) {
    String note = row.cell(Column.NOTE).orElse("");
    return ProposalContext.read(
        lexicon,
        row.cell(Column.WANTED_FOR).orElse(""),
        Column.WANTED_FOR.label(),
        guessed ? (GUESSED + " " + note).strip() : note,
        Column.NOTE.label(),
        errors);
  }
}
