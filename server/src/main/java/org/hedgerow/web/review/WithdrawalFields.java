package org.hedgerow.web.review;

/**
 * What should go, as fields of a form.
 *
 * @param sentence empty if it is a word
 */
record WithdrawalFields(String sentence, String reason) {}
