package org.hedgerow.store;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import org.hedgerow.accounts.UnavailableException;
import org.hedgerow.caching.Memo;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.jdbi.v3.core.JdbiException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The editions of a database, whoever publishes them. A new one is made beside the present one and
 * then put in its place, so that nobody who reads ever waits; whoever wants to prepare for it does
 * so before. Old ones are made when they are asked for, and a few are kept.
 */
public final class LiveEditions implements Editions, AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(LiveEditions.class);
  private static final int OLD_ONES_KEPT = 4;

  /** How long whoever publishes waits for others who do. The edition is shown soon all the same. */
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final EditionReader reader;
  private final Outage outage;
  private final RememberedEditionLog log;
  private final Lexicon first;
  private final ReentrantLock making = new ReentrantLock();
  private final Memo<Integer, Lexicon> old = Memo.ofSize(OLD_ONES_KEPT);
  private final List<Consumer<Lexicon>> preparations = new CopyOnWriteArrayList<>();
  private final EditionListener listener;
  private volatile Lexicon newest;

  /**
   * Begins with the newest edition and listens for others until it is closed.
   *
   * @param first the first edition of the bank with its index
   */
  public LiveEditions(BankDatabase bank, Lexicon first) {
    this.reader = new EditionReader(bank);
    this.outage = bank.outage();
    this.first = first;
    this.newest = reader.newest(first);
    this.log =
        new RememberedEditionLog(
            new JdbiEditionLog(bank.jdbi(), bank.patient(), bank.outage(), first.accents()),
            () -> newest().edition());
    this.listener = EditionListener.start(bank.address(), this::lookAndRemember);
  }

  @Override
  public Lexicon newest() {
    return newest;
  }

  @Override
  public Optional<Lexicon> at(int number) {
    catchUp(number);
    Lexicon now = newest;
    if (number < Edition.FIRST || number > now.edition()) {
      return Optional.empty();
    }
    return Optional.of(number == now.edition() ? now : old(number));
  }

  @Override
  public void beforeEach(Consumer<Lexicon> preparation) {
    preparations.add(preparation);
  }

  @Override
  public EditionLog log() {
    return log;
  }

  private Lexicon old(int number) {
    return number == Edition.FIRST ? first : old.get(number, this::make);
  }

  private Lexicon make(int number) {
    return first.edition(number, outage.told(() -> reader.changesAt(first.accents(), number)));
  }

  /**
   * Makes sure that an edition which was published is answered from now on. Whoever publishes calls
   * it after the commit, so that their own answer isn't ahead of the next read.
   */
  public void catchUp(int number) {
    if (number > newest.edition()) {
      try {
        look(number);
      } catch (UnavailableException later) {
        LOG.warn("Edition {} can't be read yet: {}", number, later.getMessage());
      } catch (JdbiException problem) {
        LOG.warn("Edition {} can't be read yet", number, problem);
      }
    }
  }

  /** Whoever waited while others looked may find that they saw the edition too. */
  private void look(int number) {
    outage
        .writes()
        .over(
            () -> {
              if (takesTurn()) {
                lookInTurn(number);
              } else {
                LOG.warn("An edition is being read for more than {}.", PATIENCE);
              }
              return newest;
            });
  }

  private void lookInTurn(int number) {
    try {
      if (number > newest.edition()) {
        showNext();
      }
    } finally {
      making.unlock();
    }
  }

  private boolean takesTurn() {
    try {
      return making.tryLock(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private void lookAndRemember(int number) {
    look(number);
    log.catchUp();
  }

  private void showNext() {
    Lexicon before = newest;
    Lexicon next = outage.told(() -> after(before));
    if (next != before) {
      preparations.forEach(each -> prepare(next, each));
      newest = next;
      old.put(before.edition(), before);
      LOG.info("Edition {} is answered from now on.", next.edition());
    }
  }

  /** What can't be prepared is worked out when it is asked for. */
  private static void prepare(Lexicon next, Consumer<Lexicon> preparation) {
    try {
      preparation.accept(next);
    } catch (RuntimeException problem) {
      LOG.warn("Edition {} can't be prepared", next.edition(), problem);
    }
  }

  private Lexicon after(Lexicon before) {
    EditionReader.Later later = reader.since(first.accents(), before.edition());
    return later.edition() <= before.edition()
        ? before
        : before.edition(later.edition(), later.changes());
  }

  @Override
  public void close() {
    listener.close();
  }
}
