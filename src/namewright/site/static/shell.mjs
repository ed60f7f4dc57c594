// The page around the screens. It holds Python's worker for as long as the tab is open, shows the screens in a frame,
// and says what cannot be done here. One tab holds the class at a time.
import { get, put } from "./keeping.mjs";
const one = (what) => document.querySelector(what);
const words = await (await fetch("words.json")).json();
const spoken = navigator.languages.map((tag) => tag.split("-")[0]).find((tag) => words[tag]) ?? "en";
const word = (key, fields = {}) => words[spoken][key].replace(/\{(\w+)\}/g, (_, name) => fields[name]);
const frame = one("#screens"), said = one("#said"), bar = one("#bar"), notes = one("#notes"), early = one("#early"), list = one("#list");
const SCREENS = new URL("app", location.href.split("#")[0].replace(/[^/]*$/, "")).href;
const LISTS = "/class/list";
const PREPARED_AFTER_MS = 3000;
const LONG_MS = 45_000;  // with nothing new: a slow tablet starts within it
const MONTH_MS = 30 * 24 * 3600 * 1000;
document.documentElement.lang = spoken;
for (const key of ["private", "paste", "early"]) one(`[data-word=${key}]`).textContent = word(key);

const say = (key, fields) => { said.textContent = word(key, fields); };
// Where nothing new has come for long, that is said; it goes on all the same, for a slow device gets there in the end.
let patience;
function waited() {
  clearTimeout(patience);
  patience = setTimeout(say, LONG_MS, "too_long");
}
function stop(key, fields) {
  clearTimeout(patience);
  say(key, fields);
  bar.hidden = true;
  one("#start").hidden = false;
  early.hidden ||= !list.value;  // what was typed can still be taken from here
  frame.hidden = true;
}
function note(text, ...answers) {
  const line = document.createElement("p");
  line.textContent = text;
  notes.replaceChildren(line, ...answers.map(([label, act]) => {
    const button = document.createElement("button");
    button.textContent = label;
    button.addEventListener("click", () => { notes.replaceChildren(); notes.hidden = true; act?.(); });
    return button;
  }));
  notes.hidden = false;
}

// --- what this browser has to have ---
function lacking() {
  if (!isSecureContext) return "insecure";
  const there = [navigator.serviceWorker, window.WebAssembly, window.indexedDB, window.caches, navigator.locks, window.DecompressionStream];
  return there.every(Boolean) ? "" : "old";
}

// --- the site's files, then Python ---
let worker, ready = false, loading = false, lost = false;
const waiting = [];
navigator.serviceWorker?.addEventListener("message", ({ data, ports }) => {
  lost ||= data.lost;  // a file could not be had
  if (data.loading && !ready) {
    waited();
    bar.hidden = false;
    bar.max = data.loading.total;
    bar.value = data.loading.done;
    loading = data.loading.done < data.loading.total;
    if (worker && !loading) starting();
  }
  if (data.ask && worker) {
    ports[0].postMessage({ taken: true });
    if (ready) worker.postMessage({ ask: data.ask }, [ports[0]]);
    else waiting.push([data.ask, ports[0]]);
  }
});

async function controlled() {
  const registration = await navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" });
  const installing = registration.installing;
  await Promise.race([navigator.serviceWorker.ready, new Promise((_, fail) => installing?.addEventListener("statechange", () => {
    if (installing.state === "redundant") fail(new Error("not loaded"));
  }))]);
  if (!navigator.serviceWorker.controller) await new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done, { once: true }));
  offer(registration);
}
function offer(registration) {
  const show = () => note(word("newer"), [word("use_newer"), () => {
    navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
    registration.waiting.postMessage("use");
  }]);
  if (registration.waiting) show();
  registration.addEventListener("updatefound", () => {
    const fresh = registration.installing;
    fresh.addEventListener("statechange", () => { if (fresh.state === "installed" && navigator.serviceWorker.controller) show(); });
  });
}

function starting() {
  say("starting");
  waited();
  bar.removeAttribute("value");
}
// Python starts while its files are still coming.
function python() {
  if (!loading) starting();
  return new Promise((done, fail) => {
    worker = new Worker("worker.mjs", { type: "module" });
    worker.onmessage = ({ data }) => {
      if (data.ready) done(data.image);
      if (data.failed) fail(new Error(data.failed));
      if ("progress" in data) progress(data.progress);
    };
    worker.onerror = (event) => fail(new Error(event.message));
    worker.postMessage({ begin: { host: location.host, root: new URL(SCREENS).pathname } });
  });
}
// The image for the next start is made by a worker of its own, which never sees the class, when nothing else is done.
function prepare() {
  const maker = new Worker("worker.mjs", { type: "module" });
  maker.onmessage = maker.onerror = () => maker.terminate();
  maker.postMessage({ prepare: { host: location.host, root: new URL(SCREENS).pathname } });
}
function progress(made) {
  if (made) frame.contentDocument?.querySelectorAll("progress").forEach((one) => { one.max = made.total; one.value = made.done; });
}

