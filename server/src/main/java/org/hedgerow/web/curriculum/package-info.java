/** What a centre teaches: reading rules, sequences and sight words. */
@NullMarked
package org.hedgerow.web.curriculum;

import org.jspecify.annotations.NullMarked;
