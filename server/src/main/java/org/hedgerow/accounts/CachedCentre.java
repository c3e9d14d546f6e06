package org.hedgerow.accounts;

import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.UnavailableException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The centre as it was last seen, for pages that mustn't wait for the database. It is looked at
 * again every few seconds, since another server may have changed it. Safe for use by several
 * threads.
 */
public final class CachedCentre implements Supplier<Centre>, AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(CachedCentre.class);
  private static final Duration PAUSE = Duration.ofSeconds(2);

  private final CentreSettings settings;
  private final Timer timer = new Timer("look-at-centre", true);
  private volatile Centre known = Centre.UNNAMED;

  public CachedCentre(CentreSettings settings) {
    this.settings = settings;
  }

  /** Looks at it now, and from now on every few seconds. */
  public CachedCentre watch() {
    look();
    timer.schedule(
        new TimerTask() {
          @Override
          public void run() {
            lookAgain();
          }
        },
        PAUSE.toMillis(),
        PAUSE.toMillis());
    return this;
  }

  /** What nobody foresaw mustn't end the watch. */
  private void lookAgain() {
    try {
      look();
    } catch (RuntimeException unexpected) {
      LOG.warn("The centre can't be looked at", unexpected);
    }
  }

  @Override
  public Centre get() {
    return known;
  }

  /** What the centre is called, or an empty text. */
  public String name() {
    return known.name().orElse("");
  }

  /** As {@link CentreSettings#change}; what is changed is known at once. */
  public Centre change(Actor actor, CentreEdit edit, Predicate<Centre> asExpected) {
    Centre changed = settings.change(actor, edit, asExpected);
    learn(changed);
    return changed;
  }

  /** Keeps to what was known if that isn't possible now. */
  public void look() {
    try {
      learn(settings.read());
    } catch (UnavailableException later) {
      return;
    }
  }

  /** Refreshes can complete out of order. */
  private synchronized void learn(Centre seen) {
    known = seen.newer(known);
  }

  @Override
  public void close() {
    timer.cancel();
  }
}
