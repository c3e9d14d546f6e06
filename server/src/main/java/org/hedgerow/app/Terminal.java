package org.hedgerow.app;

/** Whether the program runs in a terminal that can move its cursor. */
final class Terminal {
  private Terminal() {}

  @SuppressWarnings("SystemConsoleNull") // The plain console is asked for below.
  static boolean isWatched() {
    return System.console() != null && !"dumb".equals(System.getenv("TERM"));
  }

  /**
   * From Java 22 on there is a console even where input and output are files, unless the one of old
   * is asked for.
   */
  static void askForThePlainConsole() {
    System.setProperty("jdk.console", "java.base");
  }
}
