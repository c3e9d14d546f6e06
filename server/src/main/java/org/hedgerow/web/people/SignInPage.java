package org.hedgerow.web.people;

/**
 * @param then where to go on
 * @param error what went wrong, or an empty text
 */
record SignInPage(Form form, String then, String error) {}
