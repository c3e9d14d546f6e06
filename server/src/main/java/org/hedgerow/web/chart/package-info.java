/** The chart: everything that a list can be made for, each with a key word and a count. */
@NullMarked
package org.hedgerow.web.chart;

import org.jspecify.annotations.NullMarked;
