package org.hedgerow.review;

import java.util.List;

/**
 * What the machine makes of a contribution.
 *
 * @param serves the phonogram values whose lists would gain by it, as in {@code oa 1}
 * @param remarks what a reviewer should look at
 */
public record Examination(List<String> serves, List<ContributionFinding> remarks) {
  public Examination {
    serves = List.copyOf(serves);
    remarks = List.copyOf(remarks);
  }
}
