package org.hedgerow.web.chart;

import java.util.List;
import java.util.Optional;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.page.LetterRun;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.SoundLabel;

/**
 * One value of a phonogram in the chart.
 *
 * @param keyWord the word that shows it
 * @param says its sound
 * @param soundCount how many sounds that are
 * @param words how many words its default list has
 * @param accents those of the list, as in addresses
 */
public record ChartValue(
    Correspondence correspondence,
    List<LetterRun> keyWord,
    SoundLabel says,
    int soundCount,
    int words,
    String accents) {

  ChartValue withWords(int count) {
    return new ChartValue(correspondence, keyWord, says, soundCount, count, accents);
  }

  public String grapheme() {
    return correspondence.grapheme().text();
  }

  public int number() {
    return correspondence.value().orElseThrow();
  }

  public String keyWordText() {
    return correspondence.keyWord();
  }

  /** The address of all spellings of its sound; empty where it says several sounds, or none. */
  public Optional<String> soundAddress() {
    return soundCount == 1
        ? Optional.of(ListAddress.ofSound(says.ipa(), accents))
        : Optional.empty();
  }

  /** The address of the sentences of the bank for it. */
  public String sentencesAddress() {
    return ListAddress.ofSentences(correspondence, accents);
  }

  public String address() {
    return ListAddress.of(correspondence, accents);
  }
}
