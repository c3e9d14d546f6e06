package org.hedgerow.app;

import java.io.PrintWriter;

/** Shows a person how far a piece of work is that takes a while. */
interface Progress extends AutoCloseable {

  /**
   * @param work what is done to words, as in {@code Filling the word bank}
   * @param words how many there are
   * @param stepsEach how many steps each of them takes
   * @param lines where lines go if no person watches in a terminal
   */
  static Progress of(String work, int words, int stepsEach, PrintWriter lines) {
    return Terminal.isWatched()
        ? new ProgressOnScreen(work, words, stepsEach)
        : new ProgressInLines(work, (long) words * stepsEach, lines);
  }

  /** One step is done. Any thread may say so. */
  void step();

  @Override
  void close();
}
