package org.hedgerow.app.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.DecisionRequest;
import org.hedgerow.review.NewPicture;
import org.hedgerow.review.Proposal;
import org.hedgerow.review.ReviewServices;

/** Plays what the centre did in a week, in the order in which it happened. */
final class DemoWeek {
  private final ReviewServices services;
  private final DemoClock clock;
  private final Map<String, Account> members;

  DemoWeek(ReviewServices services, DemoClock clock, Map<String, Account> members) {
    this.services = services;
    this.clock = clock;
    this.members = members;
  }

  private record Moment(int hoursAgo, Runnable act) {}

  void play(List<DemoScript.Entry> entries) {
    List<Moment> moments = new ArrayList<>();
    for (DemoScript.Entry entry : entries) {
      Story story = new Story(entry);
      moments.add(new Moment(entry.hoursAgo(), story::begin));
      for (DemoScript.Step step : entry.taken()) {
        moments.add(new Moment(step.hoursAgo(), () -> story.take(step)));
      }
    }
    moments.sort(Comparator.comparingInt(Moment::hoursAgo).reversed());
    for (Moment moment : moments) {
      clock.goTo(moment.hoursAgo());
      moment.act().run();
    }
  }

  private Actor actor(String name) {
    return Actor.of(Objects.requireNonNull(members.get(name), name));
  }

  /** What becomes of one contribution. */
  private final class Story {
    private final DemoScript.Entry entry;
    private final List<Contribution> chapters = new ArrayList<>();

    Story(DemoScript.Entry entry) {
      this.entry = entry;
    }

    void begin() {
      chapters.add(services.write().execute(author(), content(entry.proposal())));
    }

    private Actor author() {
      return actor(entry.by());
    }

    private Content content(Proposal proposal) {
      return new Content(
          drawn(proposal),
          Objects.requireNonNullElse(entry.wantedFor(), ""),
          Objects.requireNonNullElse(entry.note(), ""));
    }

    private Proposal drawn(Proposal proposal) {
      if (entry.picture() == null || !(proposal instanceof NewPicture picture)) {
        return proposal;
      }
      String upload =
          services
              .sendPicture()
              .execute(author(), new PictureIntake().take(DemoScript.drawing(entry.picture())))
              .id();
      return new NewPicture(
          picture.spelling(),
          upload,
          picture.title(),
          picture.author(),
          picture.licence(),
          picture.source());
    }

    void take(DemoScript.Step step) {
      Contribution present = chapters.get(chapters.size() - 1);
      chapters.add(next(step, present.id(), present.revision()));
    }

    private Contribution next(DemoScript.Step step, int id, int revision) {
      Actor by = actor(Objects.requireNonNullElse(step.by(), entry.by()));
      return switch (step.act()) {
        case "submit" -> services.submit().execute(by, id, revision);
        case "revise" ->
            services
                .revise()
                .execute(by, id, revision, content(Objects.requireNonNull(step.proposal())));
        default -> services.decide().execute(by, decision(step, id, revision));
      };
    }

    private static DecisionRequest decision(DemoScript.Step step, int id, int revision) {
      DecisionKind kind =
          DecisionKind.labelled(step.act())
              .orElseThrow(() -> new IllegalArgumentException("no act " + step.act()));
      return new DecisionRequest(
          id, revision, kind, step.words(), Objects.requireNonNullElse(step.finding(), ""));
    }
  }
}
