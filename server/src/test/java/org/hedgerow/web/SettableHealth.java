package org.hedgerow.web;

/** Says what it is told to say. */
public final class SettableHealth implements Health {
  private volatile boolean stuck;
  private volatile boolean takesWrites = true;

  @Override
  public boolean isStuck() {
    return stuck;
  }

  @Override
  public boolean takesWrites() {
    return takesWrites;
  }

  void setStuck(boolean now) {
    stuck = now;
  }

  void setTakesWrites(boolean now) {
    takesWrites = now;
  }
}
