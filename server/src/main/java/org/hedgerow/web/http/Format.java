package org.hedgerow.web.http;

import java.util.Locale;

/** The formats that answers come in. */
public enum Format {
  JSON("application/json"),
  CSV("text/csv;charset=utf-8"),
  NDJSON("application/x-ndjson"),
  TEXT("text/plain;charset=utf-8"),
  XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

  private final String contentType;

  Format(String contentType) {
    this.contentType = contentType;
  }

  /** The name in queries, in lower case. */
  String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it is read into a table or a file, and so comes whole. */
  boolean isTable() {
    return this != JSON;
  }

  /** The whole header, with the character set where the type needs one. */
  public String contentType() {
    return contentType;
  }

  /** What nobody sees: only formats that are offered are chosen. */
  public IllegalStateException notOffered() {
    return new IllegalStateException("%s is not among the formats".formatted(label()));
  }

  /** As in {@code text/csv}. */
  String mediaType() {
    return contentType.split(";", 2)[0];
  }
}
