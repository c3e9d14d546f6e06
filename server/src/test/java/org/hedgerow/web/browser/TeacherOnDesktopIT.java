package org.hedgerow.web.browser;

final class TeacherOnDesktopIT extends TeacherScenarios {

  TeacherOnDesktopIT() {
    super(Screen.DESKTOP);
  }
}
