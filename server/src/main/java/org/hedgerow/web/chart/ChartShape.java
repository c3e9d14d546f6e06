package org.hedgerow.web.chart;

import org.hedgerow.web.page.ListAddress;

/**
 * A shape of words without a phonogram in the chart.
 *
 * @param example the commonest word of this shape
 * @param words how many words its default list has
 * @param accents those of the list, as in addresses
 */
public record ChartShape(String shape, String example, int words, String accents) {

  public String address() {
    return ListAddress.ofShape(shape, accents);
  }
}
