package org.hedgerow.sentences;

import java.util.Set;

/**
 * The 220 words of E. W. Dolch, <em>A Basic Sight Vocabulary</em>, The Elementary School Journal 36
 * (1936), from memory: what is taught whole where a centre has not said otherwise.
 */
public final class DolchWords {

  public static final Set<String> ALL =
      Set.of(
          """
          a and away big blue can come down find for funny go help here i in is it jump little
          look make me my not one play red run said see the three to two up we where yellow you
          all am are at ate be black brown but came did do eat four get good have he into like
          must new no now on our out please pretty ran ride saw say she so soon that there they
          this too under want was well went what white who will with yes after again an any as ask
          by could every fly from give going had has her him his how just know let live may of old
          once open over put round some stop take thank them then think walk were when always
          around because been before best both buy call cold does don't fast first five found gave
          goes green its made many off or pull read right sing sit sleep tell their these those
          upon us use very wash which why wish work would write your about better bring carry
          clean cut done draw drink eight fall far full got grow hold hot hurt if keep kind laugh
          light long much myself never only own pick seven shall show six small start ten today
          together try warm
          """
              .strip()
              .split("\\s+", -1));

  private DolchWords() {}
}
