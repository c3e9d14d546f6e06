package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProfilesTest {
  private static final int NUMBERS = 1_200;

  /** Held against bit sets of the JDK. */
  @Test
  void holdWhatWasMarked() {
    Random random = new Random(7);
    List<BitSet> expected = new ArrayList<>();
    Profiles profiles = new Profiles(300);
    for (int word = 0; word < 300; word++) {
      BitSet held = new BitSet();
      for (int i = random.nextInt(30); i > 0; i--) {
        int number = random.nextInt(NUMBERS);
        held.set(number);
        profiles.mark(number);
        profiles.mark(number);
      }
      profiles.endWord();
      expected.add(held);
    }

    for (int round = 0; round < 100; round++) {
      BitSet asked = new BitSet();
      IntStream.range(0, 1 + random.nextInt(60)).forEach(i -> asked.set(random.nextInt(NUMBERS)));
      long[] bits = Arrays.copyOf(asked.toLongArray(), (NUMBERS >> 6) + 1);
      for (int word = 0; word < 300; word++) {
        assertThat(profiles.holdsAnyOf(word, bits)).isEqualTo(expected.get(word).intersects(asked));
      }
    }
  }
}
