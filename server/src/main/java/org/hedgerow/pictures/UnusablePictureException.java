package org.hedgerow.pictures;

/** A file that can't become a picture of the bank. Its message tells a teacher what to do. */
public final class UnusablePictureException extends IllegalArgumentException {

  private static final long serialVersionUID = 1;

  public UnusablePictureException(String message) {
    super(message);
  }

  UnusablePictureException(String message, Throwable cause) {
    super(message, cause);
  }
}
