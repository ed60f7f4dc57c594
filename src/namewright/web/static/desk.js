// The desk: the roster, the page of the chosen child, what may be changed, and the bar that prints.
// Every part works without this; with it nothing is loaded anew. What was changed and is not kept stays on the screen
// alone and goes along with every picture, count and PDF, so that what is shown is what is printed.
"use strict";
const desk = one("[data-desk]"), say = desk.dataset;
const image = one("#preview"), stage = one("#stage"), bar = one("#print"), rows = one("#rows");
const own = one("#own"), everyone = one("#all");
// A part that ends with a full stop of its own (Emma P.) takes none behind it.
const filled = (text, ...parts) => parts.reduceRight((words, part, at) => words.replace(new RegExp("#".repeat(at + 1) + "([.]?)"),
  (_, stop) => part + (String(part).endsWith(".") ? "" : stop)), text);
const of = (address, child) => address.replace("/0", "/" + child);
const listed = (names) => new Intl.ListFormat(document.documentElement.lang).format(names);
let chosen = say.chosen, page = 1, pages = 1, drawn = "";  // whose pages of which kind stand in the picture

// --- what was changed and is not kept: the forms of children and of everyone, each as it was opened and as it is ---
const drafts = new Map(), typed = new Map();  // scope -> {text, label}: the changed ones, and each as it was last
const formOf = (scope) => one(`form[data-draft="${scope}"]`);
const serial = (form) => {
  const data = new FormData(form);
  for (const key of ["token", "class"]) data.delete(key);
  return new URLSearchParams(data).toString();
};
const bare = (text) => { const asked = new URLSearchParams(text); asked.delete("who"); return asked.toString(); };
function take(form) {  // what is kept are the fields as they came; what was typed before this script ran is a change
  const came = form.cloneNode(true);
  came.reset();
  form.dataset.kept = bare(serial(came));
  if (bare(serial(form)) !== form.dataset.kept) { note(form); return true; }
  return false;
}
function note(form) {
  const scope = form.dataset.draft, text = serial(form);
  const label = scope === "class" ? say.everyone : form.closest("[data-panel]").dataset.label;
  typed.set(scope, { text, label });
  if (bare(text) === form.dataset.kept) drafts.delete(scope); else drafts.set(scope, { text, label });
  if (one("#bar-said .done")) tell("");
  tellChanges();
}
function tellChanges() {
  one("#changes").hidden = !drafts.size;
  one("#changed-said").textContent = filled(say.changed, listed([...drafts.values()].map((draft) => draft.label)));
  measureBar();
}
function fill(form, text) {  // put a draft back into a form that was loaded anew
  const asked = new URLSearchParams(text);
  for (const field of form.elements) {
    if (!field.name || ["token", "class", "after"].includes(field.name)) continue;
    if (field.type === "checkbox" || field.type === "radio") field.checked = asked.getAll(field.name).includes(field.value);
    else field.value = asked.get(field.name) ?? "";
  }
}
function withDrafts(query, ...scopes) {
  for (const scope of scopes) if (drafts.has(scope)) query.set("draft-" + scope, drafts.get(scope).text);
  return query;
}
addEventListener("beforeunload", (event) => { if (drafts.size) event.preventDefault(); });

