// A little help for each screen; every screen works without it. No name is kept: only the size of the
// screen and an adult's initials stay in this browser.
"use strict";
const all = (what, within = document) => [...within.querySelectorAll(what)];
const one = (what, within = document) => within.querySelector(what);

// --- a screen's large script begins once the screen was seen: to see the class nobody waits for it ---
for (const link of all("link[data-script]"))
  requestAnimationFrame(() => setTimeout(() => document.head.append(Object.assign(document.createElement("script"), { src: link.href }))));

// --- a form is sent only to a program that answers: what was typed stays on the page otherwise ---
for (const form of all("form[data-alive]")) {
  let sending = false;
  form.addEventListener("submit", async (event) => {
    if (sending) return;
    event.preventDefault();
    try {
      if (!(await fetch(document.body.dataset.alive, { cache: "no-store" })).ok) throw new Error("not let in");
    } catch {
      sayOffline(form);
      return;
    }
    sending = true;
    form.requestSubmit(event.submitter);
    setTimeout(() => { sending = false; }, 1500);
  });
}
function sayOffline(form) {
  one(".offline")?.remove();
  const note = document.createElement("p");
  note.className = "warn offline";
  note.setAttribute("role", "alert");
  note.textContent = document.body.dataset.offline;
  form.prepend(note);
  note.scrollIntoView({ block: "center" });
}

// --- the newest answer wins, and one question is on its way at a time ---
function lively(ask) {
  let busy = false, again = false;
  return async function run() {
    if (busy) { again = true; return; }
    busy = true;
    try { await ask(); } catch { /* the program does not answer; the form says so when it is sent */ }
    busy = false;
    if (again) { again = false; run(); }
  };
}

// --- a PDF on its way ---
const job = one("[data-job]");
if (job && !one("[data-finished]", job)) {
  const look = async () => {
    try {
      const answer = await fetch(job.dataset.job);
      if (answer.ok) job.innerHTML = await answer.text();
    } catch { /* asked again below */ }
    if (!one("[data-finished]", job)) setTimeout(look, 300);
    else one("a.do", job)?.focus();
  };
  setTimeout(look, 150);
}

// --- names as somebody types them: marks and capitals aside ---
const plain = (text) => text.normalize("NFD").replace(/\p{Mn}/gu, "").toLowerCase().trim();

// --- the year: the newest days are in sight ---
for (const region of all("[data-newest]")) region.scrollLeft = region.scrollWidth;

// --- an adult's initials, for the record, typed once on this device ---
const INITIALS = "namewright-initials";
function fillInitials(within) {
  for (const field of all("[data-initials]", within)) field.value ||= localStorage.getItem(INITIALS) ?? "";
}
fillInitials(document);
document.addEventListener("change", (event) => {
  if ("initials" in event.target.dataset) localStorage.setItem(INITIALS, event.target.value);
});
const printer = one("[data-print]");
if (printer) { printer.hidden = false; if (printer.autofocus) printer.focus({ preventScroll: true }); printer.addEventListener("click", () => print()); }
