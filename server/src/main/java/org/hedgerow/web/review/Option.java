package org.hedgerow.web.review;

/**
 * One of several that can be chosen.
 *
 * @param value as the form sends it
 * @param text as people see it
 */
record Option(String value, String text, boolean chosen) {
  static Option of(String value, String text, String chosen) {
    return new Option(value, text, value.equals(chosen));
  }
}
