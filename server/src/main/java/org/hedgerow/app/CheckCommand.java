package org.hedgerow.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.web.query.SpellingReader;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "check", description = "Says of words whether they may be used, and why not.")
final class CheckCommand extends LexiconCommand {
  @Parameters(arity = "1..*", paramLabel = "WORD", description = "The words to check.")
  private List<String> words = List.of();

  @Option(
      names = "--phonogram",
      paramLabel = "PHONOGRAM",
      description = "The phonogram that the words are wanted for.")
  private @Nullable String phonogram;

  @Option(
      names = "--value",
      paramLabel = "NUMBER",
      description = "Which of its values (default: 1, the commonest).")
  private @Nullable Integer value;

  @Option(
      names = "--accent",
      split = ",",
      paramLabel = "TAG",
      description = "The accents, as in en-US,en-GB (default: ${DEFAULT-VALUE}).")
  private List<String> accents = List.of("en-US");

  @Override
  LexiconTask lexiconTask() {
    if (value != null && phonogram == null) {
      throw wrongUsage("--value needs a phonogram: say which with --phonogram");
    }
    return new CheckTask(
        words.stream().map(this::spelling).toList(),
        Optional.ofNullable(phonogram),
        value == null ? OptionalInt.empty() : OptionalInt.of(value),
        accents);
  }

  private String spelling(String word) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    return new SpellingReader(errors)
        .read("WORD", word)
        .orElseThrow(() -> wrongUsage(errors.list().get(0).message()));
  }
}
