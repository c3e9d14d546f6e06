// What links and forms can't do alone: copying, printing, and telling people who don't see the
// page what has changed. Everything else works without this script.
"use strict";
(() => {
  const news = (text) => {
    const place = document.getElementById("news");
    place.textContent = "";
    window.setTimeout(() => (place.textContent = text), 50);
  };

  // Where there is room, the choices are open.
  const unfold = () => {
    const fold = document.getElementById("narrow");
    if (fold && window.matchMedia("(min-width: 62rem)").matches) {
      fold.open = true;
    }
  };

  const enliven = () => {
    unfold();
    for (const button of document.querySelectorAll("[data-copy][hidden], [data-print][hidden]")) {
      button.hidden = false;
    }
  };

  const copyBySelection = (field) => {
    const fold = field.closest("details");
    const wasOpen = fold.open;
    fold.open = true;
    field.focus({ preventScroll: true });
    field.select();
    const copied = document.execCommand("copy");
    fold.open = wasOpen;
    return copied;
  };

  // Browsers keep the clipboard from pages that come by plain http from another machine.
  const copy = async (field) => {
    try {
      await navigator.clipboard.writeText(field.value);
      return true;
    } catch (refused) {
      return copyBySelection(field);
    }
  };

  const tellCopied = (button, copied, count) => {
    const thing = button.dataset.thing || "word";
    const text = copied
      ? count + " " + thing + (count === 1 ? "" : "s") + " copied"
      : "Your browser doesn’t let us copy. Open the plain text below and copy it there.";
    const place = button.parentElement.querySelector("[data-copied]");
    place.textContent = text;
    place.dataset.copied = copied ? "yes" : "no";
    button.focus({ preventScroll: true });
    news(text);
  };

  document.addEventListener("click", async (event) => {
    const copier = event.target.closest("[data-copy]");
    if (copier) {
      const field = document.getElementById(copier.dataset.copy);
      tellCopied(copier, await copy(field), field.value.split("\n").length);
    } else if (event.target.closest("[data-print]")) {
      window.print();
    }
  });

  const show = (element) => {
    if (element) {
      element.focus({ preventScroll: true });
      const place = element.getBoundingClientRect();
      if (place.top < 0 || place.bottom > window.innerHeight * 0.6) {
        element.scrollIntoView({ block: "start" });
      }
    }
  };

  const byId = (id) => document.getElementById(id);

  // Where to go on after a part of the page has been replaced, by what was pressed.
  const goOn = (pressed) => {
    if (pressed.dataset.back) {
      show(byId("word-" + pressed.dataset.back) || byId("try-field"));
    } else if (pressed.matches(".tag") || pressed.closest("#look")) {
      show(byId("looked-title") || byId("try-field"));
    } else if (!pressed.matches("#narrow-form, #find")) {
      show(byId("list-title"));
    }
  };

  const topOf = (element) => element.getBoundingClientRect().top;

  let narrowOpen = false;
  let narrowTop = 0;

  document.addEventListener("htmx:beforeSwap", () => {
    const fold = byId("narrow");
    narrowOpen = Boolean(fold && fold.open);
    narrowTop = fold ? topOf(fold) : 0;
  });

  // The choices stay where they were on the screen: a browser that sees the page under them
  // replaced would scroll to whatever it still knows, which is the foot.
  document.addEventListener("htmx:afterSwap", (event) => {
    const fold = byId("narrow");
    if (fold && narrowOpen) {
      fold.open = true;
      if (event.detail.requestConfig && event.detail.requestConfig.elt.matches("#narrow-form")) {
        window.scrollBy({ top: topOf(fold) - narrowTop, behavior: "instant" });
      }
    }
  });

  document.addEventListener("htmx:afterSettle", (event) => {
    enliven();
    const told = document.querySelector("[data-news]");
    const pressed = event.detail.requestConfig && event.detail.requestConfig.elt;
    if (pressed) {
      goOn(pressed);
      const wrong = byId("taught-error");
      if (told && !pressed.matches(".tag") && !pressed.closest("#look")) {
        news(wrong ? wrong.textContent : told.dataset.news);
      }
    }
  });

  document.addEventListener("DOMContentLoaded", enliven);
})();
