/** Contributions and review: writing, submitting, deciding, and tables of many words. */
@NullMarked
package org.hedgerow.web.review;

import org.jspecify.annotations.NullMarked;
