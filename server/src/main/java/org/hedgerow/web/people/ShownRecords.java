package org.hedgerow.web.people;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hedgerow.accounts.AuditRecord;
import org.jspecify.annotations.Nullable;

/** Puts the record of what was done into words. */
final class ShownRecords {
  /** Longer values are cut off on the page; programs get them whole. */
  private static final int MAX_VALUE_LENGTH = 300;

  private static final String ACCOUNT = "account ";

  private ShownRecords() {}

  static List<ShownRecord> of(List<AuditRecord> records) {
    return records.stream().map(ShownRecords::of).toList();
  }

  private static ShownRecord of(AuditRecord record) {
    return new ShownRecord(
        record.id(),
        Dates.of(record.at()),
        record.actor(),
        capital(inWords(record.action())),
        record.subject(),
        address(record.subject()),
        !record.before().isEmpty(),
        fields(record));
  }

  /** As in “account made”. */
  static String inWords(String action) {
    return action.replace('.', ' ').replace('-', ' ');
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String address(String subject) {
    return subject.matches(ACCOUNT + "[0-9]{1,9}")
        ? "/people/" + subject.substring(ACCOUNT.length())
        : "";
  }

  private static List<ShownField> fields(AuditRecord record) {
    Collection<String> names = new TreeSet<>(record.before().keySet());
    names.addAll(record.after().keySet());
    List<ShownField> fields = new ArrayList<>();
    for (String name : names) {
      fields.add(
          new ShownField(
              words(name), text(record.before().get(name)), text(record.after().get(name))));
    }
    return List.copyOf(fields);
  }

  /** As in “display name”. */
  private static String words(String name) {
    return name.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2").toLowerCase(Locale.ROOT);
  }

  private static String text(@Nullable Object value) {
    String whole = plain(value);
    return whole.codePointCount(0, whole.length()) > MAX_VALUE_LENGTH
        ? whole.substring(0, whole.offsetByCodePoints(0, MAX_VALUE_LENGTH)) + "…"
        : whole;
  }

  private static String plain(@Nullable Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof Collection<?> list) {
      return list.stream().map(ShownRecords::plain).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> parts) {
      return parts.entrySet().stream()
          .map(part -> plain(part.getKey()) + ": " + plain(part.getValue()))
          .collect(Collectors.joining("; "));
    }
    return Objects.toString(value, "");
  }
}
