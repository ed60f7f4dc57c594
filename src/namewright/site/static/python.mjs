// Python with our library in its file system, begun afresh or from an image: its memory as it stood when everything was
// loaded and ready, with no class in it. The image is made on this device, by this browser, once for each version, and
// kept beside the site's files; where there is none, or it does not fit, Python begins afresh.
import { loadPyodide } from "./engine/pyodide.mjs";
import createPyodideModule from "./engine/pyodide.asm.mjs";

const LIBRARY = "/lib/namewright", IMAGE = new URL("./image", import.meta.url).href;
const BROWSER = "X-Browser", ROOM_FOR_IMAGE = 200e6;  // bytes that must be free, so that a class never lacks room for it
const IMPORT = `
import sys
sys.path.insert(0, "${LIBRARY}")
from namewright.site import bundle
bundle.install("${LIBRARY}/modules")
from namewright.site.bridge import Bridge
`;

export async function fresh(host, root, file) {
  const python = await loaded({});
  python.runPython(IMPORT);
  python.runPython(`bridge = Bridge(${text(file)}, ${text(host)}, ${text(root)})`);
  return python;
}

// Returns undefined where there is no image of this version by this very browser; throws where it does not fit.
export async function fromImage() {
  const image = await (await kept())?.arrayBuffer();
  if (!image) return undefined;
  return loaded({ _loadSnapshot: image, createPyodideModule: (settings) => wide(settings, image.byteLength) });
}

// Memory is made as wide as the image before that is put into it.
async function wide(settings, bytes) {
  const module = await createPyodideModule(settings);
  module._malloc(bytes);
  return module;
}

export async function makeImage(host, root, file) {
  const { quota, usage } = await navigator.storage.estimate();
  if (await kept() || quota - usage < ROOM_FOR_IMAGE) return;
  const python = await loaded({ _makeSnapshot: true });
  python.runPython(IMPORT);
  python.runPython("from namewright.site.readying import readied");
  python.runPython(`bridge = readied(${text(file)}, ${text(host)}, ${text(root)})`);
  const image = new Response(python.makeMemorySnapshot(), { headers: { [BROWSER]: navigator.userAgent } });
  await (await shelf()).put(IMAGE, image);
}

export const dropImage = async () => (await shelf()).delete(IMAGE);

const text = JSON.stringify;  // a text for JavaScript is one for Python, too
async function kept() {
  const image = await (await shelf()).match(IMAGE);
  return image?.headers.get(BROWSER) === navigator.userAgent ? image : undefined;
}
const shelf = async () => caches.open("namewright-" + await (await fetch("version")).text());

async function loaded(more) {
  const library = fetch("library.zip").then((sent) => sent.arrayBuffer());
  const fsInit = async (files) => unpack(files, new Uint8Array(await library));
  return loadPyodide({ indexURL: new URL("./engine/", import.meta.url).href, fsInit, ...more });
}

// The files of a zip that is not packed in itself, left where they lie (PKWARE's APPNOTE 4.3.7, 4.3.12, 4.3.16).
function unpack(files, zip) {
  const number = new DataView(zip.buffer), made = new Set();
  let at = number.getUint32(zip.length - 6, true);
  for (let left = number.getUint16(zip.length - 12, true); left > 0; left -= 1) {
    const size = number.getUint32(at + 24, true), name = number.getUint16(at + 28, true), entry = number.getUint32(at + 42, true);
    const path = `${LIBRARY}/${new TextDecoder().decode(zip.subarray(at + 46, at + 46 + name))}`;
    const begin = entry + 30 + number.getUint16(entry + 26, true) + number.getUint16(entry + 28, true);
    const folder = path.slice(0, path.lastIndexOf("/"));
    if (!made.has(folder)) files.mkdirTree(folder);
    made.add(folder);
    files.writeFile(path, zip.subarray(begin, begin + size), { canOwn: true });
    at += 46 + name + number.getUint16(at + 30, true) + number.getUint16(at + 32, true);
  }
}
