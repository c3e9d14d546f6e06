package org.hedgerow.web.pages;

final class TeacherOnPhoneIT extends TeacherScenarios {

  TeacherOnPhoneIT() {
    super(Screen.PHONE);
  }
}