// --- the page: of the chosen child, or of the class where the kind of pages is the class's ---
const kindShown = one("#kind-shown"), said = one("#preview-said");
const kinds = () => all("input[name=what]:checked", bar);
const asked = () => withDrafts(new URLSearchParams({ kind: kindShown.value || "sheets", page }), "class", chosen);
const isWhole = () => "whole" in (kinds().find((box) => box.value === kindShown.value)?.dataset ?? {});
function tellWho() {
  const whole = isWhole(), shown = one("#shown");
  shown.textContent = whole ? kindShown.selectedOptions[0].textContent : one(`[data-child="${chosen}"] .own-letters`, rows).textContent;
  shown.classList.toggle("own-letters", !whole);
  image.alt = filled(say.alt, shown.textContent);
}
const show = lively(async () => {
  tellWho();
  const slow = setTimeout(() => { stage.dataset.slow = ""; }, 350);
  try { await redraw(); } finally { clearTimeout(slow); delete stage.dataset.slow; }
});
const redraw = async () => {
  const which = chosen + kindShown.value, answer = await fetch(of(say.picture, chosen) + "?" + asked());
  const text = await answer.text();
  image.hidden = !answer.ok && which !== drawn;
  if (answer.ok) {
    drawn = which;
    image.src = "data:image/svg+xml," + encodeURIComponent(text);
    pages = Number(answer.headers.get("Pages")) || 1;
    page = Math.min(page, pages);
    tellPage();
  }
  said.textContent = answer.ok || one(".mend, #own .say", desk) ? "" : text;
};
function tellPage() {
  one("#page-of").textContent = filled(say.pageOf, page, pages);
  one("[data-turn='-1']").disabled = page <= 1;
  one("[data-turn='1']").disabled = page >= pages;
  one(".pager").hidden = pages < 2;
}
function turn(step) {
  const to = Math.min(Math.max(page + step, 1), pages);
  if (to !== page) { page = to; show(); }
}
for (const button of all("[data-turn]")) button.addEventListener("click", () => turn(Number(button.dataset.turn)));
const zoom = one("#zoom");
zoom.addEventListener("change", () => { stage.dataset.zoom = zoom.value; size(); });
image.addEventListener("load", size);
function size() {
  if (image.naturalWidth) stage.parentElement.style.setProperty("--tall", image.naturalHeight / image.naturalWidth);
  if (zoom.value === "true") trueSize(image); else image.style.width = "";
}

// --- true size: how many of the page's pixels a millimetre takes, at the zoom of this moment ---
const SCREEN = "namewright-pixels-per-mm";  // device pixels, so that zooming changes nothing
const perMm = () => (Number(localStorage.getItem(SCREEN)) || 96 / 25.4 * devicePixelRatio) / devicePixelRatio;
function trueSize(picture) {
  const width = picture.naturalWidth;  // an SVG in mm is drawn at 96 pixels an inch unless told otherwise
  if (width) picture.style.width = width / (96 / 25.4) * perMm() + "px";
}
addEventListener("resize", () => { all("[data-true]").forEach(trueSize); size(); measureBar(); });
function measureBar() { document.documentElement.style.setProperty("--foot-bar", one(".foot-bar").offsetHeight + "px"); }

