package org.hedgerow.accounts;

import java.time.InstantSource;

/** All that can be done about accounts, put together. */
public record AccountServices(
    SignIn signIn,
    Sessions sessions,
    ApiTokens tokens,
    Invitations invitations,
    FirstAdministrator firstAdministrator,
    Passwords passwords,
    People people,
    AuditReader audit,
    CentreSettings centre) {

  public static AccountServices of(AccountRepository book, PasswordHash hash, InstantSource clock) {
    Secrets secrets = new Secrets();
    Sessions sessions = new Sessions(book, secrets, clock);
    Links links = new Links(secrets, clock);
    return new AccountServices(
        new SignIn(book, hash, sessions, new Devices(secrets), clock),
        sessions,
        new ApiTokens(book, secrets, clock),
        new Invitations(book, hash, links),
        new FirstAdministrator(book, links),
        new Passwords(book, hash, links),
        new People(book, clock),
        new AuditReader(book),
        new CentreSettings(book, clock));
  }
}
