// Notes: one tap saves a child and opens the next. Without this script the same form leads to the same place.
"use strict";
{
  const cards = () => [...document.querySelectorAll(".note-card")];
  const letters = (form) => [...form.querySelectorAll("[name=letter]")];

  document.addEventListener("change", (event) => {
    const field = event.target, form = field.closest(".note-card > form, .one-child form:has(.formed)");
    if (!form) return;
    const every = form.querySelector("[name=all]"), none = form.querySelector("[name=none]");
    if (field === every) for (const tile of letters(form)) tile.checked = every.checked;
    if (field === none && none.checked) for (const tile of letters(form)) tile.checked = false;
    if (field === every || field.name === "letter") none.checked = false;
    every.checked = letters(form).length > 0 && letters(form).every((tile) => tile.checked);
    form.closest(".note-card")?.querySelector("[data-unsaved]")?.removeAttribute("hidden");
  });

  document.addEventListener("submit", (event) => {
    const form = event.target, card = form.closest(".note-card");
    if (!card || form.dataset.native) return;
    event.preventDefault();
    if (!form.dataset.sending) save(form, card);
  });

  async function save(form, card) {
    form.dataset.sending = "1";
    const asked = new FormData(form);
    asked.append("card", "1");
    let answer, text;
    try {
      answer = await fetch(form.action, { method: "POST", body: asked });
      text = await answer.text();
    } catch {
      sayOffline(form);
      return;
    } finally {
      delete form.dataset.sending;
    }
    const fresh = new DOMParser().parseFromString(text, "text/html").querySelector(".note-card");
    if (!fresh) {  // a form of an earlier start, or of another class: its own page says what to do
      form.dataset.native = "1";
      form.submit();
      return;
    }
    card.replaceWith(fresh);
    fillInitials(fresh);
    if (answer.ok) next(fresh);
    else fresh.querySelector("[role=alert]").scrollIntoView({ block: "center" });
  }

  function next(card) {
    const all = cards(), at = all.indexOf(card), done = all.filter((one) => "done" in one.dataset).length;
    const said = document.querySelector("[data-count]");
    said.textContent = done === all.length ? said.dataset.everyone : said.dataset.count.replace("#", done);
    const then = [...all.slice(at + 1), ...all.slice(0, at)].find((one) => !("done" in one.dataset));
    if (!then) return said.scrollIntoView({ block: "center" });
    then.open = true;
    then.querySelector("summary").focus({ preventScroll: true });
    then.scrollIntoView({ block: "start" });
  }

  addEventListener("beforeunload", (event) => {
    if (document.querySelector(".note-card [data-unsaved]:not([hidden])")) event.preventDefault();
  });
}
