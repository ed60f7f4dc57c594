// Python, held by one worker: it answers the screens' requests one after another, keeps the class's file on the
// device before an answer is given, and makes PDFs between the answers.
import { loadPyodide } from "./engine/pyodide.mjs";
import { get, put } from "./keeping.mjs";

const FOLDER = "/home/pyodide", FILE = FOLDER + "/class.db";
let bridge, python;

async function start({ host, root }) {
  python = await loadPyodide({ indexURL: new URL("./engine/", import.meta.url).href });
  const library = await (await fetch("library.zip")).arrayBuffer();
  python.unpackArchive(library, "zip", { extractDir: "/lib/namewright" });
  const kept = await get("class");
  if (kept) python.FS.writeFile(FILE, new Uint8Array(kept));
  const cookies = (await get("cookies")) ?? {};
  const make = python.runPython(`
import sys
sys.path.insert(0, "/lib/namewright")
from pathlib import Path
from namewright.site.bridge import Bridge
lambda file, host, root, cookies, tell: Bridge(Path(file), host, root, cookies.to_py(), tell)
`);
  bridge = make(FILE, host, root, cookies, (done, total) => postMessage({ progress: { done, total } }));
  warm(root);
}

// The letters of the first screens are made while nobody waits for them.
function warm(root) {
  bridge.answer("GET", root + "/").destroy();
}

async function answered({ method, path, headers, body }) {
  const sent = python.toPy(headers), bytes = python.toPy(new Uint8Array(body ?? 0));
  let answer = bridge.answer(method, path, sent, bytes.tobytes());
  const fresh = bridge.unkept();
  if (fresh) {
    try {
      await put("class", fresh.toJs().slice().buffer);
      bridge.is_kept();
    } catch {
      answer = bridge.not_kept();
    }
  }
  if (method !== "GET") await put("cookies", bridge.cookies.toJs({ dict_converter: Object.fromEntries })).catch(() => {});
  if (path.endsWith("/copy/class.db") && answer.status === 200) await put("copied", Date.now()).catch(() => {});
  const out = { status: answer.status, headers: answer.headers.toJs(), body: answer.body.toJs().slice().buffer };
  answer.destroy();
  return out;
}

// One thing at a time, in the order in which it came; a PDF that waits is made when nothing else does.
const asked = [];
let awake;
onmessage = ({ data, ports }) => {
  asked.push({ ...data, port: ports[0] });
  awake?.();
};
async function run() {
  for (;;) {
    const one = asked.shift();
    if (one) await serve(one);
    else if (bridge?.work()) postMessage({ progress: null });
    else await new Promise((done) => { awake = done; });
    await new Promise((done) => setTimeout(done));  // lets messages in
  }
}
async function serve({ begin, ask, port }) {
  try {
    if (begin) {
      await start(begin);
      postMessage({ ready: true });
    } else {
      const answer = await answered(ask);
      port.postMessage(answer, [answer.body]);
    }
  } catch (error) {  // the kind alone: what was being done may hold a name
    if (begin) postMessage({ failed: String(error?.name ?? error) });
    else port.postMessage({ status: 500, headers: [], body: new ArrayBuffer(0) });
  }
}
run();
