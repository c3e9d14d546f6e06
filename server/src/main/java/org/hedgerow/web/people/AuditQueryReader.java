package org.hedgerow.web.people;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.accounts.AuditQuery;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.ValidationError;

/** Reads which records of what was done are asked for. */
final class AuditQueryReader {
  /** The names of the parameters. */
  public static final List<String> PARAMETERS =
      List.of("actor", "action", "subject", "from", "to", "after", "limit");

  public static final int DEFAULT_LIMIT = 50;

  private static final int LARGEST_LIMIT = 500;
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
        number(
            "after", ProblemType.INVALID_CURSOR, "Give after what next said in the answer before."),
        number("limit", ProblemType.INVALID_PARAMETER, "limit is a number from 1 to 500.")
            .filter(this::isAllowed)
            .map(Long::intValue)
            .orElse(DEFAULT_LIMIT));
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

  private Optional<Long> number(String parameter, ProblemType type, String advice) {
    Optional<String> text = parameters.text(parameter);
    if (text.isPresent() && !text.get().matches("[1-9][0-9]{0,17}")) {
      parameters.errors().add(ValidationError.of(type, parameter, advice));
      return Optional.empty();
    }
    return text.map(Long::valueOf);
  }

  private boolean isAllowed(long limit) {
    if (limit > LARGEST_LIMIT) {
      parameters.errors().invalid("limit", "limit is a number from 1 to 500.");
      return false;
    }
    return true;
  }
}
