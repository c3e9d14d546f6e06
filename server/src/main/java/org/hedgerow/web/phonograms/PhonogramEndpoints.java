package org.hedgerow.web.phonograms;

import org.hedgerow.web.http.Endpoints;
import org.hedgerow.web.query.ValueCounts;

/** What programs may ask about phonograms and sounds. */
public final class PhonogramEndpoints {
  private PhonogramEndpoints() {}

  public static void enter(Endpoints endpoints, ValueCounts counts) {
    CachedSoundFamilies families = new CachedSoundFamilies(counts);
    endpoints.rehearsedRead("/phonograms", new PhonogramsRead(endpoints.json(), counts));
    endpoints.rehearsedRead("/sounds", new SoundsRead(endpoints.json(), families));
    endpoints.read("/sounds/{sound}", new SoundRead(endpoints.json(), families));
  }
}