// --- the panel of a child: loaded when the child is chosen ---
const drawRow = lively(async () => {
  const row = one("#own-row");
  if (!row || !row.closest("details").open) return;
  const answer = await fetch(of(say.row, chosen) + "?" + withDrafts(new URLSearchParams(), "class", chosen));
  if (answer.ok) row.src = "data:image/svg+xml," + encodeURIComponent(await answer.text());
});
function ready(within) {  // what a panel needs once it stands on the page
  if (all("form[data-draft]", within).map(take).some(Boolean)) { show(); recount(); }
  fillInitials(within);
  for (const each of all("[data-true]", within)) {
    each.addEventListener("load", () => trueSize(each));
    if (each.complete) trueSize(each);
  }
  const screen = one("[data-screen]", within);
  if (screen && localStorage.getItem(SCREEN)) screen.textContent = say.fitted;
  one("[data-true-drawer]", within)?.addEventListener("toggle", drawRow);
  measureScreen(within);
}
function measureScreen(within) {
  const card = one("[data-card]", within), slider = one("#card-size", within);
  if (!card) return;
  const measure = one(".measure", within);
  measure.hidden = true;
  const fit = () => { card.style.width = slider.value + "px"; card.style.height = slider.value * 53.98 / 85.60 + "px"; };
  one("[data-open-measure]", within).addEventListener("click", () => { measure.hidden = !measure.hidden; if (!measure.hidden) slider.focus(); });
  slider.value = 85.60 * perMm();
  slider.addEventListener("input", (event) => { event.stopPropagation(); fit(); });
  for (const button of all("[data-nudge]", within)) button.addEventListener("click", () => { slider.value = Number(slider.value) + Number(button.dataset.nudge); fit(); });
  one("[data-measured]", within).addEventListener("click", () => {
    localStorage.setItem(SCREEN, slider.value / 85.60 * devicePixelRatio);
    const told = one(".measure [data-kept]", within);
    told.textContent = told.dataset.kept;
    one("[data-screen]", within).textContent = say.fitted;
    all("[data-true]").forEach(trueSize);
    size();
  });
  fit();
}
let loading = 0;
async function choose(id, { push = true, focus = false, unfolded = false } = {}) {
  chosen = String(id);
  page = 1;
  const turn = ++loading, link = one(`[data-child="${chosen}"]`, rows);
  one(".chosen", rows)?.classList.remove("chosen");
  one("[aria-current]", rows)?.removeAttribute("aria-current");
  link.closest("li").classList.add("chosen");
  link.setAttribute("aria-current", "true");
  inSight(link.closest("li"));
  fromTheTop();
  if (focus) link.focus({ preventScroll: true });
  desk.dataset.view = "child";
  bar.elements.one.value = chosen;
  stale();
  forWhom();
  if (push) history.pushState({ chosen }, "", say.base + "?child=" + chosen);
  own.inert = true;  // the panel is still the other child's, and what is typed into it would be
  show();
  const answer = await fetch(say.base + "?" + new URLSearchParams({ child: chosen, part: "panel", ...(unfolded ? { all: 1 } : {}) }));
  if (!answer.ok || turn !== loading) return;
  const open = all("details", own).map((each) => each.open);
  own.innerHTML = await answer.text();
  own.inert = false;
  all("details", own).forEach((each, at) => { each.open ||= Boolean(open[at]); });
  ready(own);
  const panel = one("[data-panel]", own);
  one("[data-for=own]").textContent = panel.dataset.forChild;
  one("[data-one]", bar).textContent = one("[data-alone]", bar).textContent = panel.dataset.whoOne;
  if (drafts.has(chosen)) fill(formOf(chosen), drafts.get(chosen).text);
  follow(formOf(chosen));
  if (one(".say", own)) said.textContent = "";  // told there, with the way out
  if (bar.elements.who.value === "one") recount();
}
document.addEventListener("click", (event) => {
  const link = event.target.closest("a[data-child]");
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  choose(link.dataset.child, { unfolded: !rows.contains(link) });
  if (!rows.contains(link)) whose("own");
});
one("[data-back]").addEventListener("click", (event) => {
  event.preventDefault();
  leave();
  history.pushState({}, "", say.base);
  one(".chosen", rows)?.scrollIntoView({ block: "center" });
});
addEventListener("popstate", () => {
  const id = new URLSearchParams(location.search).get("child");
  if (id) choose(id, { push: false }); else leave();
});
const phone = matchMedia("(max-width: 44rem)");
const among = () => boxes().some((box) => box.checked) ? "ticked" : "all";
function leave() {  // on a phone: from one child back to the class
  desk.dataset.view = "class";
  forWhom();
}
function inSight(row) {  // in the class's own scroll: the page itself stays where it is
  if (!row) return;
  const top = row.offsetTop - rows.offsetTop, end = top + row.offsetHeight;
  if (top < rows.scrollTop) rows.scrollTop = top; else if (end > rows.scrollTop + rows.clientHeight) rows.scrollTop = end - rows.clientHeight;
}
function fromTheTop() {  // the settings of a child begin at their top, beside the page or under it
  settings.scrollTop = 0;
  if (getComputedStyle(settings).overflowY === "visible") scrollTo(0, 0);
}
function forWhom() {  // on a phone what is printed is what is looked at: this child, or the class
  if (!phone.matches) return;
  setWho(desk.dataset.view === "child" ? "one" : among());
}
function setWho(which) {
  if (bar.elements.who.value === which) return;
  bar.elements.who.value = which;
  tellAlone();
  countSoon();
}
function tellAlone() { one("[data-alone]", bar).setAttribute("aria-pressed", String(bar.elements.who.value === "one")); }
one("[data-alone]", bar).addEventListener("click", () => setWho(bar.elements.who.value === "one" ? among() : "one"));
const visible = () => all("li:not([hidden])", rows);
function step(by, focus) {
  const shown = visible(), at = shown.findIndex((row) => row.dataset.row === chosen);
  const next = shown[Math.min(Math.max(at + by, 0), shown.length - 1)];
  if (next && next.dataset.row !== chosen) choose(next.dataset.row, { focus });
}
for (const button of all("[data-step]")) button.addEventListener("click", () => step(Number(button.dataset.step), false));
document.addEventListener("keydown", (event) => {
  if ((event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key.toLowerCase() === "p") {  // the pages, not the screen
    event.preventDefault();
    bar.requestSubmit(one("[name=view]", bar));
  }
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const where = event.target;
  if (event.key === "Escape") { for (const menu of all("details.menu[open], .true-size[open]")) { menu.open = false; one("summary", menu).focus(); } return; }
  if (where.closest("input:not([type=checkbox]):not([type=search]), select, textarea, .settings, .foot-bar, .menu")) return;
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key], leaf = { PageDown: 1, PageUp: -1 }[event.key];
  if (by && !(where === stage && stage.scrollHeight > stage.clientHeight + 1)) {
    event.preventDefault();
    step(by, rows.contains(where) || where.id === "find");
  } else if (leaf) { event.preventDefault(); turn(leaf); }
});
document.addEventListener("click", (event) => {
  for (const menu of all("details.menu[open]")) if (!menu.contains(event.target)) menu.open = false;
});

