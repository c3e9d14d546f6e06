package org.hedgerow.fuzz;

import java.net.http.HttpHeaders;
import java.time.Duration;

/**
 * What came back.
 *
 * @param status 0 if the connection was closed before there was an answer
 * @param body decoded as UTF-8, unzipped
 * @param closes whether the server closes the connection after it
 */
record Answer(int status, HttpHeaders headers, String body, Duration time, boolean closes) {
  boolean isMissing() {
    return status == 0;
  }

  String mediaType() {
    return headers.firstValue("Content-Type").orElse("").split(";", 2)[0].strip();
  }
}
