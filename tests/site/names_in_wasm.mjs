// node names_in_wasm.mjs ENGINE LIBRARY NAMES.json (LIBRARY: the folder that was packed as library.zip): what the site's Python makes of names, as JSON.
import fs from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const [engine, library, names] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(path.join(engine, "pyodide.mjs")));
const python = await loadPyodide({ indexURL: path.resolve(engine) + "/" });
python.mountNodeFS("/lib/namewright", path.resolve(library));
python.globals.set("told", fs.readFileSync(names, "utf8"));
console.log(python.runPython(`
import json, sys
sys.path.insert(0, "/lib/namewright")
from namewright.site import bundle
bundle.install("/lib/namewright/modules")
from namewright.names.casing import mend_case
from namewright.names.clusters import clusters
json.dumps([[clusters(name), mend_case(name)] for name in json.loads(told)])
`));
