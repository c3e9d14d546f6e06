/**
 * What people propose for the bank and what reviewers decide. One class per verb; whatever a verb
 * reads and changes, it does in one transaction of the {@link
 * org.hedgerow.review.ReviewRepository}.
 */
@NullMarked
package org.hedgerow.review;

import org.jspecify.annotations.NullMarked;
