package org.hedgerow.accounts;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a network address that one customer of a network has: a whole IPv4 address, the first
 * 64 bits of an IPv6 address (RFC 6177). Whoever limits clients counts by it.
 */
public final class Network {
  private static final int PREFIX_BYTES = 8;

  /** An address in brackets, or an IPv4 address, before a port that some proxies add. */
  private static final Pattern WITH_PORT = Pattern.compile("\\[(.+)](?::\\d+)?|([0-9.]+):\\d+");

  private Network() {}

  /**
   * As in {@code 192.0.2.7} or {@code 20010db800000001/64}; the text itself if it is no address. No
   * name is ever looked up.
   */
  public static String of(String address) {
    Matcher matcher = WITH_PORT.matcher(address);
    String plain =
        !matcher.matches()
            ? address
            : matcher.group(1) != null ? matcher.group(1) : matcher.group(2);
    return plain.contains(":") ? prefix(plain) : plain;
  }

  /** The brackets keep Java from taking it for a name. */
  private static String prefix(String address) {
    try {
      InetAddress read = InetAddress.getByName("[" + address + "]");
      return read instanceof Inet4Address
          ? read.getHostAddress()
          : HexFormat.of().formatHex(Arrays.copyOf(read.getAddress(), PREFIX_BYTES)) + "/64";
    } catch (UnknownHostException nonsense) {
      return address;
    }
  }
}
