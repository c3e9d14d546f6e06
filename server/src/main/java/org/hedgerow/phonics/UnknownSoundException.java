package org.hedgerow.phonics;

/** A symbol that stands for no sound of the accent, in any notation that is read. */
public final class UnknownSoundException extends IllegalArgumentException {

  private static final long serialVersionUID = 1;

  private final String symbol;

  public UnknownSoundException(String symbol) {
    super("no sound is written " + symbol);
    this.symbol = symbol;
  }

  /** The symbol as it was given. */
  public String symbol() {
    return symbol;
  }
}
