package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.HeldPhonograms;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.ShownEdition;

/**
 * The page of the words that children learn whole.
 *
 * @param sets first the one that counts where nothing is chosen
 * @param accents those to choose from
 */
record SightWordsPage(List<Named> sets, List<Choice> accents, ShownEdition edition) {

  /**
   * A set.
   *
   * @param plain its words that hold no phonogram
   * @param holding those that do
   */
  record Named(
      String name, String title, String note, int size, List<Shown> plain, List<Shown> holding) {}

  /**
   * @param address of its page, or an empty text where the bank hasn't it
   */
  record Shown(String text, String address, List<Held> held) {}

  /**
   * @param keyWord the word that shows its sound
   */
  record Held(String letters, String keyWord) {
    static Held of(Correspondence value) {
      return new Held(value.grapheme().text(), value.keyWord());
    }
  }

  static SightWordsPage of(Lexicon lexicon, ChosenAccents accents, ShownEdition edition) {
    return new SightWordsPage(
        lexicon.plans().sightWords().all().stream()
            .map(set -> named(set, lexicon, accents, edition))
            .toList(),
        accents.choices(),
        edition);
  }

  private static Named named(
      SightWords set, Lexicon lexicon, ChosenAccents accents, ShownEdition edition) {
    List<Shown> words =
        set.words().stream().map(word -> shown(word, lexicon, accents, edition)).toList();
    Stream<Shown> plain = words.stream().filter(word -> word.held().isEmpty());
    Stream<Shown> holding = words.stream().filter(word -> !word.held().isEmpty());
    return new Named(
        set.name(), set.title(), set.note(), words.size(), plain.toList(), holding.toList());
  }

  private static Shown shown(
      String word, Lexicon lexicon, ChosenAccents accents, ShownEdition edition) {
    String address =
        lexicon.word(word).isPresent()
            ? edition.in(ListAddress.ofWord(word, accents.parameter()))
            : "";
    return new Shown(
        word,
        address,
        HeldPhonograms.in(lexicon, word, accents.first().tag()).stream().map(Held::of).toList());
  }
}
