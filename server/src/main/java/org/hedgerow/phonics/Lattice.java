package org.hedgerow.phonics;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All alignments of one spelling with one pronunciation, as paths in a graph. A node is a number of
 * letters spelt, a number of sounds said, and a {@link LeftContext}; an edge is a span, or the
 * closing e of a split grapheme. Edges stand in topological order: all edges into a node come
 * before those out of it.
 */
final class Lattice {

  /** The realisation of an edge that closes a split grapheme. */
  static final int CLOSING = -1;

  private static final LeftContext[] CONTEXTS = LeftContext.values();
  private static final int NONE = -1;

  private final CompiledCatalogue catalogue;
  private final String spelling;
  private final int[] sounds;
  private final int[] nodes;
  private int nodeCount;
  private int[] from = new int[128];
  private int[] to = new int[128];
  private int[] realisation = new int[128];
  private int edgeCount;
  private int furthestLetter;
  private int furthestSound;

  Lattice(CompiledCatalogue catalogue, String spelling, int[] sounds) {
    this.catalogue = catalogue;
    this.spelling = spelling;
    this.sounds = sounds;
    this.nodes = new int[(spelling.length() + 1) * (sounds.length + 1) * CONTEXTS.length];
    Arrays.fill(nodes, NONE);
    node(0, 0, LeftContext.PLAIN);
    for (int letter = 0; letter < spelling.length(); letter++) {
      for (int sound = 0; sound <= sounds.length; sound++) {
        for (LeftContext context : CONTEXTS) {
          int node = nodes[key(letter, sound, context)];
          if (node != NONE) {
            expand(node, letter, sound, context);
          }
        }
      }
    }
  }

  @SuppressWarnings("EnumOrdinal") // an index into an array of this lattice alone, never kept
  private int key(int letter, int sound, LeftContext context) {
    return (letter * (sounds.length + 1) + sound) * CONTEXTS.length + context.ordinal();
  }

  private int node(int letter, int sound, LeftContext context) {
    int key = key(letter, sound, context);
    if (nodes[key] == NONE) {
      nodes[key] = nodeCount++;
    }
    return nodes[key];
  }

  private void expand(int node, int letter, int sound, LeftContext context) {
    furthestLetter = letter;
    furthestSound = Math.max(furthestSound, sound);
    if (context.canClose()
        && spelling.charAt(letter) == 'e'
        && !SilentE.isNeedlessBefore(SilentE.letterAt(spelling, letter + 1))) {
      addEdge(node, node(letter + 1, sound, LeftContext.CLOSED), CLOSING);
    }
    int end = letter;
    int trieNode = catalogue.root();
    while (end < spelling.length()) {
      trieNode = catalogue.child(trieNode, spelling.charAt(end++));
      if (trieNode == 0) {
        return;
      }
      for (int candidate : catalogue.endingAt(trieNode)) {
        if (catalogue.matches(candidate, sounds, sound)) {
          addSpan(node, candidate, letter, end, sound, context);
        }
      }
    }
  }

  private void addSpan(
      int node, int candidate, int start, int end, int sound, LeftContext context) {
    SpanPart part = catalogue.part(candidate);
    int soundEnd = sound + catalogue.soundCount(candidate);
    Sound after = soundAt(soundEnd);
    boolean vowelAfter = after != null && after.vowel();
    if (context.allows(part, SilentE.letterAt(spelling, end), vowelAfter)
        && catalogue.place(candidate).holds(spelling, start, end, soundAt(sound - 1), after)) {
      addEdge(node, node(end, soundEnd, context.after(part)), candidate);
    }
  }

  private @Nullable Sound soundAt(int index) {
    return index < 0 || index >= sounds.length ? null : catalogue.sound(sounds[index]);
  }

  private void addEdge(int source, int target, int candidate) {
    if (edgeCount == from.length) {
      from = Arrays.copyOf(from, 2 * edgeCount);
      to = Arrays.copyOf(to, 2 * edgeCount);
      realisation = Arrays.copyOf(realisation, 2 * edgeCount);
    }
    from[edgeCount] = source;
    to[edgeCount] = target;
    realisation[edgeCount++] = candidate;
  }

  int nodeCount() {
    return nodeCount;
  }

  int edgeCount() {
    return edgeCount;
  }

  int from(int edge) {
    return from[edge];
  }

  int to(int edge) {
    return to[edge];
  }

  /** The number of an edge's realisation, or {@link #CLOSING}. */
  int realisation(int edge) {
    return realisation[edge];
  }

  /** The node before all letters; it has the number 0. */
  int start() {
    return 0;
  }

  /** The nodes after all letters and all sounds with no split grapheme left open. */
  int[] ends() {
    return Arrays.stream(CONTEXTS)
        .filter(context -> !context.isOpen())
        .mapToInt(context -> nodes[key(spelling.length(), sounds.length, context)])
        .filter(node -> node != NONE)
        .toArray();
  }

  /** The last letter position from which spans were tried. */
  int furthestLetter() {
    return furthestLetter;
  }

  /** The most sounds that any partial alignment explains. */
  int furthestSound() {
    return furthestSound;
  }
}
