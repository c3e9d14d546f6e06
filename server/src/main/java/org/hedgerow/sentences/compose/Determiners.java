package org.hedgerow.sentences.compose;

import java.util.List;
import org.hedgerow.sentences.compose.NounForm.Form;

/** What introduces nouns: articles, owners, numbers, or nothing. */
final class Determiners {

  /** Stands for any number. */
  static final String NUMBER = "#";

  private static final List<String> OWN = List.of("his", "my", "her");
  private static final List<String> KIN = List.of("his", "my", "her", "my");

  /** What one calls one's own. */
  private static final List<String> OWNED =
      List.of(
          "kin",
          "pet",
          "home",
          "garment",
          "toy",
          "tool",
          "container",
          "bed",
          "reading",
          "jewel",
          "instrument",
          "vehicle");

  private static final List<String> ONLY = List.of("the");

  private Determiners() {}

  /**
   * Each as often as it should come; an empty text where the noun stands alone. None where it can't
   * be introduced.
   *
   * @param owner whose it is, as in <em>my</em>; empty where nobody has been named
   */
  static List<String> of(NounForm form, NounRole role, String owner) {
    Noun noun = form.noun();
    List<String> own =
        role == NounRole.SUBJECT ? OWN : owner.isEmpty() ? List.of() : List.of(owner);
    if (noun.is("body")) {
      return own;
    }
    if (noun.is("kin")) {
      return form.form() == Form.ONE && role == NounRole.SUBJECT ? KIN : own.isEmpty() ? KIN : own;
    }
    if (noun.is("sky")) {
      return ONLY;
    }
    if (noun.countability() == Countability.PAIR) {
      return noun.is("garment") && !own.isEmpty() ? own : ONLY;
    }
    return switch (form.form()) {
      case ONE -> ofOne(noun, role, owner);
      case SEVERAL -> ofSeveral(role);
      case SOME -> ofSome(role);
    };
  }

  private static List<String> ofOne(Noun noun, NounRole role, String owner) {
    boolean owned = OWNED.stream().anyMatch(noun::is);
    return switch (role) {
      case SUBJECT ->
          owned
              ? List.of("the", "the", "the", "his", "my", "her")
              : List.of("the", "the", "the", "the", "the", "a");
      case OBJECT ->
          owned && !owner.isEmpty()
              ? List.of("a", "a", "the", "the", owner, owner)
              : List.of("a", "a", "the", "the");
      case PLACE ->
          owned && !owner.isEmpty()
              ? List.of("the", "the", "the", owner)
              : List.of("the", "the", "the", "the", "the", "the", "the", "a");
    };
  }

  private static List<String> ofSeveral(NounRole role) {
    return switch (role) {
      case SUBJECT -> List.of("the", "the", "the", "the", NUMBER);
      case OBJECT -> List.of("", "", "the", "the", NUMBER, "some");
      case PLACE -> ONLY;
    };
  }

  private static List<String> ofSome(NounRole role) {
    return switch (role) {
      case SUBJECT, PLACE -> ONLY;
      case OBJECT -> List.of("", "the", "the", "some");
    };
  }
}
