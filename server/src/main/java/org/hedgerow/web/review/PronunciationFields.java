package org.hedgerow.web.review;

import java.util.List;

/**
 * One way to say a word, as a block of a form.
 *
 * @param number of the block, from 0
 * @param proposed the sounds that the bank proposes, so that we know whether somebody has touched
 *     them
 * @param guessed whether the sounds are a guess from the letters
 * @param base what the choices of letters are about
 * @param heard the sounds that letters can be put to, in order
 * @param obstacle why the letters can't be matched to the sounds, or an empty text
 * @param error what is wrong, or an empty text
 */
record PronunciationFields(
    int number,
    List<Option> accents,
    String accentName,
    String sounds,
    String proposed,
    boolean guessed,
    String base,
    List<LetterGroupView> pieces,
    List<LetterView> letters,
    List<Option> heard,
    List<SoundKey> keys,
    String obstacle,
    String error) {
  boolean isByHand() {
    return !letters.isEmpty();
  }

  List<SoundKey> vowels() {
    return keys.stream().filter(SoundKey::vowel).toList();
  }

  List<SoundKey> consonants() {
    return keys.stream().filter(key -> !key.vowel()).toList();
  }
}
