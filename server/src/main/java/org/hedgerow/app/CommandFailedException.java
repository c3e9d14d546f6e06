package org.hedgerow.app;

/** A command can't do what it was asked. The message is one line for the person who ran it. */
final class CommandFailedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CommandFailedException(String message) {
    super(message);
  }
}
