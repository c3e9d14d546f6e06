package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;

/**
 * Prints the default list for one value of a phonogram.
 *
 * @param value the commonest if it isn't given
 * @param limit how many words at most
 */
record ListTask(String phonogram, OptionalInt value, String accent, OptionalInt limit)
    implements LexiconTask {
  @Override
  public int run(Lexicon lexicon, PrintWriter out, PrintWriter errors) {
    RequestedTarget wanted =
        RequestedTarget.find(lexicon, Optional.of(phonogram), value, List.of(accent));
    Correspondence target = wanted.target().orElseThrow();
    List<Word> words = lexicon.find(WordQuery.of(wanted.accents().get(0), Standard.of(target)));
    if (words.isEmpty()) {
      errors.println("No word in the bank fits %s.".formatted(target.label()));
    }
    words.stream().limit(limit.orElse(words.size())).forEach(word -> out.println(word.spelling()));
    return 0;
  }
}
