/** Accounts: signing in, invitations, tokens, the centre and the audit log. */
@NullMarked
package org.hedgerow.web.people;

import org.jspecify.annotations.NullMarked;
