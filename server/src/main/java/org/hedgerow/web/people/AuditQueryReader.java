package org.hedgerow.web.people;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.accounts.AuditQuery;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;

/** Reads which records of what was done are asked for. */
final class AuditQueryReader {
  /** The names of the parameters. */
  public static final List<String> PARAMETERS =
      List.of("actor", "action", "subject", "from", "to", "after", "limit");

  private static final int MAX_LIMIT = 500;
  private static final int MAX_NAME_LENGTH = 100;

  private final Parameters parameters;

  public AuditQueryReader(Parameters parameters) {
    this.parameters = parameters;
  }

  /** What is wrong is added to the errors of the parameters. */
  public AuditQuery read() {
    return new AuditQuery(
        name("actor").map(text -> text.toLowerCase(Locale.ROOT)),
        action(),
        name("subject"),
        time("from", 0),
        time("to", 1),
        after(),
        KeysetParameters.limit(parameters, MAX_LIMIT));
  }

  private Optional<String> name(String parameter) {
    Optional<String> text = parameters.text(parameter);
    if (text.isPresent() && !isName(text.get())) {
      parameters
          .errors()
          .invalid(parameter, parameter + " has 1 to 100 characters, and none that can't be seen.");
      return Optional.empty();
    }
    return text;
  }

  /** PostgreSQL knows no character 0. */
  private static boolean isName(String text) {
    return text.length() <= MAX_NAME_LENGTH && text.codePoints().noneMatch(Character::isISOControl);
  }

  private Optional<String> action() {
    Optional<String> text = parameters.text("action");
    if (text.isPresent() && !text.get().matches("[a-z]+([-.][a-z]+)*\\.?")) {
      parameters
          .errors()
          .invalid(
              "action", "An action is written like account.made; account alone finds all of them.");
      return Optional.empty();
    }
    return text;
  }

  /**
   * @param days added where a day is meant and not a moment: the last day counts as a whole
   */
  private Optional<Instant> time(String parameter, int days) {
    return parameters.text(parameter).flatMap(text -> time(parameter, text, days));
  }

  private Optional<Instant> time(String parameter, String text, int days) {
    try {
      requireFourDigits(text);
      return Optional.of(
          text.contains("T")
              ? Instant.parse(text)
              : LocalDate.parse(text).plusDays(days).atStartOfDay(ZoneOffset.UTC).toInstant());
    } catch (DateTimeException malformed) {
      parameters
          .errors()
          .invalid(
              parameter,
              parameter + " is a day, as in 2026-11-25, or a moment, as in 2026-11-25T08:00:00Z.");
      return Optional.empty();
    }
  }

  /** Java knows years that PostgreSQL doesn't. */
  private static void requireFourDigits(String text) {
    if (!text.matches("[0-9]{4}-.*")) {
      throw new DateTimeException(text);
    }
  }

  /** Records have numbers that may be larger than an int. */
  private Optional<Long> after() {
    Optional<String> text = parameters.text(KeysetParameters.AFTER);
    if (text.filter(number -> !number.matches("[1-9][0-9]{0,17}")).isPresent()) {
      parameters.errors().add(KeysetParameters.invalid(text.get()));
      return Optional.empty();
    }
    return text.map(Long::valueOf);
  }
}
