package org.hedgerow.review;

import java.time.InstantSource;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;

/** All that can be done about contributions, put together. */
public record ReviewServices(
    ReviewContext context,
    Reviews reviews,
    Queue queue,
    Write write,
    Revise revise,
    Submit submit,
    SubmitMany submitMany,
    RecallSubmission takeBack,
    Discard discard,
    SendPicture sendPicture,
    Decide decide) {

  /**
   * @param newest the newest edition in memory
   * @param votes how many reviewers must approve: 1 or 2
   * @param published told the number of every new edition, after its transaction
   */
  public static ReviewServices of(
      ReviewRepository book,
      Supplier<Lexicon> newest,
      IntSupplier votes,
      IntConsumer published,
      InstantSource clock) {
    ReviewContext context = new ReviewContext(book, newest, votes, published, clock);
    return new ReviewServices(
        context,
        new Reviews(context),
        new Queue(context),
        new Write(context),
        new Revise(context),
        new Submit(context),
        new SubmitMany(context),
        new RecallSubmission(context),
        new Discard(context),
        new SendPicture(context),
        new Decide(context));
  }
}
