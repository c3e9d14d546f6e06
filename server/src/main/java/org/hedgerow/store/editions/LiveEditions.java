package org.hedgerow.store.editions;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.Outage;
import org.jspecify.annotations.Nullable;
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

  /** How long whoever publishes waits for the edition to be shown. It is shown all the same. */
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final EditionReader reader;
  private final Outage outage;
  private final RememberedEditionLog log;
  private final Lexicon first;
  private final ExecutorService showing = Executors.newSingleThreadExecutor(LiveEditions::thread);
  private final ComputingCache<Integer, Lexicon> old = ComputingCache.ofSize(OLD_ONES_KEPT);
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
    if (number > newest.edition()) {
      Future<?> look = look(number);
      await(look, number);
      look.cancel(false); // nobody needs one that hasn't begun when its asker gave up
    }
    Lexicon now = newest;
    if (number < FirstEdition.FIRST || number > now.edition()) {
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
    return number == FirstEdition.FIRST ? first : old.get(number, this::make);
  }

  private Lexicon make(int number) {
    return first.edition(number, outage.told(() -> reader.changesAt(first.accents(), number)));
  }

  /**
   * Makes sure that an edition which was published is answered from now on. Whoever publishes calls
   * it after the commit, so that their own answer isn't ahead of the next read; where the database
   * goes away just then, the edition is shown as soon as it can be read.
   */
  public void catchUp(int number) {
    if (number > newest.edition()) {
      await(look(number), number);
    }
  }

  private void await(Future<?> look, int number) {
    try {
      look.get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException later) {
      LOG.warn("Edition {} isn't shown after {}.", number, PATIENCE);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException failed) {
      warn(number, failed.getCause());
    }
  }

  private static void warn(int number, @Nullable Throwable problem) {
    if (problem instanceof UnavailableException later) {
      LOG.warn("Edition {} can't be read yet: {}", number, later.getMessage());
    } else {
      LOG.warn("Edition {} can't be read yet", number, problem);
    }
  }

  /** Those who asked for the same one before may have had it shown. */
  private Future<?> look(int number) {
    return showing.submit(
        () -> {
          if (number > newest.edition()) {
            outage.writes().over(this::showNext);
          }
        });
  }

  private void lookAndRemember(int number) {
    await(look(number), number);
    log.catchUp();
  }

  private Lexicon showNext() {
    Lexicon before = newest;
    Lexicon next = outage.told(() -> after(before));
    if (next != before) {
      preparations.forEach(each -> prepare(next, each));
      newest = next;
      old.put(before.edition(), before);
      LOG.info("Edition {} is answered from now on.", next.edition());
    }
    return next;
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

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "show-editions");
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public void close() {
    listener.close();
    showing.shutdown();
  }
}
