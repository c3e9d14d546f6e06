package org.hedgerow.web.review;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.ContributionKind;

/**
 * What can be contributed.
 *
 * @param word that it is about, or an empty text
 */
record NewPage(String word, List<Offer> offers) {

  /** One kind of contribution. */
  record Offer(String name, String help, String address) {}

  static NewPage about(String word, Lexicon lexicon) {
    boolean known = lexicon.word(word).isPresent();
    return new NewPage(
        word,
        Arrays.stream(ContributionKind.values())
            .filter(kind -> word.isEmpty() || KindForm.of(kind).isOfferedFor(known))
            .map(kind -> offer(kind, word))
            .toList());
  }

  private static Offer offer(ContributionKind kind, String word) {
    String about = word.isEmpty() ? "" : "&word=" + URLEncoder.encode(word, StandardCharsets.UTF_8);
    return new Offer(
        KindForm.of(kind).title(),
        KindForm.of(kind).help(),
        "/contributions/new?kind=" + kind.label() + about);
  }
}
