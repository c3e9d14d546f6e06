package org.hedgerow.web.review;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.http.SafeCell;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/**
 * Reads CSV as spreadsheets write it: with a byte order mark or not, with commas, semicolons or
 * tabs between the cells, with either kind of line end. What can't be read without guessing is
 * refused.
 */
final class TableReader {
  private static final String MARK = "\uFEFF";
  private static final String TABLE = "table";

  static final String TOO_LARGE =
      "A table may have at most a million bytes. Send it in several parts.";

  private final ValidationErrors errors = ValidationErrors.ofBody();

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException naming each row that can't be read
   */
  Table read(byte[] bytes) {
    String text = text(bytes);
    try (CSVParser parser = format(text).parse(new StringReader(text))) {
      Table table = table(parser.iterator());
      errors.throwIfAny();
      return table;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } catch (UncheckedIOException | IllegalStateException malformed) {
      throw quotes(malformed);
    }
  }

  /**
   * @throws org.hedgerow.web.query.InvalidQueryException if it is too large, or not in UTF-8
   */
  String text(byte[] bytes) {
    if (bytes.length > WordTables.MAX_BYTES) {
      throw refused(TABLE, TOO_LARGE);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.indexOf('\0') >= 0) {
        throw refused(
            TABLE, "The table has characters in it that aren't text. Save it as CSV, in UTF-8.");
      }
      return text.startsWith(MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException other) {
      throw refused(TABLE, "The table isn't in UTF-8. Save it once more as “CSV UTF-8”.");
    }
  }

  private static CSVFormat format(String text) {
    String header = text.lines().findFirst().orElse("");
    char delimiter = header.indexOf(';') >= 0 ? ';' : header.indexOf('\t') >= 0 ? '\t' : ',';
    return CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
  }

  private Table table(Iterator<CSVRecord> records) {
    List<Column> columns = records.hasNext() ? columns(records.next()) : List.of();
    if (columns.isEmpty()) {
      throw refused(
          TABLE,
          "The table is empty. Its first row names the columns, of which there are %s."
              .formatted(Column.all()));
    }
    List<TableRow> rows = new ArrayList<>();
    while (records.hasNext()) {
      row(columns, records.next()).ifPresent(rows::add);
      if (rows.size() > SubmitMany.MAX) {
        throw refused(
            TABLE,
            "There are more than %,d words. Send them in several tables."
                .formatted(SubmitMany.MAX));
      }
    }
    if (rows.isEmpty() && errors.isEmpty()) {
      throw refused(TABLE, "There are no words below the names of the columns.");
    }
    return new Table(columns, rows);
  }

  private List<Column> columns(CSVRecord header) {
    if (isBlank(header)) {
      return List.of();
    }
    List<Column> columns = new ArrayList<>();
    for (String name : header) {
      Optional<Column> column = Column.named(name);
      if (column.isEmpty()) {
        error(
            "row 1",
            "There is no column %s. There are %s.".formatted(Quoted.of(name), Column.all()));
      } else if (columns.contains(column.get())) {
        error("row 1", "The column %s is there twice.".formatted(column.get().label()));
      } else {
        columns.add(column.get());
      }
    }
    if (errors.isEmpty() && !columns.contains(Column.SPELLING)) {
      error("row 1", "There is no column spelling. The first row must name the columns.");
    }
    errors.throwIfAny();
    return columns;
  }

  /** Spreadsheets write rows of empty cells; they say nothing. */
  private Optional<TableRow> row(List<Column> columns, CSVRecord record) {
    int number = (int) record.getRecordNumber();
    if (isBlank(record)) {
      return Optional.empty();
    }
    if (record.size() != columns.size()) {
      error(
          "row " + number,
          "Row %d has %d cells, but there are %d columns. Put quotation marks around a cell that has a separator in it."
              .formatted(number, record.size(), columns.size()));
      return Optional.empty();
    }
    Map<Column, String> cells = new EnumMap<>(Column.class);
    for (int i = 0; i < columns.size(); i++) {
      String cell = SafeCell.original(record.get(i).strip());
      if (!cell.isEmpty()) {
        cells.put(columns.get(i), cell);
      }
    }
    return Optional.of(new TableRow(number, cells));
  }

  private static boolean isBlank(CSVRecord record) {
    return StreamSupport.stream(record.spliterator(), false).allMatch(String::isBlank);
  }

  private RuntimeException quotes(RuntimeException malformed) {
    String message = String.valueOf(malformed.getMessage());
    String line = message.replaceAll("(?s).*line:? ?\\(?(\\d+).*", "$1");
    String place = line.matches("\\d+") ? "line " + line : TABLE;
    return refused(
        place,
        "The quotation marks of %s don't match. Write each one inside a quoted cell twice."
            .formatted(place));
  }

  private RuntimeException refused(String place, String message) {
    error(place, message);
    errors.throwIfAny();
    return new IllegalStateException(message);
  }

  private void error(String place, String message) {
    errors.add(ValidationError.of(ProblemType.INVALID_TABLE, place, message));
  }
}
