package org.hedgerow.web.browser;

/** The screens that pages are tried on, in CSS pixels. */
enum Screen {
  PHONE(360, 740),
  DESKTOP(1280, 900);

  private final int width;
  private final int height;

  Screen(int width, int height) {
    this.width = width;
    this.height = height;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }
}
