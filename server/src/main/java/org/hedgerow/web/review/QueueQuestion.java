package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Queue.Waiting;

/**
 * Which of those that wait a reviewer wants to see; empty where it doesn't matter.
 *
 * @param serves the label of a phonogram value, as in {@code oa 1}
 * @param author the number of an account
 */
record QueueQuestion(String kind, String serves, String author, String accent) {

  static QueueQuestion of(Context context) {
    return new QueueQuestion(
        text(context, "kind"),
        text(context, "serves"),
        text(context, "author"),
        text(context, "accent"));
  }

  private static String text(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).orElse("").strip();
  }

  ContributionQuery query(int viewer) {
    int account = Fields.number(author, 0);
    return new ContributionQuery(
        Set.of(ContributionState.SUBMITTED),
        ContributionKind.labelled(kind),
        account == 0 ? OptionalInt.empty() : OptionalInt.of(account),
        serves.isEmpty() ? Optional.empty() : Optional.of(serves),
        Optional.empty(),
        OptionalInt.empty(),
        viewer,
        ContributionQuery.MAX);
  }

  List<Waiting> in(List<Waiting> waiting) {
    return accent.isEmpty() ? waiting : waiting.stream().filter(this::isInAccent).toList();
  }

  private boolean isInAccent(Waiting waiting) {
    return waiting.contribution().proposal().pronunciations().stream()
        .anyMatch(saying -> saying.accent().equals(accent));
  }
}
