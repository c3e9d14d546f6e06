package org.hedgerow.web.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.page.Fit;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.query.QueryString;

/** For an empty list, wider ones that have words. */
final class Offers {

  private static final String COMMONNESS = "1";
  private static final String RULES = "reduced-vowels,inflected-forms";

  private final Lexicon lexicon;
  private final QueryString list;

  Offers(Lexicon lexicon, QueryString list) {
    this.lexicon = lexicon;
    this.list = list;
  }

  List<Fit> wider() {
    List<Fit> offers = new ArrayList<>();
    QueryString rare = list.with(Narrowing.COMMONNESS, COMMONNESS);
    QueryString weak = list.with("rules", RULES);
    offer("rare words too", rare).ifPresent(offers::add);
    offer("weak vowels and word forms too, as in lemon and dogs", weak).ifPresent(offers::add);
    if (offers.isEmpty()) {
      offer("rare words, weak vowels and word forms too", rare.with("rules", RULES))
          .ifPresent(offers::add);
    }
    return List.copyOf(offers);
  }

  private Optional<Fit> offer(String name, QueryString wider) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    wider.parameters().forEach((parameter, value) -> given.put(parameter, List.of(value)));
    WordRequest request = new WordQueryReader(lexicon).read(given);
    int words = WholeList.of(lexicon, request).size();
    return words == 0
        ? Optional.empty()
        : Optional.of(new Fit("%s (%d)".formatted(name, words), ListAddress.ofList(wider)));
  }
}
