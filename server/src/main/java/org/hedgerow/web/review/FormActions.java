package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.NewPronunciation;
import org.hedgerow.review.NewWord;
import org.hedgerow.review.ProposedPronunciation;

/**
 * What the small buttons of a form do: {@code say-0-oʊ} adds a sound to the first block, {@code
 * unsay-0} takes its last away, {@code add} makes another block, {@code remove-1} takes the second
 * away.
 */
record FormActions(Lexicon lexicon) {

  Content on(Content content, String deed) {
    if (content.proposal() instanceof NewWord word) {
      return new Content(
          new NewWord(
              word.spelling(),
              sayings(word.spelling(), word.pronunciations(), deed),
              word.labels()),
          content.wantedFor(),
          content.note());
    }
    if (content.proposal() instanceof NewPronunciation said) {
      return new Content(
          new NewPronunciation(said.spelling(), saying(said.saying(), 0, deed), said.instead()),
          content.wantedFor(),
          content.note());
    }
    return content;
  }

  private List<ProposedPronunciation> sayings(
      String spelling, List<ProposedPronunciation> sayings, String deed) {
    List<ProposedPronunciation> changed = new ArrayList<>();
    for (ProposedPronunciation saying : sayings) {
      changed.add(saying(saying, changed.size(), deed));
    }
    if (deed.equals("add") && changed.size() < ProposedPronunciationReader.MAX) {
      changed.add(another(spelling, sayings));
    }
    if (deed.startsWith("remove-") && changed.size() > 1) {
      int block = Fields.number(deed.substring("remove-".length()), changed.size());
      if (block < changed.size()) {
        changed.remove(block);
      }
    }
    return changed;
  }

  private ProposedPronunciation another(String spelling, List<ProposedPronunciation> sayings) {
    Proposals proposals = new Proposals(lexicon);
    String accent =
        proposals.accentBeside(sayings.stream().map(ProposedPronunciation::accent).toList());
    return new ProposedPronunciation(accent, proposals.sounds(spelling, accent), List.of());
  }

  private static ProposedPronunciation saying(
      ProposedPronunciation saying, int block, String deed) {
    String say = "say-" + block + "-";
    if (deed.startsWith(say)) {
      return said(saying, saying.sounds() + " " + deed.substring(say.length()));
    }
    return deed.equals("unsay-" + block)
        ? said(saying, saying.sounds().replaceFirst("(^|\\s+)\\S+$", ""))
        : saying;
  }

  private static ProposedPronunciation said(ProposedPronunciation saying, String sounds) {
    return new ProposedPronunciation(saying.accent(), sounds, List.of());
  }
}