// --- for this child or for everyone ---
function whose(which) {
  own.hidden = which !== "own";
  everyone.hidden = which !== "all";
  for (const tab of all("[data-for]")) tab.dataset.for === which ? tab.setAttribute("aria-current", "true") : tab.removeAttribute("aria-current");
}
for (const tab of all("[data-for]")) tab.addEventListener("click", (event) => { event.preventDefault(); whose(tab.dataset.for); });

// --- a change: slider and field are one, the page follows at once, what cannot be drawn says what can ---
const settings = one(".settings");
function follow(form) {
  for (const slider of all("[data-turns]", form)) {
    const field = document.getElementById(slider.dataset.turns);
    if (field.value) slider.value = parseFloat(field.value.replace(",", "."));
  }
}
let asking, panelTimer;
settings.addEventListener("input", (event) => {
  const field = event.target, form = field.closest("form[data-draft]");
  if (!form || field.id === "card-size") return;
  if (field.dataset.turns) document.getElementById(field.dataset.turns).value = field.value;
  if ("measure" in field.dataset) follow(field.closest(".set"));
  if ("lines" in field.dataset) lines(form, field);
  note(form);
  if (field.name === "who") return;
  show();
  drawRow();
  countSoon();
  const measure = field.dataset.turns ? document.getElementById(field.dataset.turns) : field;
  clearTimeout(asking);
  if ("measure" in measure.dataset) asking = setTimeout(() => askNearest(measure, form), 150);
});
function lines(form, select) {  // another height is drawn like the lines that were chosen before
  const like = form.elements.like, option = select.selectedOptions[0];
  if (select.value !== "other") { like.value = select.value; return; }
  const field = one("#all-line_height"), before = one(`option[value="${like.value}"]`, select);
  field.value ||= String(Math.round(Number(before?.dataset.mm) * 100) / 100 || "");
  follow(form);
  field.focus();
}
async function askNearest(field, form) {
  const mend = document.getElementById("mend-" + field.id), scope = form.dataset.draft;
  const query = withDrafts(new URLSearchParams({ key: field.name, kind: kindShown.value || "sheets", for: scope === "class" ? "everyone" : "child" }), "class", chosen);
  const answer = drafts.has(scope) ? await fetch(of(say.nearest, chosen) + "?" + query) : null;
  const html = answer?.ok ? await answer.text() : "";
  mend.innerHTML = html;
  if (html) field.setAttribute("aria-invalid", "true"); else field.removeAttribute("aria-invalid");
  if (html) said.textContent = "";
}
settings.addEventListener("click", (event) => {
  const button = event.target.closest("[data-clears], [data-take]");
  if (!button) return;
  const form = button.closest("form");
  const field = button.dataset.clears ? document.getElementById(button.dataset.clears) : form.elements[button.dataset.take];
  field.value = button.dataset.value ?? "";
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.focus();
});
settings.addEventListener("submit", (event) => {
  const form = event.target;
  if (form.dataset.draft) { event.preventDefault(); event.stopPropagation(); keepAll(); }
}, true);
const keepAll = lively(async () => {
  const form = new FormData(bar), sent = new Map(drafts);
  form.delete("what"); form.delete("child");
  for (const [scope, draft] of sent) form.append("draft-" + scope, draft.text);
  if (!await post(say.keep, form, (html, ok) => { if (ok) sent.forEach(isKept); tellChanges(); tell(html); })) return;
  await Promise.all([...sent.keys()].filter((scope) => drafts.has(scope) && scope !== "class").map(follows));
  await refresh();
});
function isKept({ text }, scope) {  // and no more than was sent: what was typed meanwhile is a change to it
  const form = formOf(scope), now = typed.get(scope);
  if (form) { form.dataset.kept = bare(text); note(form); } else if (bare(now.text) === bare(text)) drafts.delete(scope); else drafts.set(scope, now);
}
async function follows(scope) {  // a change to what was just kept is no older than that, whoever is shown by now
  const answer = await fetch(say.base + "?" + new URLSearchParams({ child: scope, part: "panel" })), draft = drafts.get(scope);
  const fresh = answer.ok && one("form[data-draft] [name=after]", new DOMParser().parseFromString(await answer.text(), "text/html"));
  if (!fresh || !draft) return;
  const text = new URLSearchParams(draft.text);
  text.set("after", fresh.value);
  for (const known of [drafts, typed]) known.set(scope, { ...draft, text: text.toString() });
}
one("[data-keep-all]").addEventListener("click", keepAll);
one("[data-take-back]").addEventListener("click", async () => {
  for (const form of all("form[data-draft]", settings)) { form.reset(); follow(form); }
  drafts.clear(); tellChanges(); tell(""); await refresh(); show(); countSoon();
});
// What is kept now is read again: the lines of the class, the panel, and the form for everyone. What was changed
// meanwhile stands, and the cursor stays in its field.
async function refresh() {
  const id = chosen, answer = await fetch(say.base + "?child=" + id);
  if (!answer.ok) return;
  const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
  if (id !== chosen) return refresh();
  const at = document.activeElement, { selectionStart: from, selectionEnd: to } = at;
  const ticked = new Set(all("input[name=child]:checked", rows).map((box) => box.value));
  const open = all("details", settings).map((each) => each.open), hidden = new Set(all("li[hidden]", rows).map((row) => row.dataset.row));
  rows.innerHTML = one("#rows", fresh).innerHTML;
  for (const box of all("input[name=child]", rows)) box.checked = ticked.has(box.value);
  for (const row of all("li", rows)) row.hidden = hidden.has(row.dataset.row);
  own.innerHTML = one("#own", fresh).innerHTML;
  everyone.innerHTML = one("#all", fresh).innerHTML;
  all("details", settings).forEach((each, at) => { each.open = open[at]; });
  ready(own); ready(everyone);
  for (const form of all("form[data-draft]", settings)) {
    const draft = drafts.get(form.dataset.draft);
    if (draft) { fill(form, draft.text); follow(form); note(form); }
  }
  const again = !at.isConnected && at.id && document.getElementById(at.id);
  if (!again) return;
  again.focus({ preventScroll: true });
  if (from != null) again.setSelectionRange(from, to);
}
one("[data-dismiss]")?.addEventListener("click", (event) => { event.target.closest("form").remove(); measureBar(); });
const send = (address, form) => fetch(address, { method: "POST", body: form, headers: { Accept: "text/x-part, text/html" } });
function renew(html, form) {  // the program was started anew: its answer holds a token that counts
  const fresh = one("main input[name=token]", new DOMParser().parseFromString(html, "text/html"));
  if (!fresh) return false;
  for (const field of all("input[name=token]")) field.value = fresh.value;
  form.set("token", fresh.value);
  return true;
}
function short(html) {  // a whole page that was answered, as the bar can show it
  const page = new DOMParser().parseFromString(html, "text/html"), told = document.createElement("div");
  told.className = "say warn";
  told.setAttribute("role", "alert");
  for (const text of all("main h1, main > p, main .warn", page).slice(0, 3)) told.append(Object.assign(document.createElement("p"), { textContent: text.textContent }));
  return told.outerHTML;
}
async function post(address, form, hear) {
  try {
    let answer = await send(address, form), html = await answer.text();
    if (answer.status === 403 && renew(html, form)) { answer = await send(address, form); html = await answer.text(); }
    hear(html.includes("<html") ? short(html) : html, answer.ok);
    return answer.ok;
  } catch {
    sayOffline(bar);
    return false;
  }
}

