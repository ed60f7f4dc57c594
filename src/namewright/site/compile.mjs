// node compile.mjs ENGINE LIBRARY.zip: the modules of Python itself and of the library as bytecode, made by the Python
// that will run them, in the place of their sources; so are the templates of the screens. What a page never asks for stays out of Python's own.
import fs from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const [engine, library] = process.argv.slice(2);
const stdlib = path.join(engine, "python_stdlib.zip");
const { loadPyodide } = await import(pathToFileURL(path.join(engine, "pyodide.mjs")));
const python = await loadPyodide({ indexURL: path.resolve(engine) + "/" });
python.runPython(`
import compileall, io, os, pathlib, sys, zipfile
from py_compile import PycInvalidationMode

LEFT_OUT = ("_pyrepl", "unittest", "doctest.py", "pdb.py", "bdb.py", "pydoc.py", "imaplib.py", "mailbox.py", "smtplib.py",
            "poplib.py", "ftplib.py", "xmlrpc", "turtle.py", "ensurepip", "venv", "trace.py", "cProfile.py", "profile.py",
            "pstats.py", "_pyio.py", "optparse.py", "windows_events.py", "proactor_events.py", "tabnanny.py", "pyclbr.py",
            "idlelib", "tkinter", "curses", "dbm", "pickletools.py")

def write_templates(library):
    sys.dont_write_bytecode = True
    sys.path.insert(0, library)
    from namewright.site.bridge import COMPILED, compile_templates
    compile_templates(COMPILED)

def compiled(folder):
    os.chdir(folder)
    assert compileall.compile_dir(".", quiet=1, legacy=True, optimize=2, invalidation_mode=PycInvalidationMode.UNCHECKED_HASH)
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as archive:
        for each in sorted(pathlib.Path(".").rglob("*")):
            if each.is_file() and each.suffix != ".py" and each.parts[0] not in LEFT_OUT and each.stem + ".py" not in LEFT_OUT:
                archive.writestr(zipfile.ZipInfo(each.as_posix(), (1980, 1, 1, 0, 0, 0)), each.read_bytes())
    return buffer.getvalue()
`);
for (const file of [library, stdlib]) {
  const folder = "/source/" + path.basename(file, ".zip");
  python.unpackArchive(new Uint8Array(fs.readFileSync(file)), "zip", { extractDir: folder });
  if (file === library) python.globals.get("write_templates")(folder);
  fs.writeFileSync(file, python.globals.get("compiled")(folder).toJs());
}
