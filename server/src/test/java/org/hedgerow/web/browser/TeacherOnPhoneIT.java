package org.hedgerow.web.browser;

final class TeacherOnPhoneIT extends TeacherScenarios {

  TeacherOnPhoneIT() {
    super(Screen.PHONE);
  }
}