// --- the roster: finding, ticking, the order ---
const find = one("#find");
find.addEventListener("input", () => {
  const typed = plain(find.value);
  for (const row of all("li", rows)) row.hidden = !row.dataset.find.split("|").some((name) => name.startsWith(typed) || name.includes(" " + typed));
  const shown = visible().length;
  one("#found").textContent = shown ? filled(say.shown, shown) : say.nobody;
});
find.addEventListener("keydown", (event) => {
  if (event.key === "Enter") { event.preventDefault(); const first = visible()[0]; if (first) choose(first.dataset.row, { focus: true }); }
});
const boxes = () => all("input[name=child]", rows);
function ticking(any = true) {
  const ticked = boxes().filter((box) => box.checked).map((box) => box.value);
  one("#ticked-count").textContent = filled(one("#ticked-count").dataset.count, ticked.length);
  one("[data-ticked]", bar).textContent = filled(say.ticked, ticked.length);
  for (const chip of all("[data-table]")) chip.setAttribute("aria-pressed", chip.dataset.table.split(" ").every((id) => ticked.includes(id)));
  if (any) bar.elements.who.value = among();
  tellAlone();
  countSoon();
}
rows.addEventListener("change", (event) => { if (event.target.name === "child") ticking(); });
one("[data-all]").addEventListener("click", () => { for (const row of visible()) one("input", row).checked = true; ticking(); });
one("[data-none]").addEventListener("click", () => { for (const box of boxes()) box.checked = false; ticking(); });
for (const chip of all("[data-table]")) chip.addEventListener("click", () => {
  const ids = chip.dataset.table.split(" "), on = chip.getAttribute("aria-pressed") !== "true";
  for (const box of boxes()) if (ids.includes(box.value)) box.checked = on;
  ticking();
});
for (const link of all("[data-sort]")) link.addEventListener("click", (event) => {
  event.preventDefault();
  const by = link.dataset.sort;
  rows.append(...all("li", rows).sort((one, other) => one.dataset[by] - other.dataset[by]));
  for (const each of all("[data-sort]")) each === link ? each.setAttribute("aria-current", "true") : each.removeAttribute("aria-current");
  fetch(link.href, { redirect: "manual", keepalive: true });
  inSight(one(".chosen", rows));
});

