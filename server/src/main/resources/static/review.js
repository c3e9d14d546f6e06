// What forms of contributions and the review of them gain where scripts run: drafts that save by
// themselves, sounds and letters to tap, keys for reviewers. Everything works without it.
"use strict";
(() => {
  const WAIT = 700;
  const byId = (id) => document.getElementById(id);

  // Times in the zone of whoever looks.
  const today = (date) => date.toDateString() === new Date().toDateString();

  const localise = (root) => {
    for (const time of root.querySelectorAll("time[data-local]")) {
      const date = new Date(time.dateTime);
      const clock = date.toLocaleTimeString([], { hour: "numeric", minute: "2-digit" });
      const day = date.toLocaleDateString("en-GB", { day: "numeric", month: "long" });
      time.title = time.textContent;
      time.textContent = today(date) ? clock : day + ", " + clock;
      time.removeAttribute("data-local");
    }
  };

  // Saving.
  let timer = 0;
  let unsaved = false;
  let waiting = false;

  const say = (text, failed) => {
    const place = byId("saved");
    if (place) {
      place.textContent = text;
      place.classList.toggle("failed", Boolean(failed));
      if (failed) {
        place.setAttribute("role", "alert");
      }
    }
  };

  const save = (how) => {
    window.clearTimeout(timer);
    const saver = byId(how);
    if (saver) {
      say("Saving …");
      saver.dispatchEvent(new CustomEvent("hedgerow-save", { bubbles: false }));
    }
  };

  let pending = "save-part";

  const later = (how) => {
    unsaved = true;
    waiting = true;
    pending = how === "save-whole" ? how : pending;
    window.clearTimeout(timer);
    timer = window.setTimeout(() => {
      const now = pending;
      waiting = false;
      pending = "save-part";
      save(now);
    }, WAIT);
  };

  const onInput = (event) => {
    const form = event.target.closest("form[data-autosave]");
    if (form && event.target.type !== "file") {
      later(event.target.matches("[data-whole]") ? "save-whole" : "save-part");
    }
  };

  document.addEventListener("input", onInput);

  document.addEventListener("change", (event) => {
    if (event.target.matches("select")) {
      onInput(event);
    }
    if (event.target.matches("form[data-autosave] [data-file]") && event.target.files.length) {
      unsaved = true;
      save("save-file");
    }
  });

  const ours = (event) => {
    const elt = event.detail.elt;
    return elt && elt.closest && elt.closest("form[data-autosave]");
  };

  document.addEventListener("htmx:beforeSwap", (event) => {
    if (!ours(event)) {
      return;
    }
    const status = event.detail.xhr.status;
    const known = status === 200 || status === 400 || status === 409 || status === 412;
    if (!known) {
      event.detail.shouldSwap = false;
      say(
        status === 401 || status === 403
          ? "Not saved: you are no longer signed in. What you wrote is still here; sign in in another tab."
          : "Not saved: the server can’t just now. What you wrote is still here.",
        true,
      );
    } else if (status === 200) {
      unsaved = waiting;
    }
  });

  document.addEventListener("htmx:sendError", (event) => {
    if (ours(event)) {
      say("Not saved: no connection. What you wrote is still here, and is saved once you write on.", true);
    }
  });

  // While something is being saved, the form holds a revision that is about to be old: what is sent
  // by hand waits until it holds the new one.
  const saving = new Set();
  let held = null;

  document.addEventListener("htmx:beforeSend", (event) => {
    if (ours(event)) {
      saving.add(event.detail.xhr);
    }
  });

  document.addEventListener("htmx:afterRequest", (event) => {
    // Known by the request: what sent it may have been taken off the page by the answer.
    if (saving.delete(event.detail.xhr) && saving.size === 0 && held) {
      const { name, value } = held;
      const form = document.querySelector("form[data-autosave]");
      held = null;
      const button =
        form && name && form.querySelector(`button[name="${name}"][value="${value}"]`);
      window.setTimeout(() => form && form.requestSubmit(button || undefined), 0);
    }
  });

  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.matches("form[data-autosave]")) {
      return;
    }
    window.clearTimeout(timer);
    if (saving.size > 0) {
      event.preventDefault();
      const pressed = event.submitter;
      held = { name: pressed && pressed.name, value: pressed && pressed.value };
      return;
    }
    unsaved = false;
  });

  window.addEventListener("beforeunload", (event) => {
    if (unsaved) {
      event.preventDefault();
    }
  });

  // Sounds.
  const touch = (field) => field.dispatchEvent(new Event("input", { bubbles: true }));

  const addSound = (field, sound) => {
    const at = field.selectionStart === null ? field.value.length : field.selectionStart;
    const start = document.activeElement === field ? at : field.value.length;
    const before = field.value.slice(0, start).trim();
    const after = field.value.slice(start).trim();
    field.value = [before, sound, after].filter(Boolean).join(" ");
    touch(field);
  };

  const dropSound = (field) => {
    field.value = field.value.trim().replace(/(^|\s+)\S+$/, "");
    touch(field);
  };

  // Letters and sounds, tapped together.
  const selects = (tap) =>
    [...tap.parentElement.querySelectorAll("select[name='letter-" + tap.dataset.tap + "']")];

  const choose = (tap, choice) => {
    const letters = [...tap.querySelectorAll(".tap-letter")];
    const fields = selects(tap);
    const picked = letters.map((letter) => letter.getAttribute("aria-pressed") === "true");
    if (!picked.some(Boolean)) {
      return;
    }
    fields.forEach((field, place) => {
      if (picked[place]) {
        field.value = choice;
      } else if (choice !== "-" && field.value === choice) {
        field.value = "";
      }
    });
    letters.forEach((letter) => letter.setAttribute("aria-pressed", "false"));
    touch(fields[0]);
  };

  document.addEventListener("click", (event) => {
    const key = event.target.closest("[data-say], [data-unsay]");
    if (key) {
      event.preventDefault();
      if (key.dataset.say) {
        addSound(byId(key.dataset.say), key.dataset.sound);
      } else {
        dropSound(byId(key.dataset.unsay));
      }
      return;
    }
    const letter = event.target.closest(".tap-letter");
    if (letter) {
      const on = letter.getAttribute("aria-pressed") === "true";
      letter.setAttribute("aria-pressed", String(!on));
      return;
    }
    const sound = event.target.closest("[data-tap] [data-choice]");
    if (sound) {
      choose(sound.closest("[data-tap]"), sound.dataset.choice);
    }
  });

  // Keys for reviewers.
  const KEYS = "hedgerow-keys";

  const keysAreOn = () => {
    try {
      return window.localStorage.getItem(KEYS) !== "off";
    } catch (refused) {
      return true;
    }
  };

  const switchKeys = (on) => {
    try {
      window.localStorage.setItem(KEYS, on ? "on" : "off");
    } catch (refused) {
      // It is forgotten with the page then.
    }
    document.documentElement.classList.toggle("no-keys", !on);
  };

  const isWriting = (target) =>
    target.matches("textarea, select, [contenteditable]") ||
    (target.matches("input") && !target.matches("[type=checkbox], [type=radio]"));

  const rows = () => [...document.querySelectorAll("[data-row]")];

  const walk = (step) => {
    const all = rows();
    const at = all.findIndex((row) => row.contains(document.activeElement));
    const next = all[Math.min(Math.max(at + step, 0), all.length - 1)];
    if (next) {
      next.querySelector(".queue-link").focus();
    }
  };

  const select = () => {
    const row = document.activeElement.closest("[data-row]");
    const box = row && row.querySelector("input[type=checkbox]");
    if (box) {
      box.click();
    }
  };

  const press = (key) => {
    const target = document.querySelector("[data-key='" + key + "']");
    if (!target) {
      return false;
    }
    const needed = target.dataset.needs && byId(target.dataset.needs);
    if (needed && !needed.value.trim()) {
      needed.focus();
      needed.dataset.then = key;
      return true;
    }
    target.click();
    return true;
  };

  const SAME = { ArrowRight: "j", ArrowLeft: "k" };

  document.addEventListener("keydown", (event) => {
    const page = document.querySelector("[data-review]");
    if (!page || !keysAreOn() || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) {
      return;
    }
    if (isWriting(event.target)) {
      return;
    }
    const key = SAME[event.key] || event.key;
    if (page.dataset.review === "queue" && (key === "j" || key === "k" || key === "x")) {
      event.preventDefault();
      if (key === "x") {
        select();
      } else {
        walk(key === "j" ? 1 : -1);
      }
    } else if (key.length === 1 && "arduqjk".includes(key) && press(key)) {
      event.preventDefault();
    }
  });

  document.addEventListener("change", (event) => {
    if (event.target.closest("[data-keys-switch]")) {
      switchKeys(event.target.checked);
    }
  });

  // What works only with scripts appears with them.
  const enliven = (root) => {
    localise(root);
    for (const tap of root.querySelectorAll("[data-tap][hidden]")) {
      tap.hidden = false;
      const plain = tap.parentElement.querySelector("[data-letter-by-letter]");
      if (plain && !plain.contains(document.activeElement)) {
        plain.open = false;
      }
    }
    for (const place of root.querySelectorAll("[data-keys-switch][hidden]")) {
      place.hidden = false;
      place.querySelector("input").checked = keysAreOn();
    }
  };

  const folds = new Map();

  document.addEventListener("htmx:beforeSwap", () => {
    for (const fold of document.querySelectorAll("details[id]")) {
      folds.set(fold.id, fold.open);
    }
  });

  document.addEventListener("htmx:afterSettle", (event) => {
    enliven(document);
    for (const [id, open] of folds) {
      const fold = byId(id);
      if (fold) {
        fold.open = open;
      }
    }
    const pressed = event.detail.requestConfig && event.detail.requestConfig.elt;
    if (pressed && pressed.matches && pressed.matches("[data-added], [data-removed]")) {
      const all = document.querySelectorAll("fieldset.saying select[name^='accent-']");
      if (all.length) {
        all[all.length - 1].focus();
      }
    }
  });

  const start = () => {
    document.documentElement.classList.toggle("no-keys", !keysAreOn());
    enliven(document);
  };

  if (document.readyState === "loading") {
    document.addEventListener("DOMContentLoaded", start);
  } else {
    start();
  }
})();
