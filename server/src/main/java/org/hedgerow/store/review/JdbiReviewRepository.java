package org.hedgerow.store.review;

import java.util.List;
import java.util.function.Function;
import org.hedgerow.operations.AuditLog;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.review.BankStore;
import org.hedgerow.review.ContributionStore;
import org.hedgerow.review.CurriculumStore;
import org.hedgerow.review.DecisionStore;
import org.hedgerow.review.ReviewRepository;
import org.hedgerow.review.ReviewUnitOfWork;
import org.hedgerow.review.UploadStore;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.JdbiAudit;
import org.hedgerow.store.database.Outage;
import org.hedgerow.store.database.Transactions;
import org.jdbi.v3.core.Handle;

/** Keeps contributions and decisions in the bank's database. */
public final class JdbiReviewRepository implements ReviewRepository {
  private final Transactions transactions;
  private final Outage outage;
  private final List<AccentCatalogue> accents;

  /**
   * @param accents of any edition: all have the same
   */
  public JdbiReviewRepository(BankDatabase bank, List<AccentCatalogue> accents) {
    this.transactions = bank.transactions();
    this.outage = bank.outage();
    this.accents = List.copyOf(accents);
  }

  @Override
  public <R> R inTransaction(Function<ReviewUnitOfWork, R> work) {
    return outage.toldWriting(
        () -> transactions.run(handle -> work.apply(new Page(handle, accents))));
  }

  @Override
  public <R> R reading(Function<ReviewUnitOfWork, R> work) {
    return outage.told(() -> transactions.read(handle -> work.apply(new Page(handle, accents))));
  }

  private record Page(Handle handle, List<AccentCatalogue> accents) implements ReviewUnitOfWork {
    @Override
    public ContributionStore contributions() {
      return new JdbiContributions(handle);
    }

    @Override
    public DecisionStore decisions() {
      return new JdbiDecisions(handle);
    }

    @Override
    public UploadStore uploads() {
      return new JdbiUploads(handle);
    }

    @Override
    public BankStore bank() {
      return new JdbiBank(handle, accents);
    }

    @Override
    public CurriculumStore curriculum() {
      return new JdbiCurriculum(handle, accents);
    }

    @Override
    public AuditLog audit() {
      return new JdbiAudit(handle);
    }
  }
}
