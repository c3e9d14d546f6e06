package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Arpabet;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Standard;

/**
 * A few words of an edition for each realisation of an accent, and what its sources call the
 * sounds. Of taught values the words come from their lists; of others they are the first and
 * shortest among the common words that are said in one way.
 */
final class RealisationExamples {

  private static final int MAX = 12;

  private final Lexicon lexicon;
  private final String accent;
  private final Map<Integer, List<String>> met = new HashMap<>();
  private final Map<Sound, String> phones = new HashMap<>();

  RealisationExamples(Lexicon lexicon, String accent) {
    this.lexicon = lexicon;
    this.accent = accent;
    lexicon.words().stream().filter(RealisationExamples::isFit).forEach(this::meet);
  }

  private static boolean isFit(Word word) {
    return word.commonness() >= WordQuery.DEFAULT_COMMONNESS
        && !word.is(Tag.NAME)
        && !word.is(Tag.NOT_FOR_CHILDREN)
        && !word.is(Tag.INFLECTED);
  }

  private void meet(Word word) {
    List<Pronunciation> said = word.saidIn(accent);
    said.forEach(this::hear);
    if (said.size() == 1) {
      said.get(0).alignment().ifPresent(alignment -> meet(word, alignment));
    }
  }

  private void meet(Word word, Alignment alignment) {
    if (alignment.hasSmallMargin()) {
      return;
    }
    for (Span span : alignment.spans()) {
      List<String> words = met.computeIfAbsent(span.realisation().id(), x -> new ArrayList<>(MAX));
      if (words.size() < MAX && !words.contains(word.spelling())) {
        words.add(word.spelling());
      }
    }
  }

  private void hear(Pronunciation pronunciation) {
    String[] names = pronunciation.stressed().split(" ", -1);
    for (int i = 0; i < names.length && names.length == pronunciation.sounds().size(); i++) {
      phones.putIfAbsent(pronunciation.sounds().get(i), unstressed(names[i]));
    }
  }

  /** Without the stress, unless it makes another sound of the phone. */
  private static String unstressed(String phone) {
    String bare = phone.replaceFirst("[012]$", "");
    return Arpabet.ipa(bare).equals(Arpabet.ipa(phone)) ? bare : phone;
  }

  /** What the sound is called in ARPAbet; empty where no source says. */
  String arpabet(Sound sound) {
    return phones.getOrDefault(sound, "");
  }

  /** At most twelve words, the commonest and shortest first. */
  List<String> of(Realisation realisation) {
    List<String> listed = realisation.correspondence().isTaught() ? listed(realisation) : List.of();
    return listed.isEmpty() ? met.getOrDefault(realisation.id(), List.of()) : listed;
  }

  private List<String> listed(Realisation realisation) {
    Correspondence target = realisation.correspondence();
    return lexicon.find(WordQuery.of(accent, Standard.of(target))).stream()
        .filter(word -> isIn(realisation, word))
        .limit(MAX)
        .map(Word::spelling)
        .toList();
  }

  private boolean isIn(Realisation realisation, Word word) {
    return word.saidIn(accent).stream()
        .flatMap(each -> each.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .anyMatch(span -> span.realisation().id() == realisation.id());
  }
}
