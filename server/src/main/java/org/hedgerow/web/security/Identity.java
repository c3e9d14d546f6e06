package org.hedgerow.web.security;

import io.javalin.http.Context;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.Session;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/**
 * Who a request comes from.
 *
 * @param session of a person in a browser
 * @param token of a program
 */
public record Identity(Actor actor, Optional<Login> session, Optional<ApiToken> token) {

  /**
   * A session and the cookie that showed it.
   *
   * @param cookie its secret
   */
  public record Login(Session session, Secret cookie) {}

  static final Identity VISITOR = new Identity(Actor.VISITOR, Optional.empty(), Optional.empty());

  /**
   * Looks it up the first time that it is asked for.
   *
   * @throws org.hedgerow.operations.UnavailableException if that can't be done
   */
  public static Identity of(Context context) {
    LazyIdentity lookUp = context.attribute(LazyIdentity.ATTRIBUTE);
    return lookUp == null ? VISITOR : lookUp.identity();
  }

  public boolean isVisitor() {
    return actor.role() == Role.VISITOR;
  }
}
