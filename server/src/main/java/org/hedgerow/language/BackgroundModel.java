package org.hedgerow.language;

import java.util.List;
import java.util.function.Supplier;
import org.hedgerow.sentences.compose.Plausibility;
import org.jspecify.annotations.Nullable;

/**
 * A model that is loaded beside everything else, so that starting needn't wait for it. Whoever asks
 * it before waits until it is there.
 */
public final class BackgroundModel implements Plausibility {

  private final Supplier<? extends Plausibility> loader;
  private volatile @Nullable Plausibility model;

  public BackgroundModel(Supplier<? extends Plausibility> loader) {
    this.loader = loader;
  }

  @Override
  public double perWord(List<String> words) {
    Plausibility loaded = model;
    return (loaded == null ? load() : loaded).perWord(words);
  }

  /** Loads it, if nobody has before. */
  public synchronized Plausibility load() {
    Plausibility loaded = model;
    if (loaded == null) {
      loaded = loader.get();
      model = loaded;
    }
    return loaded;
  }
}
