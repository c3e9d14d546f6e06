package org.hedgerow.web.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.page.ListAddress;

/**
 * What an edition changed in a word, for people.
 *
 * @param what whether it is new, changed or withdrawn
 * @param changes in sentences without a full stop
 */
record WordDifference(String spelling, String address, String what, List<String> changes) {

  static WordDifference of(WordChange change, int edition, Lexicon lexicon) {
    int shown = change.after().isPresent() ? edition : edition - 1;
    return new WordDifference(
        change.spelling(),
        ListAddress.inEdition(
            ListAddress.ofWord(change.spelling()), Optional.of(String.valueOf(shown))),
        what(change),
        changes(change, lexicon));
  }

  private static String what(WordChange change) {
    if (change.before().isEmpty()) {
      return "new";
    }
    return change.after().isEmpty() ? "withdrawn" : "changed";
  }

  private static List<String> changes(WordChange change, Lexicon lexicon) {
    List<String> changes = new ArrayList<>();
    change.after().ifPresent(after -> status(change.before(), after).ifPresent(changes::add));
    if (change.after().isPresent()) {
      Word after = change.after().get();
      said(change.before(), after, lexicon, changes);
      change.before().ifPresent(before -> tags(before, after, changes));
    }
    return List.copyOf(changes);
  }

  private static Optional<String> status(Optional<Word> before, Word after) {
    boolean approved = after.status() == Status.APPROVED;
    boolean same = before.map(word -> word.status() == after.status()).orElse(false);
    return approved && !same ? Optional.of("approved by teachers") : Optional.empty();
  }

  private static void said(
      Optional<Word> before, Word after, Lexicon lexicon, List<String> changes) {
    List<Pronunciation> old = before.map(Word::pronunciations).orElse(List.of());
    for (Pronunciation each : after.pronunciations()) {
      if (!old.contains(each)) {
        String said = isSaid(each, old) ? "/%s/ is now read %s in %s" : "said /%s/, %s, in %s";
        changes.add(said.formatted(sounds(each), spans(each), name(each, lexicon)));
      }
    }
    for (Pronunciation each : old) {
      if (!isSaid(each, after.pronunciations())) {
        changes.add("no longer said /%s/ in %s".formatted(sounds(each), name(each, lexicon)));
      }
    }
  }

  private static boolean isSaid(Pronunciation one, List<Pronunciation> others) {
    return others.stream()
        .anyMatch(each -> each.accent().equals(one.accent()) && each.sounds().equals(one.sounds()));
  }

  private static String sounds(Pronunciation said) {
    return Sound.spaced(said.sounds());
  }

  private static String spans(Pronunciation said) {
    return said.alignment()
        .map(
            alignment ->
                alignment.spans().stream()
                    .map(span -> span.grapheme().text())
                    .collect(Collectors.joining(" · ")))
        .orElse("irregularly");
  }

  private static String name(Pronunciation said, Lexicon lexicon) {
    return lexicon.accent(said.accent()).map(each -> each.accent().name()).orElse(said.accent());
  }

  private static void tags(Word before, Word after, List<String> changes) {
    Map<String, String> old = values(before);
    Map<String, String> now = values(after);
    TreeSet<String> kinds = new TreeSet<>(old.keySet());
    kinds.addAll(now.keySet());
    for (String kind : kinds) {
      if (!Objects.equals(old.get(kind), now.get(kind))) {
        changes.add(
            "%s: %s, before %s"
                .formatted(
                    kind.replace('-', ' '),
                    now.getOrDefault(kind, "nothing"),
                    old.getOrDefault(kind, "nothing")));
      }
    }
  }

  private static Map<String, String> values(Word word) {
    Map<String, String> values = new TreeMap<>();
    for (Tag tag : word.tags()) {
      values.put(tag.kind(), tag.value());
    }
    values.put("commonness", String.valueOf(word.commonness()));
    return values;
  }
}
