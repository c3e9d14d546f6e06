package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.Content;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.web.problems.ParameterError;

/** Judges the rows of a table, and submits the good ones if that is wanted. */
final class TableJudge {
  private final SubmitMany submitMany;
  private final Actor actor;
  private final Map<Integer, JudgedRow> judged = new TreeMap<>();

  TableJudge(SubmitMany submitMany, Actor actor) {
    this.submitMany = submitMany;
    this.actor = actor;
  }

  /** In the order of the table. */
  List<JudgedRow> judge(List<ReadRow> rows, boolean submit) {
    List<ReadRow> sound = sound(rows);
    List<SubmitMany.Result> results = submitMany.judge(actor, contents(sound));
    List<ReadRow> good = new ArrayList<>();
    for (int i = 0; i < sound.size(); i++) {
      put(sound.get(i), results.get(i));
      if (JudgedRow.verdict(sound.get(i), results.get(i)).isGood()) {
        good.add(sound.get(i));
      }
    }
    if (submit && !good.isEmpty()) {
      submit(good);
    }
    return List.copyOf(judged.values());
  }

  /** All but those with errors of their own, and those that repeat another. */
  private List<ReadRow> sound(List<ReadRow> rows) {
    Map<String, Integer> seen = new HashMap<>();
    List<ReadRow> sound = new ArrayList<>();
    for (ReadRow each : rows) {
      int number = each.row().number();
      Integer before = seen.putIfAbsent(each.spelling().toLowerCase(Locale.ROOT), number);
      if (!each.errors().isEmpty()) {
        judged.put(number, JudgedRow.refused(each, RowVerdict.REFUSED, each.errors()));
      } else if (before != null) {
        judged.put(number, JudgedRow.refused(each, RowVerdict.TWICE, List.of(twice(before))));
      } else {
        sound.add(each);
      }
    }
    return sound;
  }

  private static ParameterError twice(int before) {
    return new ParameterError(
        Column.SPELLING.label(),
        "The word stands in row %d already. Propose another pronunciation once the word is in the bank."
            .formatted(before));
  }

  private void submit(List<ReadRow> good) {
    List<SubmitMany.Result> results = submitMany.execute(actor, contents(good));
    for (int i = 0; i < good.size(); i++) {
      put(good.get(i), results.get(i));
    }
  }

  private void put(ReadRow read, SubmitMany.Result result) {
    judged.put(read.row().number(), JudgedRow.of(read, result));
  }

  private static List<Content> contents(List<ReadRow> rows) {
    return rows.stream().map(each -> each.content().orElseThrow()).toList();
  }
}
