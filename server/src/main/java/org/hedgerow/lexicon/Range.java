package org.hedgerow.lexicon;

/** Whole numbers from {@code least} to {@code most}, both included. */
public record Range(int least, int most) {

  public Range {
    if (least > most) {
      throw new IllegalArgumentException(least + " is more than " + most);
    }
  }

  public boolean contains(int number) {
    return least <= number && number <= most;
  }

  @Override
  public String toString() {
    return least == most ? String.valueOf(least) : least + "-" + most;
  }
}
