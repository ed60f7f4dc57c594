// What the screens ask for goes to Python in the shell page; everything else is a file of this site, fetched once,
// checked, and kept, so that the site works without a network from then on. Nothing else is ever fetched.
"use strict";
const BUILD = /*BUILD*/null;
const OURS = "namewright-", CACHE = OURS + BUILD.version;
const ROOT = new URL("./", self.location);
const SCREENS = "app/";
const TAKEN_WITHIN_MS = 3000, LOOK_MS = 500;
const HASH = "X-Content-SHA256";
const LARGE_FROM_BYTES = 1e6;  // as sent
const isLarge = (file) => file.sent >= LARGE_FROM_BYTES;

addEventListener("install", (event) => event.waitUntil(fill()));
addEventListener("activate", (event) => event.waitUntil(tidy().then(() => clients.claim())));
addEventListener("message", (event) => { if (event.data === "use") skipWaiting(); });
addEventListener("fetch", (event) => {
  const asked = new URL(event.request.url);
  if (asked.origin !== ROOT.origin || !asked.pathname.startsWith(ROOT.pathname)) {
    event.respondWith(Response.error());
    return;
  }
  const path = decodeURIComponent(asked.pathname.slice(ROOT.pathname.length));
  event.respondWith(path.startsWith(SCREENS) && !BUILD.files[path] ? screen(event, asked) : file(path));
});

// --- files ---
// Each version has a cache of its own, in which a file lies under its own address: browsers keep what they compile of
// scripts and of Python only beside such an entry.
// A first visit waits for the small files alone: Python's worker starts on them and asks for each large one, which is
// unpacked meanwhile. A newer version has all of its files before it is offered.
async function fill() {
  const files = Object.entries(BUILD.files), small = files.filter(([, file]) => !isLarge(file)), large = files.filter(([, file]) => isLarge(file));
  const total = files.reduce((sum, [, file]) => sum + file.sent, 0);
  let done = 0;
  const counted = async ([path, file]) => {
    await had(path);
    done += file.sent;
    await tell({ loading: { done, total } });
  };
  const first = Promise.all(small.map(counted)), rest = first.then(() => Promise.all(large.map(counted)));
  rest.then(() => fresh.clear(), () => {});  // what fails is told by whoever asks for it
  await (registration.active ? Promise.all([first, rest]) : first);
}
async function tell(what) {
  for (const one of await clients.matchAll({ includeUncontrolled: true })) one.postMessage(what);
}
// A file of this version as it is kept, or fetched and kept, once however many ask.
const coming = new Map();
// On a first visit small files are answered from here: asking what is kept waits behind the large ones that are being kept.
const fresh = new Map();
function had(path) {
  if (!coming.has(path)) coming.set(path, kept(path).finally(() => coming.delete(path)));
  return coming.get(path);
}
async function kept(path) {
  const at = new URL(path, ROOT).href, file = BUILD.files[path], cache = await caches.open(CACHE);
  if (await cache.match(at)) return;
  const sent = await earlier(at, file) ?? await fetched(path, file);
  if (!isLarge(file)) fresh.set(path, sent.clone());
  await cache.put(at, sent);
}
async function earlier(at, { sha256 }) {
  const kept = await caches.match(at);
  return kept?.headers.get(HASH) === sha256 ? kept : undefined;
}
async function fetched(path, { sha256, packed, type }) {
  const sent = await fetch(new URL(packed ?? path, ROOT), { cache: "no-cache", credentials: "omit" });
  if (!sent.ok) throw new Error(`${path}: ${sent.status}`);
  const stream = packed ? sent.body.pipeThrough(new DecompressionStream("gzip")) : sent.body;
  const bytes = await new Response(stream).arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  if ([...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("") !== sha256) throw new Error(`${path}: not as published`);
  return new Response(bytes, { headers: { "Content-Type": type, [HASH]: sha256, "Content-Security-Policy": BUILD.policy, "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer" } });
}
async function tidy() {
  for (const name of await caches.keys()) if (name.startsWith(OURS) && name !== CACHE) await caches.delete(name);
}
async function file(path) {
  if (path === "version") return new Response(BUILD.version);
  const name = path || "index.html", known = BUILD.files[name], at = new URL(name, ROOT).href;
  if (!known) return new Response("", { status: 404 });
  if (fresh.has(name)) return fresh.get(name).clone();
  const found = () => caches.match(at, { cacheName: CACHE });
  let there;
  try {
    there = await found();
  } catch {
    return fetched(name, known);  // refused where no room is left
  }
  return there ?? had(name).then(found).catch(async (error) => {
    await tell({ lost: true });
    throw error;
  });
}

// --- screens ---
async function screen(event, asked) {
  const { request } = event;
  const body = ["GET", "HEAD"].includes(request.method) ? null : await request.arrayBuffer();
  const ask = { method: request.method, path: asked.pathname + asked.search, headers: [...request.headers], body };
  const shells = (await clients.matchAll({ type: "window" })).filter((one) => new URL(one.url).pathname === ROOT.pathname);
  const answer = await first(shells.map((one) => sent(one, ask)));
  if (answer) return new Response([204, 304].includes(answer.status) ? null : answer.body, { status: answer.status, headers: answer.headers });
  if (request.mode === "navigate") return Response.redirect(ROOT.href + "#" + asked.pathname.slice(ROOT.pathname.length) + asked.search);
  return new Response("", { status: 503 });
}
// The shell that holds the class says at once that it has taken a request; others keep silent. One that is closed or
// loaded anew meanwhile answers nothing any more: waited for, it would keep a newer version from taking over for minutes.
function sent(shell, ask) {
  let wait, look;
  const answer = new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    wait = setTimeout(done, TAKEN_WITHIN_MS, null);
    look = setInterval(async () => { if (!await clients.get(shell.id)) done(null); }, LOOK_MS);
    port1.onmessage = ({ data }) => {
      if (data.taken) clearTimeout(wait);
      else done(data);
    };
    shell.postMessage({ ask }, [port2]);
  });
  return answer.finally(() => { clearTimeout(wait); clearInterval(look); });
}
function first(answers) {
  return new Promise((done) => {
    for (const one of answers) one.then((answer) => { if (answer) done(answer); });
    Promise.all(answers).then(() => done(null));
  });
}
