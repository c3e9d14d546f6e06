package org.hedgerow.web;

/** How the server does, asked by whatever watches over it. */
public interface Health {

  /** Whether a change has been going on for so long that it will never end; never waits. */
  boolean isStuck();

  /** Whether changes can be stored just now; takes a few seconds at most. */
  boolean takesWrites();
}
