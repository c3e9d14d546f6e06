package org.hedgerow.phonics;

/** A symbol that stands for no sound of the accent, in any notation that is read. */
public final class UnknownSoundException extends IllegalArgumentException {

  private static final long serialVersionUID = 1;

  private final String symbol;
  private final String ipa;

  public UnknownSoundException(String symbol) {
    this(symbol, symbol);
  }

  /**
   * @param ipa what it means, where that is known; else the symbol itself
   */
  UnknownSoundException(String symbol, String ipa) {
    super("no sound is written " + symbol);
    this.symbol = symbol;
    this.ipa = ipa;
  }

  /** The symbol as it was given. */
  public String symbol() {
    return symbol;
  }

  /** Whether it is a sound at all, and only the accent lacks it. */
  public boolean isRead() {
    return !ipa.equals(symbol);
  }

  /**
   * What is wrong, for a teacher.
   *
   * @param accent its name
   */
  public String lackingIn(String accent) {
    return isRead()
        ? "“%s” is the sound /%s/, which %s doesn’t have.".formatted(symbol, ipa, accent)
        : "“%s” is no sound of %s.".formatted(symbol, accent);
  }
}
