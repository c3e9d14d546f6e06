package org.hedgerow.store.archive;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import org.jspecify.annotations.Nullable;

/** Reads the lines of a file of an archive, none of which may be longer than a limit. */
final class BoundedLines implements AutoCloseable {
  private final String file;
  private final int maxLength;
  private final BufferedReader reader;
  private long number;

  /**
   * @param file its name, for messages
   * @param maxLength of a line, in characters
   */
  BoundedLines(String file, InputStream in, int maxLength) {
    this.file = file;
    this.maxLength = maxLength;
    this.reader = new BufferedReader(new InputStreamReader(in, UTF_8));
  }

  /** Null at the end. */
  @Nullable String next() throws IOException {
    StringBuilder line = new StringBuilder();
    int sign = reader.read();
    if (sign < 0) {
      return null;
    }
    number++;
    for (; sign >= 0 && sign != '\n'; sign = reader.read()) {
      if (line.length() == maxLength) {
        throw UnusableArchiveException.at(
            file, number, "is longer than %,d characters".formatted(maxLength));
      }
      line.append((char) sign);
    }
    return line.toString();
  }

  /** That of the line which was read last; the first has 1. */
  long number() {
    return number;
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
