// node compile.mjs ENGINE SOURCE.zip OUT.zip: modules as bytecode, made by the Python that will run them.
import fs from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const [engine, source, out] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(path.join(engine, "pyodide.mjs")));
const python = await loadPyodide({ indexURL: path.resolve(engine) + "/" });
python.unpackArchive(new Uint8Array(fs.readFileSync(source)), "zip", { extractDir: "/source" });
const made = python.runPython(`
import compileall, io, os, pathlib, zipfile
from py_compile import PycInvalidationMode
os.chdir("/source")
assert compileall.compile_dir(".", quiet=1, legacy=True, invalidation_mode=PycInvalidationMode.UNCHECKED_HASH)
buffer = io.BytesIO()
with zipfile.ZipFile(buffer, "w") as archive:
    for each in sorted(pathlib.Path(".").rglob("*")):
        if each.is_file() and each.suffix != ".py":
            archive.write(each)
buffer.getvalue()
`);
fs.writeFileSync(out, made.toJs());
