package org.hedgerow.app;

/** The settings file can't be used. The message says why, in one line. */
final class UnusableSettingsException extends Exception {
  private static final long serialVersionUID = 1L;

  UnusableSettingsException(String message) {
    super(message);
  }
}
