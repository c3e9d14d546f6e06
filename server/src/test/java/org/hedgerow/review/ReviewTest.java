package org.hedgerow.review;

import org.junit.jupiter.api.Nested;

/** Review kept in memory. */
class ReviewTest {
  @Nested
  class RulesAndSequences extends CurriculumContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Contributing extends ContributingContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Deciding extends DecisionsContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Approving extends ApprovingContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Life extends LifeContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Repeating extends RepeatingContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Voting extends VotingContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Race extends RaceContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }

  @Nested
  class Many extends ManyContract {
    @Override
    protected ReviewRecords records() {
      return new MemoryReviewRepository();
    }
  }
}
