package org.hedgerow.web.security;

/** Addresses on this server, to which people may be sent on. */
public final class LocalPath {
  private static final int MAX_LENGTH = 2_000;

  private LocalPath() {}

  /** The address itself, or the first page if it could lead elsewhere. */
  public static String of(String address) {
    return isLocal(address) ? address : "/";
  }

  private static boolean isLocal(String address) {
    return address.startsWith("/")
        && !address.startsWith("//")
        && address.length() <= MAX_LENGTH
        && address.chars().allMatch(sign -> sign > ' ' && sign < 0x7F && sign != '\\');
  }
}
