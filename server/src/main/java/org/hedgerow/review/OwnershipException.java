package org.hedgerow.review;

/** Somebody wants to change another's contribution, or to decide on their own. */
public final class OwnershipException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  OwnershipException(String message) {
    super(message);
  }
}
