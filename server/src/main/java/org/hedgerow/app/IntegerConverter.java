package org.hedgerow.app;

import picocli.CommandLine.TypeConversionException;

/** Reads numbers on the command line, with a message that needs no knowledge of Java. */
final class IntegerConverter {
  private IntegerConverter() {}

  static Integer read(String text) {
    try {
      return Integer.valueOf(text.strip());
    } catch (NumberFormatException problem) {
      throw new TypeConversionException("'%s' is not a whole number".formatted(text));
    }
  }
}
