package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The dictionary against the package it comes from. npm {@code cmu-pronouncing-dictionary} 3.0.0
 * has 135,155 keys; 117,490 of them are plain words without a variant number (26 of those single
 * letters, 3 of which are words), 125,848 with variants. Carnegie Mellon says that the dictionary
 * has 39 phonemes (its web page, from memory).
 */
final class DictionaryDataTest {
  private static final int LETTERS_THAT_ARE_NO_WORDS = 23;

  private final SeedLexicon seed = SeedLexicon.bundled();
  private final List<DictionaryEntry> dictionary = seed.dictionary();

  @Test
  void hasEveryPlainWordAndVariantOfThePackage() {
    assertThat(dictionary).hasSize(117_490 - LETTERS_THAT_ARE_NO_WORDS);
    assertThat(dictionary.stream().mapToInt(entry -> entry.pronunciations().size()).sum())
        .isEqualTo(125_848 - LETTERS_THAT_ARE_NO_WORDS);
  }

  @Test
  void isSortedWithoutRepetition() {
    Ordered.assertStrictly(dictionary.stream().map(DictionaryEntry::word).toList());
    assertThat(dictionary)
        .allSatisfy(entry -> assertThat(entry.pronunciations()).doesNotHaveDuplicates());
  }

  @Test
  void holdsPlainWordsOnly() {
    assertThat(dictionary).allSatisfy(entry -> assertThat(entry.word()).matches("[a-z]+"));
    assertThat(dictionary.stream().map(DictionaryEntry::word).filter(word -> word.length() == 1))
        .containsExactly("a", "i", "o");
  }

  @Test
  void keepsVariantsInTheDictionarysOrderAndTheirStress() {
    assertThat(pronunciationsOf("live")).containsExactly("L AY1 V", "L IH1 V");
    assertThat(pronunciationsOf("photograph")).containsExactly("F OW1 T AH0 G R AE2 F");
  }

  @Test
  void keepsNoComments() {
    assertThat(pronunciationsOf("taoiseach")).containsExactly("T IY1 SH AH0 K");
  }

  @Test
  void usesThirtyNinePhonesAndNoOthers() {
    assertThat(seed.phones()).hasSize(39);
    assertThat(phonesUsed())
        .isEqualTo(seed.phones().stream().map(PhoneRow::phone).collect(Collectors.toSet()));
  }

  @Test
  void marksStressOnVowelsAndNowhereElse() {
    Set<String> vowels =
        seed.phones().stream()
            .filter(PhoneRow::isVowel)
            .map(PhoneRow::phone)
            .collect(Collectors.toSet());

    assertThat(marks())
        .allSatisfy(
            mark ->
                assertThat(mark.matches("[A-Z]+[012]"))
                    .as(mark)
                    .isEqualTo(vowels.contains(withoutStress(mark))));
  }

  private List<String> pronunciationsOf(String word) {
    return dictionary.stream()
        .filter(entry -> entry.word().equals(word))
        .findFirst()
        .orElseThrow()
        .pronunciations();
  }

  private Set<String> phonesUsed() {
    return marks().stream().map(DictionaryDataTest::withoutStress).collect(Collectors.toSet());
  }

  /** Every phone with its stress, as the dictionary writes it. */
  private Set<String> marks() {
    return dictionary.stream()
        .flatMap(entry -> entry.pronunciations().stream())
        .flatMap(pronunciation -> Arrays.stream(pronunciation.split(" ", -1)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String withoutStress(String mark) {
    return mark.replaceAll("[012]$", "");
  }
}
