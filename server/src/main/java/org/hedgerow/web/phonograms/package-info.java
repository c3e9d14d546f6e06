/** Phonograms and sounds: the chart, the inventory of an accent, sound families. */
@NullMarked
package org.hedgerow.web.phonograms;

import org.jspecify.annotations.NullMarked;
