package org.hedgerow.web;

/**
 * The server can't listen. The message is one line for the person who started it: what is wrong and
 * what to do.
 */
public final class ListeningException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ListeningException(String message, Throwable cause) {
    super(message, cause);
  }
}
