/**
 * A centre's reading rules, and the checks that judge a word by them and say why.
 *
 * <p>Pure: no I/O, no framework, no clock; all values are immutable.
 */
@NullMarked
package org.hedgerow.reading;

import org.jspecify.annotations.NullMarked;