// --- the bar: what, for whom, how many pages, do ---
function choices() {
  const picked = kinds(), names = picked.map((box) => box.dataset.short);
  one("#what-said").textContent = !names.length ? say.empty : names.length === 1 ? names[0] : filled(say.andMore, names[0], names.length - 1);
  const before = kindShown.value;
  kindShown.replaceChildren(...picked.map((box) => new Option(box.dataset.short, box.value)));
  if (picked.some((box) => box.value === before)) kindShown.value = before;
  kindShown.hidden = picked.length < 2;
  return kindShown.value !== before;
}
bar.addEventListener("change", (event) => {
  if (event.target.name === "what") {
    const on = event.target.checked;
    let other = choices();
    if (on) { other = kindShown.value !== event.target.value || other; kindShown.value = event.target.value; }
    if (other) { page = 1; show(); }
  }
  tellAlone();
  countSoon();
});
kindShown.addEventListener("change", () => { page = 1; show(); });
const order = () => { const form = new FormData(bar); for (const [scope, draft] of drafts) form.append("draft-" + scope, draft.text); return form; };
let counting = 0, ordered = 0, countTimer;
function countSoon() { stale(); recount(); }
function recount() { clearTimeout(countTimer); countTimer = setTimeout(count, 250); }
function stopCounting() { clearTimeout(countTimer); counting += 1; }
async function count() {
  const turn = ++counting, told = one("#pages");
  for (;;) {
    let answer, html;
    try {
      answer = await fetch(say.count, { method: "POST", body: order() });
      html = await answer.text();
    } catch { return; }
    if (turn !== counting) return;
    if (!answer.ok) { told.replaceChildren(); return; }
    told.innerHTML = html;
    mark(all("[data-missed] li", told));
    if (one("[data-tally=whole]", told)) return;
  }
}
function mark(lacking) {  // a child that cannot be made is seen in the roster, too
  for (const each of lacking) {
    const id = one("[data-child]", each)?.dataset.child, row = id && one(`[data-row="${id}"] .badges`, rows);
    if (!row || one(".look", row)) continue;
    const sign = document.createElement("span");
    Object.assign(sign, { className: "badge look", textContent: "!", title: one("p", each).textContent });
    sign.setAttribute("role", "img");
    sign.setAttribute("aria-label", sign.title);
    row.prepend(sign);
  }
}
document.addEventListener("click", (event) => {  // only this child, of what is chosen in the bar and as it is shown
  if (!event.target.closest("[data-only]")) return;
  event.preventDefault();
  setWho("one");
  bar.requestSubmit(one("[data-open]", bar));
});
one("#bar-said").addEventListener("click", (event) => {  // more pages than a browser prints at a time
  const first = event.target.closest("[data-print-first]");
  if (first) printHere({ first: true, adult: first.dataset.printFirst === "adult" });
  if (event.target.closest("[data-open-pdf]")) bar.requestSubmit(one("[data-open]", bar));
});
function stale() {  // what was made or refused before something else was chosen is offered no more
  ordered += 1;
  one("#paper-out").replaceChildren();  // the browser's own menu prints what stands here and asks nobody
  if (one("#bar-said :is(.jobs, .warn, .handed)")) tell("");
}
function tell(html) { one("#bar-said").innerHTML = html; measureBar(); }
bar.addEventListener("submit", async (event) => {
  event.preventDefault();
  event.stopImmediatePropagation();
  for (const menu of all("details.menu[open]")) menu.open = false;
  if (event.submitter?.name === "view") return printHere();
  const turn = ordered += 1, from = document.activeElement;
  stopCounting();  // what is laid out for the PDF is counted in a moment after it
  await post(bar.action, order(), (html, ok) => { if (turn === ordered) { tell(html); if (ok) watch(from); else recount(); } });
}, true);
async function watch(from) {  // the focus is led on from what gave the order, and taken from nobody who went on
  for (let wait = 20; ; wait = 200) {  // a small class whose pages were laid out is written in a moment
    const jobs = one("#bar-said [data-jobs]");
    if (!jobs) return;
    if ("finished" in jobs.dataset) break;
    await new Promise((done) => setTimeout(done, wait));
    try {
      const answer = await fetch(jobs.dataset.jobs);
      if (answer.ok && one("#bar-said [data-jobs]") === jobs) tell(await answer.text());
    } catch { /* asked again */ }
  }
  recount();
  const links = all("#bar-said [data-pdf]");
  if ([from, document.body].includes(document.activeElement)) links[0]?.focus();
  if (links.length === 1 && !one("#bar-said [data-lacking]")) window.open(links[0].href, "_blank");
}
async function printHere({ adult = false, first = false } = {}) {
  const out = one("#paper-out");
  const waiting = document.createElement("div");
  waiting.className = "ready handed";
  waiting.textContent = say.waiting;
  one("#bar-said").replaceChildren(waiting);
  let made = "";
  const form = order();
  if (adult) form.set("adult", "1");
  if (first) form.set("first", "1");
  if (!(await post(say.sheets, form, (html, ok) => { if (ok) made = html; else tell(html); }))) return;
  out.innerHTML = made;
  out.hidden = false;
  waiting.textContent = say.toPrint;
  const lacking = one("[data-missed]", out);
  if (lacking) waiting.append(lacking);
  const more = one("[data-more]", out);
  if (more) { waiting.append(more); one("button", more).addEventListener("click", () => printHere({ adult: true })); }
  measureBar();
  print();
}

// --- at the start ---
if (new URLSearchParams(location.search).has("child")) inSight(one(".chosen", rows));
ready(own);
ready(everyone);
choices();
ticking(false);
forWhom();
if (document.activeElement === document.body) one("[data-first]", bar)?.focus({ preventScroll: true });
tellPage();
measureBar();
if (image.complete) size();
if (one("input[name=what]:checked", bar)?.value !== "sheets") show();
fetch(of(say.pages, chosen) + "?" + asked()).then(async (answer) => {
  const told = await answer.text();
  pages = answer.ok ? Number(told) : 1;
  drawn = answer.ok ? chosen + kindShown.value : "";
  image.hidden = !answer.ok;
  said.textContent = answer.ok || one("#own .say") ? "" : told;
  tellPage();
});
if (new URLSearchParams(location.search).get("for") === "everyone") whose("all");
