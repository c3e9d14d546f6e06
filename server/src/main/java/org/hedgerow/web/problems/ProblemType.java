package org.hedgerow.web.problems;

import java.util.Locale;

/**
 * The kinds of problem that a client can tell apart. Their names, once published, stay as they are;
 * each is explained at {@code /docs/problems}.
 */
public enum ProblemType {
  UNKNOWN_PHONOGRAM(400, "There is no such phonogram"),
  UNKNOWN_VALUE(400, "The phonogram has no such value"),
  UNKNOWN_ACCENT(400, "There is no such accent"),
  UNKNOWN_SOUND(400, "There is no such sound"),
  UNKNOWN_SHAPE(400, "There is no such shape"),
  UNKNOWN_RULE(400, "There is no such reading rule"),
  UNKNOWN_SEQUENCE(400, "There is no such sequence, or no such step"),
  UNKNOWN_PARAMETER(400, "There is no such parameter"),
  INVALID_PARAMETER(400, "A parameter has a value that isn't allowed"),
  REPEATED_PARAMETER(400, "A parameter is given more than once"),
  INVALID_CURSOR(400, "This isn't a place in this list"),
  INVALID_WORD(400, "Not a word we can read"),
  TOO_MANY_WORDS(400, "These are too many words at once"),
  INVALID_JSON(400, "The body is no JSON"),
  INVALID_BODY(400, "The JSON in the body isn't what is expected"),
  UNFIT_CONTRIBUTION(400, "The contribution doesn't fit the bank as it is"),
  INVALID_TABLE(400, "This table can't be read"),
  UNUSABLE_PICTURE(400, "No picture can be made of this"),
  BAD_REQUEST(400, "The request can't be understood"),
  NOT_SIGNED_IN(401, "This is only for people who are signed in"),
  NOT_ALLOWED(403, "Your role doesn't allow this"),
  NOT_YOURS(403, "This is for somebody else to do"),
  FORGED_REQUEST(403, "This doesn't come from a page of ours"),
  UNKNOWN_EDITION(404, "There is no such edition"),
  UNKNOWN_WORD(404, "The bank doesn't hold this word"),
  NOT_FOUND(404, "There is nothing here"),
  METHOD_NOT_ALLOWED(405, "This can't be done here"),
  UNSUPPORTED_FORMAT(406, "The answer doesn't come in that format"),
  BODY_TOO_SLOW(408, "The body came too slowly"),
  CONFLICT(409, "This can't be done with the contribution as it is now"),
  STILL_RUNNING(409, "The same request is still being worked on"),
  STALE(412, "The contribution has been changed since you read it"),
  CHANGED_MEANWHILE(412, "It was changed in the meantime"),
  BODY_TOO_LARGE(413, "The body is too large"),
  ADDRESS_TOO_LONG(414, "The address is too long"),
  UNSUPPORTED_MEDIA_TYPE(415, "The body isn't in a format that is read here"),
  KEY_REUSED(422, "The key was used for another request"),
  REVISION_REQUIRED(428, "Say which revision you have read"),
  TOO_MANY_ATTEMPTS(429, "These were too many attempts"),
  HEADERS_TOO_LARGE(431, "The headers are too large"),
  INTERNAL_ERROR(500, "Something went wrong on our side"),
  UNAVAILABLE(503, "The server can't answer just now"),
  STORAGE_FULL(507, "The disk of the server is full");

  private final int status;
  private final String title;

  ProblemType(int status, String title) {
    this.status = status;
    this.title = title;
  }

  /** The HTTP status it usually goes with. */
  public int status() {
    return status;
  }

  /** The same words for every problem of the type. */
  public String title() {
    return title;
  }

  /** The name in references, in lower case with hyphens. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The reference that names it, such as {@code /docs/problems#not-found}. */
  public String reference() {
    return "/docs/problems#" + slug();
  }

  /** The type for an error that somebody else found and gave only a status. */
  static ProblemType ofStatus(int status) {
    return switch (status) {
      case 404 -> NOT_FOUND;
      case 405 -> METHOD_NOT_ALLOWED;
      case 406 -> UNSUPPORTED_FORMAT;
      case 408 -> BODY_TOO_SLOW;
      case 412 -> CHANGED_MEANWHILE;
      case 413 -> BODY_TOO_LARGE;
      case 414 -> ADDRESS_TOO_LONG;
      case 415 -> UNSUPPORTED_MEDIA_TYPE;
      case 431 -> HEADERS_TOO_LARGE;
      case 503 -> UNAVAILABLE;
      case 507 -> STORAGE_FULL;
      default -> status < 500 ? BAD_REQUEST : INTERNAL_ERROR;
    };
  }
}
