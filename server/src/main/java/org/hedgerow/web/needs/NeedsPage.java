package org.hedgerow.web.needs;

import java.util.List;
import org.hedgerow.lexicon.FullMaterial;
import org.hedgerow.lexicon.Need;
import org.hedgerow.lexicon.Word;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.ShownEdition;

/**
 * The page that says what is still to be made.
 *
 * @param accents those to choose from
 * @param full how many values lack nothing
 * @param rows the greatest need first
 */
record NeedsPage(List<Choice> accents, int full, List<Row> rows, ShownEdition edition) {

  private static final int MAX_WORDS = 8;

  /**
   * @param counts what there is of what is needed
   * @param review words to judge next
   * @param draw words to find a picture for next
   */
  record Row(
      String letters,
      String keyWord,
      String address,
      List<Count> counts,
      String other,
      List<FittingList> review,
      List<FittingList> draw) {}

  /**
   * @param thing as in {@code words}
   */
  record Count(String thing, int have, int want) {
    boolean isEnough() {
      return have >= want;
    }
  }

  public static NeedsPage of(List<Need> needs, ChosenAccents accents, ShownEdition edition) {
    List<Row> rows = needs.stream().map(need -> row(need, accents.parameter(), edition)).toList();
    return new NeedsPage(
        accents.choices(), (int) rows.stream().filter(NeedsPage::isFull).count(), rows, edition);
  }

  private static boolean isFull(Row row) {
    return row.counts().stream().allMatch(Count::isEnough);
  }

  private static Row row(Need need, String accents, ShownEdition edition) {
    return new Row(
        need.value().grapheme().text(),
        need.value().keyWord(),
        edition.in(ListAddress.of(need.value(), accents)),
        List.of(
            new Count(
                "words judged by a person", need.approved() + need.starter(), FullMaterial.WORDS),
            new Count("words with a picture", need.pictures(), FullMaterial.PICTURES),
            new Count("sentences", need.sentences(), FullMaterial.SENTENCES)),
        need.other() + (need.other() == 1 ? " word waits" : " words wait"),
        fits(need.candidates(), edition),
        fits(need.toPicture(), edition));
  }

  private static List<FittingList> fits(List<Word> words, ShownEdition edition) {
    return words.stream()
        .limit(MAX_WORDS)
        .map(
            word ->
                new FittingList(word.spelling(), edition.in(ListAddress.ofWord(word.spelling()))))
        .toList();
  }
}
