package org.hedgerow.seedlexicon;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads a tab-separated table: UTF-8, {@code #} comments on top of which the last names the
 * columns, no quoting. Every error names the file and the line.
 */
final class TsvReader {
  private final String file;
  private @Nullable TsvHeader header;
  private String lastComment = "";
  private int line;

  private TsvReader(String file) {
    this.file = file;
  }

  /** All rows of a table, each made into a value. */
  static <R> List<R> read(String file, byte[] content, Function<TsvRow, R> toValue) {
    return new TsvReader(file).rows(content, toValue);
  }

  private <R> List<R> rows(byte[] content, Function<TsvRow, R> toValue) {
    List<R> values = new ArrayList<>();
    try (BufferedReader reader = open(content)) {
      for (String text = reader.readLine(); text != null; text = reader.readLine()) {
        line++;
        if (text.startsWith("#")) {
          lastComment = text;
        } else if (!text.isBlank()) {
          values.add(toValue.apply(row(text)));
        }
      }
    } catch (CharacterCodingException e) {
      throw DamagedSeedException.malformed(file, line + 1, "which is not UTF-8");
    } catch (IOException e) {
      throw new UncheckedIOException("Reading from memory cannot fail", e);
    }
    return Collections.unmodifiableList(values);
  }

  /**
   * A decoder that reports bad bytes, where {@code new InputStreamReader(…, UTF_8)} would replace
   * them.
   */
  private static BufferedReader open(byte[] content) {
    return new BufferedReader(
        new InputStreamReader(new ByteArrayInputStream(content), UTF_8.newDecoder()));
  }

  private TsvRow row(String text) {
    if (header == null) {
      header = TsvHeader.parse(lastComment);
    }
    return TsvRow.parse(file, line, header, text);
  }
}
