package org.hedgerow.sentences.compose;

import java.util.List;

/** What introduces nouns: articles, owners, numbers, or nothing. */
final class Determiners {

  private static final List<String> OWN = List.of("his", "my", "her");
  private static final List<String> ONLY = List.of("the");

  private Determiners() {}

  /** Each as often as it should come; an empty text where the noun stands alone. */
  static List<String> of(NounForm form, Role role) {
    Noun noun = form.noun();
    if (noun.is("body")) {
      return OWN;
    }
    if (noun.is("sky")) {
      return ONLY;
    }
    if (noun.countability() == Countability.PAIR) {
      return noun.is("garment") ? OWN : ONLY;
    }
    return switch (form.form()) {
      case ONE -> ofOne(role);
      case SEVERAL -> ofSeveral(role);
      case SOME -> ofSome(role);
    };
  }

  private static List<String> ofOne(Role role) {
    return switch (role) {
      case SUBJECT -> List.of("the", "the", "the", "the", "the", "a", "his", "my");
      case OBJECT -> List.of("a", "a", "a", "the", "the", "the", "his", "my");
      case PLACE -> List.of("the", "the", "the", "the", "a", "his", "my");
    };
  }

  private static List<String> ofSeveral(Role role) {
    return switch (role) {
      case SUBJECT -> List.of("the", "the", "the", "the", "six", "ten", "two", "three");
      case OBJECT -> List.of("", "", "the", "the", "six", "ten", "two", "some");
      case PLACE -> ONLY;
    };
  }

  private static List<String> ofSome(Role role) {
    return switch (role) {
      case SUBJECT, PLACE -> ONLY;
      case OBJECT -> List.of("", "the", "the", "some");
    };
  }
}
