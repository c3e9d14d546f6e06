package org.hedgerow.seed;

import java.util.List;
import org.hedgerow.phonics.Correspondence;

/** The forty values with most words in the default lists of both accents, counted once. */
public final class CommonestValues {

  private static final String LABELS =
      "er 1,y 1,a-e 1,le 1,i-e 1,sh 1,o 1,o-e 1,ee 1,ar 1,ea 1,ng 1,oo 1,ou 1,ai 1,ch 1,or 1,al 1,"
          + "or 2,n 1,ow 1,ay 1,oa 1,e 1,ow 2,th 1,ve 1,aw 1,el 1,i 1,tch 1,ar 2,oo 2,y 2,oi 1,"
          + "ur 1,dge 1,a 3,ea 2,igh 1";

  private CommonestValues() {}

  public static List<Correspondence> all() {
    return List.of(LABELS.split(",", -1)).stream().map(CommonestValues::value).toList();
  }

  private static Correspondence value(String label) {
    return SeededLexicon.get().catalogue().correspondences().stream()
        .filter(each -> each.isTaught() && each.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(label));
  }
}
