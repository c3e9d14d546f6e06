package org.hedgerow.web.curriculum;

import org.hedgerow.review.curriculum.SequenceDraft;

/**
 * An order of teaching to be written.
 *
 * @param lines its steps as they were typed
 */
record SequenceForm(SetForm<SequenceDraft> set, String lines) {}
