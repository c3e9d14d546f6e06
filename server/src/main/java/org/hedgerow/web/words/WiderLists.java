package org.hedgerow.web.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ListAddress;

/** For an empty list, wider ones that have words. */
final class WiderLists {

  private static final int ALL_WORDS = 1;
  private static final ReadingRules WIDE =
      ReadingRules.DEFAULT.with(Switch.REDUCED_VOWELS, true).with(Switch.INFLECTED_FORMS, true);

  private final Lexicon lexicon;
  private final WordRequest request;

  WiderLists(Lexicon lexicon, WordRequest request) {
    this.lexicon = lexicon;
    this.request = request;
  }

  List<FittingList> wider() {
    List<FittingList> offers = new ArrayList<>();
    WordRequest rare = request.with(WordParameters.COMMONNESS, ALL_WORDS);
    WordRequest weak = request.with(WordParameters.RULES, WIDE);
    offer("rare words too", rare).ifPresent(offers::add);
    offer("weak vowels and word forms too, as in lemon and dogs", weak).ifPresent(offers::add);
    if (offers.isEmpty()) {
      offer("rare words, weak vowels and word forms too", rare.with(WordParameters.RULES, WIDE))
          .ifPresent(offers::add);
    }
    return List.copyOf(offers);
  }

  private Optional<FittingList> offer(String name, WordRequest wider) {
    int words = WordList.all(lexicon, wider).size();
    return words == 0
        ? Optional.empty()
        : Optional.of(
            new FittingList(
                "%s (%d)".formatted(name, words), ListAddress.ofList(wider.values().chosen())));
  }
}
