package org.hedgerow.web.pages;

final class TeacherOnDesktopIT extends TeacherScenarios {

  TeacherOnDesktopIT() {
    super(Screen.DESKTOP);
  }
}
