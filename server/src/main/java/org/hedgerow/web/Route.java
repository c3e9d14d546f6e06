package org.hedgerow.web;

import org.hedgerow.operations.Role;

/**
 * One row of the table of routes.
 *
 * @param role who may
 * @param form whether a page's form is sent there
 */
public record Route(String method, String path, Role role, boolean form) {
  static Route of(String method, String path, Role role) {
    return new Route(method, path, role, false);
  }

  /** Whether it can't change anything (RFC 9110, 9.2.1). */
  public boolean isSafe() {
    return method.equals("GET") || method.equals("HEAD") || method.equals("OPTIONS");
  }
}