// --- the screens: the frame's place is kept in the address, so that a reload comes back to it ---
frame.addEventListener("load", () => {
  let place;
  try { place = frame.contentWindow.location; } catch { return; }
  const kept = new URL(place.href);
  kept.searchParams.delete("told");  // what was told once
  if (kept.href.startsWith(SCREENS)) history.replaceState(null, "", "#app" + kept.href.slice(SCREENS.length));
  takeDrops(frame.contentDocument);
  if (frame.contentDocument?.title) document.title = frame.contentDocument.title;
});
function show() {
  ready = true;
  clearTimeout(patience);
  for (const [ask, port] of waiting.splice(0)) worker.postMessage({ ask }, [port]);
  const place = location.hash.startsWith("#app/") ? location.hash.slice(1 + "app".length) : "/";
  frame.addEventListener("load", appear, { once: true });
  const after = list.value && isCopy(brought);  // a copy has no place for what was typed, so that is taken along first
  if (after) note(word("brought_after", { file: brought.name }), [word("open_copy"), () => open(brought)], [word("not_now")]);
  if (brought && !after) open(brought);
  else frame.src = SCREENS + (list.value ? LISTS : place);
}
// What was typed meanwhile goes on where it is read, with the cursor in its place.
function appear() {
  const field = frame.contentDocument?.querySelector("textarea#text"), typed = document.activeElement === list;
  frame.hidden = false;
  if (field && list.value) {
    field.value = list.value;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  }
  if (field && typed) {
    field.focus();
    field.setSelectionRange(list.selectionStart, list.selectionEnd);
  }
  one("#start").hidden = early.hidden = true;
  list.value = "";
}
async function remind() {
  if (!await get("class")) return;
  const copied = await get("copied") ?? Date.now();
  await put("copied", copied);
  if (Date.now() - copied > MONTH_MS) note(word("copy_reminder"), [word("understood"), () => put("copied", Date.now())]);
  else await askToKeep();
}
// What the browser is asked, and why, is said first; whatever it answers is said too. It is asked once a month at most,
// and so is whoever would rather not.
async function askToKeep() {
  if (!navigator.storage?.persist || await navigator.storage.persisted()) return;
  if (!notes.hidden || Date.now() - (await get("asked") ?? 0) < MONTH_MS) return;
  note(word("keep"), [word("ask_it"), async () => {
    await put("asked", Date.now());
    note(word(await navigator.storage.persist() ? "keeps" : "keeps_not"), [word("understood")]);
  }], [word("not_now"), () => put("asked", Date.now())]);
}

// --- the browser's own menu prints this page: the sheets that were made in the frame, or how they are had ---
addEventListener("beforeprint", () => {
  const inside = frame.contentDocument, how = document.createElement("p");
  how.textContent = (words[inside?.documentElement.lang] ?? words[spoken]).from_menu;
  const made = [...inside?.querySelectorAll("#paper-out > .sheet") ?? []];
  one("#paper").replaceChildren(...(made.length ? made.map((each) => document.importNode(each, true)) : [how]));
});

// --- a list or a copy that is dropped on the page, or opened with it: its place is shown with the file in it ---
let brought;
function open(file) {
  if (!file) return;
  if (!ready) {
    brought = file;
    note(word("brought", { file: file.name }), [word("understood")]);
    return;
  }
  frame.addEventListener("load", () => {
    const field = frame.contentDocument.querySelector("input[type=file]"), carried = new DataTransfer();
    if (!field) return;
    carried.items.add(file);
    field.files = carried.files;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }, { once: true });
  frame.src = SCREENS + (isCopy(file) ? "/copy" : LISTS);
}
const isCopy = (file) => /\.db$/i.test(file?.name);
// A screen that reads lists takes them itself; a copy of a class is none.
function takeDrops(place) {
  const dropped = (event) => event.dataTransfer.files[0];
  place.addEventListener("dragover", (event) => { if ([...event.dataTransfer.types].includes("Files")) event.preventDefault(); });
  place.addEventListener("drop", (event) => {
    if (!isCopy(dropped(event))) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    open(dropped(event));
  }, { capture: true });
  place.addEventListener("drop", (event) => {
    if (event.defaultPrevented || !dropped(event)) return;
    event.preventDefault();
    open(dropped(event));
  });
}

async function begin() {
  const lack = lacking();
  if (lack) { stop(lack); return; }
  takeDrops(document);
  window.launchQueue?.setConsumer(async ({ files }) => open(await files[0]?.getFile()));
  try {
    say("loading");
    waited();
    get("class").then((kept) => { early.hidden = Boolean(kept); }, () => {});
    await controlled();
  } catch {
    stop("not_loaded");
    return;
  }
  clearTimeout(patience);
  const held = setTimeout(() => stop("other_tab"), 400);
  await navigator.locks.request("namewright-class", async () => {
    clearTimeout(held);
    try {
      const image = await python();
      show();
      if (!image) setTimeout(prepare, PREPARED_AFTER_MS);
      await remind().catch(() => {});  // where there is no room, not even that can be noted
    } catch (error) {
      stop(lost ? "not_loaded" : "not_started", { kind: error.message });
    }
    await new Promise(() => {});  // held until the tab is closed
  });
}
begin();
