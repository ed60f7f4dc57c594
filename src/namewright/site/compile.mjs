// node compile.mjs ENGINE LIBRARY.zip: the modules of the library as bytecode, made by the Python that will run them, all in one
// file (bundle.py), with those of Python itself that are not loaded when it starts; so are the templates of the screens. What a
// page never asks for stays out of Python's own.
import fs from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const [engine, library] = process.argv.slice(2);
const stdlib = path.join(engine, "python_stdlib.zip");
const { loadPyodide } = await import(pathToFileURL(path.join(engine, "pyodide.mjs")));
const python = await loadPyodide({ indexURL: path.resolve(engine) + "/" });
python.runPython(`
import sys
AT_START = frozenset(sys.modules)
import compileall, io, os, pathlib, zipfile
from py_compile import PycInvalidationMode

LEFT_OUT = ("_pyrepl", "unittest", "doctest.py", "pdb.py", "bdb.py", "pydoc.py", "imaplib.py", "mailbox.py", "smtplib.py",
            "poplib.py", "ftplib.py", "xmlrpc", "turtle.py", "ensurepip", "venv", "trace.py", "cProfile.py", "profile.py",
            "pstats.py", "_pyio.py", "optparse.py", "windows_events.py", "proactor_events.py", "tabnanny.py", "pyclbr.py",
            "idlelib", "tkinter", "curses", "dbm", "pickletools.py", "_pydatetime.py", "wave.py", "modulefinder.py")
KEPT = ("pyodide", "_pyodide", "asyncio")  # what starts, on any device
READ_FIRST = ("namewright/__init__.pyc", "namewright/site/__init__.pyc", "namewright/site/bundle.pyc")

def compiled(folder):
    """Return the files of a folder, its modules compiled."""
    os.chdir(folder)
    assert compileall.compile_dir(".", quiet=1, legacy=True, optimize=2, invalidation_mode=PycInvalidationMode.UNCHECKED_HASH)
    return {each.as_posix(): each.read_bytes() for each in sorted(pathlib.Path(".").rglob("*"))
            if each.is_file() and each.suffix != ".py" and each.parts[0] not in LEFT_OUT and each.stem + ".py" not in LEFT_OUT}

def zipped(files):
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as archive:
        for path, data in sorted(files.items()):
            archive.writestr(zipfile.ZipInfo(path, (1980, 1, 1, 0, 0, 0)), data)
    return buffer.getvalue()

def built(library, stdlib):
    """Return the library and Python's own modules, each as a zip that is not packed in itself."""
    sys.dont_write_bytecode = True
    sys.path.insert(0, library)
    from namewright.site.bridge import COMPILED, compile_templates
    from namewright.site.bundle import module_name, packed
    compile_templates(COMPILED)
    screens = COMPILED.relative_to(library).as_posix()
    ours, own = compiled(library), compiled(stdlib)
    in_one = {path for path in ours if path.endswith(".pyc") and path not in READ_FIRST and not path.startswith(screens)}
    later = {path for path in own if path.endswith(".pyc") and module_name(path) not in AT_START
             and path.split("/")[0] not in KEPT}
    modules = packed({path: ours[path] for path in in_one} | {path: own[path] for path in later})
    return (zipped({path: data for path, data in ours.items() if path not in in_one} | {"modules": modules}),
            zipped({path: data for path, data in own.items() if path not in later}))
`);
const folders = [library, stdlib].map((file) => {
  const folder = "/source/" + path.basename(file, ".zip");
  python.unpackArchive(new Uint8Array(fs.readFileSync(file)), "zip", { extractDir: folder });
  return folder;
});
const made = python.globals.get("built")(...folders).toJs();
[library, stdlib].forEach((file, at) => fs.writeFileSync(file, made[at]));
