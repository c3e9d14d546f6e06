package org.hedgerow.sentences.compose;

import java.util.List;

/**
 * What is known of words and of the world of a child: which nouns stand for what, who can do what
 * to what, what can be said of what.
 *
 * @param closings what may end any sentence in which something happened
 * @param scenes sentences with words to choose from
 */
public record WorldKnowledge(
    List<Noun> nouns,
    List<VerbFrame> frames,
    List<Whereabouts> whereabouts,
    List<Adjective> adjectives,
    List<Closing> closings,
    List<Scene> scenes) {

  public WorldKnowledge {
    nouns = List.copyOf(nouns);
    frames = List.copyOf(frames);
    whereabouts = List.copyOf(whereabouts);
    adjectives = List.copyOf(adjectives);
    closings = List.copyOf(closings);
    scenes = List.copyOf(scenes);
  }
}
