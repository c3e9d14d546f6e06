/**
 * What a centre teaches by, each set with a name: reading rules, the sequences in which phonograms
 * are taught, and sight words.
 */
@NullMarked
package org.hedgerow.curriculum;

import org.jspecify.annotations.NullMarked;
