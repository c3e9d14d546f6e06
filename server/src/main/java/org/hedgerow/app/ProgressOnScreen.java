package org.hedgerow.app;

import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarStyle;

/** A bar that grows in the terminal. */
final class ProgressOnScreen implements Progress {
  private static final int REDRAW_MILLISECONDS = 200;

  private final ProgressBar bar;

  ProgressOnScreen(String work, int words, int stepsEach) {
    this.bar =
        ProgressBar.builder()
            .setTaskName(work)
            .setInitialMax((long) words * stepsEach)
            .setUnit(" words", stepsEach)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(REDRAW_MILLISECONDS)
            .build();
  }

  @Override
  public void step() {
    bar.step();
  }

  @Override
  public void close() {
    bar.close();
  }
}
