// Python, held by one worker: it answers the screens' requests one after another, keeps the class's file on the
// device before an answer is given, and makes PDFs between the answers.
import { dropImage, fresh, fromImage, makeImage } from "./python.mjs";
import { get, put } from "./keeping.mjs";

const FILE = "/home/pyodide/class.db";
let bridge, python;

// Returns whether Python began from an image.
async function start({ host, root }) {
  const image = await ready(root);
  python = image ?? await fresh(host, root, FILE);
  performance.mark(image ? "from image" : "fresh");  // told to whoever measures
  const kept = await get("class"), cookies = await get("cookies");
  if (kept) python.FS.writeFile(FILE, new Uint8Array(kept));
  bridge = python.globals.get("bridge");
  bridge.take_up(python.toPy(cookies ?? {}), (done, total) => postMessage({ progress: { done, total } }));
  return Boolean(image);
}

// Python from the image of it, if that answers; an image that does not is thrown away.
async function ready(root) {
  try {
    const found = await fromImage();
    found?.globals.get("bridge").answer("GET", root + "/alive").destroy();
    return found;
  } catch {
    await dropImage().catch(() => {});
    return undefined;
  }
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
    else if (!bridge?.work()) await new Promise((done) => { awake = done; });
    await new Promise((done) => setTimeout(done));  // lets messages in
  }
}
async function serve({ begin, prepare, ask, port }) {
  try {
    if (prepare) {
      await makeImage(prepare.host, prepare.root, FILE).catch(() => {});  // without it the next start is slower, no more
      postMessage({ prepared: true });
    } else if (begin) {
      const image = await start(begin);
      postMessage({ ready: true, image });
    } else {
      const answer = await answered(ask);
      port.postMessage(answer, [answer.body]);
    }
  } catch (error) {  // the kind alone: what was being done may hold a name
    if (begin) postMessage({ failed: String(error?.name ?? error) });
    if (error?.name !== "PythonError") await dropImage().catch(() => {});
    if (ask) port.postMessage({ status: 500, headers: [], body: new ArrayBuffer(0) });
  }
}
run();
