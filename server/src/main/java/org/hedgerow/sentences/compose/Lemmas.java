package org.hedgerow.sentences.compose;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The words that forms of words are forms of, as far as the composer knows them. */
final class Lemmas {

  private final Map<String, String> byForm = new HashMap<>();

  Lemmas(WorldKnowledge knowledge) {
    knowledge.frames().stream().map(VerbFrame::verb).forEach(this::add);
    knowledge.adjectives().forEach(each -> add(each.text(), each.text()));
    for (Noun noun : knowledge.nouns()) {
      add(noun.plural(), noun.singular());
      add(noun.singular(), noun.singular());
    }
  }

  private void add(Verb verb) {
    for (VerbForm shape : VerbForm.values()) {
      add(shape.of(verb), verb.base());
    }
  }

  private void add(String form, String lemma) {
    byForm.put(form, lemma);
  }

  /**
   * @param form in lower case, or with a capital
   * @return an empty text for a word that only holds sentences together, or isn't known
   */
  String of(String form) {
    return byForm.getOrDefault(form.toLowerCase(Locale.ROOT), "");
  }
}
