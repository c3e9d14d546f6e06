package org.hedgerow.sentences.compose;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which nouns make sense somewhere: as who does something, as what it is done to, as the place.
 *
 * @param classes any noun of these
 * @param nouns and these
 */
public record Selection(Set<String> classes, Set<String> nouns) {

  /** Before a noun that is meant itself, in tables. */
  private static final String WORD = "=";

  /** The classes that <em>I, you, he, she, we, they</em> stand for. */
  private static final Set<String> PEOPLE = Set.of("person", "living", "talker");

  public Selection {
    classes = Set.copyOf(classes);
    nouns = Set.copyOf(nouns);
  }

  /**
   * @param terms classes, and nouns with = before them
   */
  public static Selection of(List<String> terms) {
    return new Selection(
        terms.stream().filter(term -> !term.startsWith(WORD)).collect(Collectors.toSet()),
        terms.stream()
            .filter(term -> term.startsWith(WORD))
            .map(term -> term.substring(WORD.length()))
            .collect(Collectors.toSet()));
  }

  /** Whether the noun fits in a form; a plural that is named allows nothing but the plural. */
  public boolean allows(Noun noun, String form) {
    return nouns.contains(noun.singular())
        || nouns.contains(form)
        || !Collections.disjoint(classes, noun.classes());
  }

  /** Whether the noun is meant itself. */
  boolean names(Noun noun) {
    return nouns.contains(noun.singular());
  }

  /** Whether the noun fits in some form. */
  public boolean allows(Noun noun) {
    return allows(noun, noun.singular());
  }

  /** Whether it may be any person, so that a pronoun can stand for them. */
  public boolean allowsPeople() {
    return classes.stream().anyMatch(PEOPLE::contains);
  }
}
