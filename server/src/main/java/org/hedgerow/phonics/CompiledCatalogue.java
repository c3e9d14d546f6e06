package org.hedgerow.phonics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An accent's realisations in arrays, and a trie from letters to those that begin with them, so
 * that a lattice is built without allocating per span.
 */
final class CompiledCatalogue {

  private static final int LETTERS = 26;

  private final AccentCatalogue source;
  private final int[][] sounds;
  private final SpanPart[] parts;
  private final SpellingContext[] places;
  private final List<int[]> children = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();

  CompiledCatalogue(AccentCatalogue source) {
    this.source = source;
    Accent accent = source.accent();
    List<Realisation> realisations = source.realisations();
    int size = realisations.size();
    sounds = new int[size][];
    parts = new SpanPart[size];
    places = new SpellingContext[size];
    addNode();
    for (int index = 0; index < size; index++) {
      Realisation realisation = realisations.get(index);
      sounds[index] = realisation.sounds().stream().mapToInt(accent::indexOf).toArray();
      parts[index] = SpanPart.of(realisation, splits(realisation), takesR(realisation));
      places[index] = place(realisation);
      addEnd(node(realisation.grapheme().head()), index);
    }
  }

  AccentCatalogue source() {
    return source;
  }

  int size() {
    return sounds.length;
  }

  /** The sounds of a pronunciation by their numbers in the accent's inventory. */
  int[] indexes(List<Sound> pronunciation) {
    return pronunciation.stream().mapToInt(source.accent()::indexOf).toArray();
  }

  Sound sound(int index) {
    return source.accent().inventory().get(index);
  }

  SpanPart part(int realisation) {
    return parts[realisation];
  }

  SpellingContext place(int realisation) {
    return places[realisation];
  }

  int soundCount(int realisation) {
    return sounds[realisation].length;
  }

  /** Whether the pronunciation goes on with the sounds of a realisation. */
  boolean matches(int realisation, int[] pronunciation, int from) {
    int[] own = sounds[realisation];
    if (from + own.length > pronunciation.length) {
      return false;
    }
    for (int i = 0; i < own.length; i++) {
      if (pronunciation[from + i] != own[i]) {
        return false;
      }
    }
    return true;
  }

  /** The trie's node for the empty text. */
  int root() {
    return 0;
  }

  /** Returns the trie node after this letter, or 0 if no grapheme continues with it. */
  int child(int node, char letter) {
    int index = letter - 'a';
    return index < 0 || index >= LETTERS ? 0 : children.get(node)[index];
  }

  /** The realisations whose letters end at a node; of split graphemes the first letter counts. */
  int[] endingAt(int node) {
    return ends.get(node);
  }

  /** Whether a split grapheme of the letter says the same. */
  private boolean splits(Realisation realisation) {
    return says(realisation.grapheme().text() + "-e", realisation.sounds());
  }

  private boolean says(String grapheme, List<Sound> sounds) {
    return source.realisations().stream()
        .anyMatch(
            other -> other.grapheme().text().equals(grapheme) && other.sounds().equals(sounds));
  }

  /** A single vowel letter and the r after it part before a vowel, where each can stand alone. */
  private SpellingContext place(Realisation realisation) {
    SpellingContext declared = realisation.correspondence().place();
    return declared.equals(SpellingContext.ANYWHERE) && parts(realisation)
        ? SpellingContext.parse("not before vowel")
        : declared;
  }

  private boolean parts(Realisation realisation) {
    List<Sound> sounds = realisation.sounds();
    int last = sounds.size() - 1;
    return realisation.grapheme().text().matches("[aeiouy]rr?")
        && last > 0
        && sounds.get(last).ipa().equals("ɹ")
        && says(realisation.grapheme().text().substring(0, 1), sounds.subList(0, last));
  }

  /** Whether letters and sounds with an r each are a grapheme too, before a vowel as well. */
  private boolean takesR(Realisation realisation) {
    String letters = realisation.grapheme().text() + "r";
    String said = Sound.joined(realisation.sounds()) + "ɹ";
    return source.realisations().stream()
        .filter(other -> other.correspondence().place().equals(SpellingContext.ANYWHERE))
        .anyMatch(
            other ->
                other.grapheme().text().equals(letters)
                    && Sound.joined(other.sounds()).equals(said));
  }

  private int node(String letters) {
    int node = 0;
    for (int i = 0; i < letters.length(); i++) {
      int[] row = children.get(node);
      int letter = letters.charAt(i) - 'a';
      if (row[letter] == 0) {
        row[letter] = addNode();
      }
      node = row[letter];
    }
    return node;
  }

  private int addNode() {
    children.add(new int[LETTERS]);
    ends.add(new int[0]);
    return children.size() - 1;
  }

  private void addEnd(int node, int realisation) {
    int[] old = ends.get(node);
    int[] grown = Arrays.copyOf(old, old.length + 1);
    grown[old.length] = realisation;
    ends.set(node, grown);
  }
}
