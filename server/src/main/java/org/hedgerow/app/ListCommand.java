package org.hedgerow.app;

import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "list", description = "Prints the words for a phonogram, one on a line.")
final class ListCommand extends LexiconCommand {
  @Parameters(paramLabel = "PHONOGRAM", description = "The phonogram, as in oa or i-e.")
  private String phonogram = "";

  @Option(
      names = "--value",
      paramLabel = "NUMBER",
      description = "Which of its values (default: 1, the commonest).")
  private @Nullable Integer value;

  @Option(
      names = "--accent",
      paramLabel = "TAG",
      description = "The accent, as in en-GB (default: ${DEFAULT-VALUE}).")
  private String accent = "en-US";

  @Option(names = "--limit", paramLabel = "NUMBER", description = "At most so many words.")
  private @Nullable Integer limit;

  @Override
  LexiconTask lexiconTask() {
    if (limit != null && limit < 1) {
      throw wrongUsage("--limit must be 1 or more, not %d".formatted(limit));
    }
    return new ListTask(phonogram, number(value), accent, number(limit));
  }

  private static OptionalInt number(@Nullable Integer number) {
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
