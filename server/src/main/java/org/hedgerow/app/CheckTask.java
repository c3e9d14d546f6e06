package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.WordChecker;

/**
 * Prints a verdict with its findings for each word.
 *
 * @param words in small letters a to z
 */
record CheckTask(
    List<String> words, Optional<String> phonogram, OptionalInt value, List<String> accents)
    implements LexiconTask {
  CheckTask {
    words = List.copyOf(words);
    accents = List.copyOf(accents);
  }

  @Override
  public int run(Lexicon lexicon, PrintWriter out, PrintWriter errors) {
    RequestedTarget wanted = RequestedTarget.find(lexicon, phonogram, value, accents);
    Standard standard = wanted.target().map(Standard::of).orElseGet(Standard::basic);
    WordChecker checker = new WordChecker(lexicon.catalogue());
    for (String word : words) {
      print(checker.check(lexicon.subject(word), standard, wanted.accents()), out);
    }
    return 0;
  }

  private void print(Check check, PrintWriter out) {
    out.println("%s: %s".formatted(check.word(), check.verdict().label()));
    check.findings().forEach(finding -> out.println("  " + line(finding)));
  }

  /** Names the accent where several are asked for. */
  private String line(Finding finding) {
    return accents.size() > 1 && !finding.accent().isEmpty()
        ? finding.accent() + ": " + finding.message()
        : finding.message();
  }
}
