package org.hedgerow.web.testing;

import java.util.List;

/** One of every kind of page. */
public final class SamplePages {

  public static final List<String> ADDRESSES =
      List.of(
          "/",
          "/?find=igh",
          "/?find=zq",
          "/?phonogram=oa&value=1",
          "/?phonogram=ou&value=1&letters=5&position=middle&syllables=1&taught=sh,ch",
          "/?phonogram=ea&value=1&word=teacher",
          "/?phonogram=sh&value=1&word=encyclopedically",
          "/?phonogram=oo&value=2&word=wool",
          "/?phonogram=ti&value=1",
          "/?phonogram=sh&value=1&letters=2",
          "/?sound=o%CA%8A",
          "/?shape=ccvcc",
          "/?phonogram=sh&value=1&word=na%C3%AFve",
          "/?phonogram=ao",
          "/?phonogram=sh&value=1&taught=zq",
          "/words/teacher",
          "/words/encyclopedically",
          "/words/teachxr",
          "/?accent=en-US,en-GB",
          "/?phonogram=ar&value=1&accent=en-US,en-GB",
          "/compare?phonogram=ar&value=1&accent=en-US&with=en-GB",
          "/compare?phonogram=pn&value=1&accent=en-US&with=en-GB",
          "/compare?shape=cvc&accent=en-GB&with=en-GB",
          "/sequences",
          "/sequences?sequence=pairs&accent=en-GB",
          "/sight-words",
          "/sight-words?accent=en-GB",
          "/needs",
          "/sentences",
          "/sentences?for=oa+1&accent=en-US,en-GB",
          "/sentences/check",
          "/sentences/check?for=oa+1&text=The+goat+and+the+sheep+ran+to+a+tree+%F0%9F%90%90",
          "/sentences/make",
          "/sentences/make?for=oa+1&accent=en-US,en-GB&keep=The+goat+is+on+a+boat.",
          "/nowhere");

  private SamplePages() {}
}
