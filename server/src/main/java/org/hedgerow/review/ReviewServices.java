package org.hedgerow.review;

import java.time.InstantSource;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;

/** All that can be done about contributions, put together. */
public record ReviewServices(
    Reviews reviews,
    Queue queue,
    Write write,
    Revise revise,
    Submit submit,
    SubmitMany submitMany,
    RecallSubmission takeBack,
    Discard discard,
    SendPicture sendPicture,
    Decide decide,
    TeachingServices teaching) {

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
    ReviewContext room = new ReviewContext(book, newest, votes, published, clock);
    return new ReviewServices(
        new Reviews(room),
        new Queue(room),
        new Write(room),
        new Revise(room),
        new Submit(room),
        new SubmitMany(room),
        new RecallSubmission(room),
        new Discard(room),
        new SendPicture(room),
        new Decide(room),
        TeachingServices.of(room));
  }
}
