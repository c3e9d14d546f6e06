package org.hedgerow.app;

import org.jspecify.annotations.Nullable;

/** How much memory the words of a bank need, and what to do where there is too little. */
final class MemoryCheck {
  private static final long MEGABYTE = 1L << 20;

  /** Measured with the bundled lexicon, which 192 MB are too little to fill a bank with. */
  private static final long TO_FILL = 200 * MEGABYTE;

  /** Likewise; a bank that is filled is served with 176 MB. */
  private static final long TO_SERVE = 160 * MEGABYTE;

  private MemoryCheck() {}

  /**
   * @throws CommandFailedException if Java may use less than filling a bank takes
   */
  static void requireToFill() {
    require(TO_FILL);
  }

  /**
   * @throws CommandFailedException if Java may use less than serving a bank takes
   */
  static void requireToServe() {
    require(TO_SERVE);
  }

  private static void require(long needed) {
    long allowed = Runtime.getRuntime().maxMemory();
    if (allowed < needed) {
      throw new CommandFailedException(tooLittle(allowed));
    }
  }

  /** What to say where memory ran out. */
  static String exhausted() {
    return tooLittle(Runtime.getRuntime().maxMemory());
  }

  private static String tooLittle(long allowed) {
    return "There isn't enough memory: Java may use %d MB here. Allow it 256 MB or more, as in: java -Xmx256m -jar hedgerow.jar"
        .formatted(allowed / MEGABYTE);
  }

  /** Whether a failure comes from memory that ran out. */
  static boolean isExhaustedIn(Throwable failure) {
    for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof OutOfMemoryError) {
        return true;
      }
    }
    return false;
  }
}
