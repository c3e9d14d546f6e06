package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What kind of thing, or of doing, a word means: the classes in which WordNet's lexicographers
 * worked (Fellbaum 1998, "WordNet: An Electronic Lexical Database"; from memory). Nouns have the
 * first 25, verbs the rest and a few of the first; WordNet has no classes of adjectives.
 */
public enum Meaning {
  ACT,
  ANIMAL,
  ARTIFACT,
  ATTRIBUTE,
  BODY,
  COGNITION,
  COMMUNICATION,
  EVENT,
  FEELING,
  FOOD,
  GROUP,
  LOCATION,
  MOTIVE,
  OBJECT,
  PERSON,
  PHENOMENON,
  PLANT,
  POSSESSION,
  PROCESS,
  QUANTITY,
  RELATION,
  SHAPE,
  STATE,
  SUBSTANCE,
  TIME,
  CHANGE,
  COMPETITION,
  CONSUMPTION,
  CONTACT,
  CREATION,
  EMOTION,
  MOTION,
  PERCEPTION,
  SOCIAL,
  STATIVE,
  WEATHER;

  /** WordNet's name of the class, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The class with this label, if there is one. */
  public static Optional<Meaning> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
