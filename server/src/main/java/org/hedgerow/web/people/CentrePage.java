package org.hedgerow.web.people;

/**
 * What a centre chooses for itself.
 *
 * @param name as it is shown in the form
 * @param approvals as it is shown in the form
 * @param version of the centre that the form changes
 * @param done what has just been done, or an empty text
 * @param conflict how it was changed in the meantime, or an empty text
 */
record CentrePage(
    Form form, String name, String approvals, int version, String done, String conflict) {}
