package org.hedgerow.web.http;

import static java.util.stream.Collectors.joining;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.RichText;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Tables as spreadsheet files (Office Open XML, ECMA-376). Texts are always texts, so that no cell
 * is taken for a formula. The same table is the same file, whenever it is written.
 */
public final class Spreadsheet {
  private static final String PROPERTIES = "docProps/core.xml";
  private static final int PADDING = 3;
  private static final int MAX_WIDTH = 60;
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private Spreadsheet() {}

  /**
   * @param sheet what the sheet is called
   * @param rows each with as many cells as the header; a cell is a number, a text, or a text with
   *     colours ({@link RichText})
   */
  public static byte[] of(String sheet, List<String> header, List<List<Object>> rows) {
    try {
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      try (Workbook workbook = new Workbook(file, "Hedgerow", null)) {
        fill(workbook.newWorksheet(sheet), header, rows);
      }
      return withoutTime(file.toByteArray());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void fill(Worksheet sheet, List<String> header, List<List<Object>> rows) {
    for (int column = 0; column < header.size(); column++) {
      sheet.value(0, column, header.get(column));
      sheet.width(column, width(header.get(column), rows, column));
    }
    sheet.range(0, 0, 0, header.size() - 1).style().bold().set();
    sheet.freezePane(0, 1);
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < header.size(); column++) {
        write(sheet, row + 1, column, rows.get(row).get(column));
      }
    }
  }

  /** In characters. */
  private static int width(String heading, List<List<Object>> rows, int column) {
    int longest = rows.stream().mapToInt(row -> text(row.get(column)).length()).max().orElse(0);
    return Math.min(Math.max(heading.length(), longest) + PADDING, MAX_WIDTH);
  }

  private static String text(Object cell) {
    return cell instanceof RichText coloured
        ? coloured.getRuns().stream().map(RichText.Run::getText).collect(joining())
        : cell.toString();
  }

  private static void write(Worksheet sheet, int row, int column, Object cell) {
    if (cell instanceof Number number) {
      sheet.value(row, column, number);
    } else if (cell instanceof RichText coloured) {
      sheet.inlineString(row, column, coloured);
    } else {
      sheet.inlineString(row, column, cell.toString());
    }
  }

  /** The library writes the present into the properties and the entries of the archive. */
  private static byte[] withoutTime(byte[] file) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream(file.length);
    try (ZipFile from =
            ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(file)).get();
        ZipOutputStream to = new ZipOutputStream(copy)) {
      for (ZipArchiveEntry part : Collections.list(from.getEntries())) {
        ZipEntry same = new ZipEntry(part.getName());
        same.setTimeLocal(NO_TIME);
        to.putNextEntry(same);
        byte[] content = from.getInputStream(part).readAllBytes();
        to.write(part.getName().equals(PROPERTIES) ? withoutCreation(content) : content);
      }
    }
    return copy.toByteArray();
  }

  private static byte[] withoutCreation(byte[] properties) {
    return new String(properties, StandardCharsets.UTF_8)
        .replaceFirst("<dcterms:created.*?</dcterms:created>", "")
        .getBytes(StandardCharsets.UTF_8);
  }
}
