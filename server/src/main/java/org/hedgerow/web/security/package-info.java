/** Who a request comes from, and whether they may: cookies, tokens, roles, forged forms. */
@NullMarked
package org.hedgerow.web.security;

import org.jspecify.annotations.NullMarked;
