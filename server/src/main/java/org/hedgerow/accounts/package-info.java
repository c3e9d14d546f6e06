/**
 * Who may do what: accounts with their roles, the links that make them, sessions, tokens for
 * programs, and the record of what was done. No HTTP and no SQL: {@code store} implements the
 * ports.
 */
@NullMarked
package org.hedgerow.accounts;

import org.jspecify.annotations.NullMarked;
