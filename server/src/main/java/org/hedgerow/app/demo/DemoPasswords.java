package org.hedgerow.app.demo;

import java.security.SecureRandom;
import java.util.List;
import java.util.StringJoiner;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;

/** Passwords that people can read and type: four words, drawn anew each time. */
final class DemoPasswords {
  private static final int WORDS = 4;
  private static final int FEWEST_LETTERS = 3;

  private final SecureRandom random = new SecureRandom();
  private final List<String> words;

  DemoPasswords(Lexicon lexicon) {
    this.words =
        lexicon.words().stream()
            .filter(Word::isStarter)
            .map(Word::spelling)
            .filter(word -> word.length() >= FEWEST_LETTERS)
            .toList();
  }

  String fresh() {
    StringJoiner password = new StringJoiner("-");
    for (int i = 0; i < WORDS; i++) {
      password.add(words.get(random.nextInt(words.size())));
    }
    return password.toString();
  }
}
