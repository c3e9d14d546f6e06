/** The pages on which people contribute and on which reviewers decide. */
@NullMarked
package org.hedgerow.web.pages.review;

import org.jspecify.annotations.NullMarked;
