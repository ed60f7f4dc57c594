"""The folder of static files: Python for browsers, the engine and what it needs, the screens, and the page around them.

``python -m namewright.site.build -o dist/site`` (``make site``). Python for browsers is Pyodide's core from the npm
registry, the libraries are wheels from PyPI; both are pinned with their hashes. Everything large is packed beforehand,
so that any server that hands out files will do. The libraries go as bytecode of that very Python, compiled by itself.
Needs npm and node. Out of scope: what a school's own font needs (native code).
"""

from __future__ import annotations

import argparse
import base64
import gzip
import hashlib
import html
import json
import re
import shutil
import subprocess
import sys
import tarfile
import tempfile
import zipfile
from collections.abc import Iterator, Mapping
from pathlib import Path, PurePosixPath

from namewright.names.beats import NAMES_IN
from namewright.web.guard import CONTENT_POLICY
from namewright.web.screen_language import screen_languages
from namewright.wording import languages, wording

HERE = Path(__file__).parent
STATIC = HERE / "static"
LOOK = HERE.parent / "web" / "static"  # what the screens load: styles, scripts, fonts
SOURCE = HERE.parents[2]  # the repository: the wheel is built from it
PYODIDE = "314.0.7"
PYODIDE_SHA512 = "0YvXxEhfEdpLfb/XkM2BFAeMROq0iMUX2bzzH9pOttyMcWkwq+HbE5uyuGD82LN7y2q+SNvi/6V5JEsOlD2R1A=="
ENGINE = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json")
# fontTools is used for curves alone; its compilers, tables and most of its pens stay at home.
FONTTOOLS = tuple(f"fontTools/{name}.py" for name in (
    "__init__", "misc/__init__", "misc/arrayTools", "misc/bezierTools", "misc/cython", "misc/etree",
    "misc/loggingTools", "misc/roundTools", "misc/textTools", "misc/transform", "misc/vector", "pens/__init__",
    "pens/basePen", "pens/filterPen", "pens/pointPen", "pens/recordingPen", "pens/reverseContourPen",
    "pens/transformPen", "svgLib/__init__", "svgLib/path/__init__", "svgLib/path/arc", "svgLib/path/parser",
    "svgLib/path/shapes"))
LEFT_OUT = ("namewright/commands/", "namewright/cli.py", "namewright/__main__.py", "namewright/truetype/",
            "namewright/schoolfont/", "namewright/site/static/", "namewright/site/build.py", "namewright/api.py",
            "namewright/web/serve.py", "namewright/web/static/", "namewright/output/_cairo.py",
            "namewright/output/png.py", "werkzeug/debug/", "werkzeug/middleware/", "fonttools-4.", "click/", "click-")
# Languages that a name may be said to be in, or a page is in; patterns of all others are never asked for.
PATTERNS_FOR = frozenset({*NAMES_IN, *languages()})
# pyphen's patterns for these are those of hyph_de_DE, line for line; it falls back to them by itself.
SAME_PATTERNS = ("hyph_de_AT.dic", "hyph_de_CH.dic")
# What stands in for modules of which a page has no use. A server of its own and a terminal bring half as much as all
# else of Flask, which asks for them when it is loaded. Python for browsers has Unicode 16 of its own; a test compares
# what both make of every name that is tried.
STAND_INS = {
    "unicodedata2.py": b"from unicodedata import *\nfrom unicodedata import unidata_version\n",
    "click.py": b"",
    "flask/cli.py":
        b"class AppGroup:\n    def __init__(self, name=None):\n        self.name, self.commands = name, {}\n",
    "werkzeug/serving.py": b"run_simple = None\n\n\ndef is_running_from_reloader():\n    return False\n",
}
# Wasm has to be compiled; screens are shown in a frame of this very page. Nothing from elsewhere, as everywhere.
POLICY = CONTENT_POLICY.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'").replace(
    "frame-ancestors 'none'", "frame-src 'self'; worker-src 'self'; manifest-src 'self'")
TYPES = {".mjs": "text/javascript", ".js": "text/javascript", ".html": "text/html; charset=utf-8",
         ".css": "text/css; charset=utf-8", ".json": "application/json", ".svg": "image/svg+xml",
         ".zip": "application/zip", ".woff2": "font/woff2",
         ".wasm": "application/wasm", ".webmanifest": "application/manifest+json"}
WORDS = ("private", "loading", "starting", "scripts", "insecure", "old", "other_tab", "not_loaded", "not_started",
         "newer", "use_newer", "copy_reminder", "understood", "keep", "ask_it", "not_now", "keeps",
         "keeps_not", "too_long", "early", "brought", "brought_after", "open_copy")  # what shell.mjs says, by key
_PACKED_FROM_BYTES = 100_000


def build(out: Path) -> dict[str, int]:
    """Write the site into ``out``, which is made anew, and return sizes in bytes: ``raw``, ``sent`` and ``files``.

    Raises subprocess.CalledProcessError where a registry does not answer, ValueError where a hash is not as pinned.
    """
    with tempfile.TemporaryDirectory() as scratch:
        work = Path(scratch)
        engine, library = _engine(work), _library(work)
        subprocess.run(["node", HERE / "compile.mjs", engine, library], check=True)
        _forget_packages(engine / "pyodide-lock.json")
        files = {f"engine/{name}": (engine / name).read_bytes() for name in ENGINE}
        files |= dict(_page()) | {library.name: library.read_bytes()}
    return _write(out, files)


def _write(out: Path, files: Mapping[str, bytes]) -> dict[str, int]:
    """Write the files, and the service worker that knows them all, into ``out``, which is made anew."""
    shutil.rmtree(out, ignore_errors=True)
    entries = {path: _written(out, path, data) for path, data in sorted(files.items())}
    version = hashlib.sha256(json.dumps(entries, sort_keys=True).encode()).hexdigest()[:12]
    told = json.dumps({"version": version, "policy": POLICY, "files": entries}, indent=1)
    script = (STATIC / "service-worker.js").read_text("utf-8").replace("/*BUILD*/null", told)
    (out / "service-worker.js").write_text(script, "utf-8")
    sent = sum(int(str(each["sent"])) for each in entries.values()) + len(script.encode())
    return {"raw": sum(map(len, files.values())), "sent": sent, "files": len(entries) + 1}


def _written(out: Path, path: str, data: bytes) -> dict[str, object]:
    """Write a file, packed where it is large, and return what the service worker has to know of it."""
    sha256 = hashlib.sha256(data).hexdigest()
    entry: dict[str, object] = {"sha256": sha256, "type": TYPES[PurePosixPath(path).suffix]}
    where = path
    if len(data) > _PACKED_FROM_BYTES:
        where = entry["packed"] = f"packed/{sha256[:16]}.pack"  # not .gz: some servers unpack that on the way
        data = gzip.compress(data, 9, mtime=0)
    (out / where).parent.mkdir(parents=True, exist_ok=True)
    (out / where).write_bytes(data)
    return entry | {"sent": len(data)}


def _engine(work: Path) -> Path:
    """Fetch Python for browsers and return its folder."""
    subprocess.run(["npm", "pack", "--silent", f"pyodide@{PYODIDE}"], cwd=work, check=True, stdout=subprocess.DEVNULL)
    (packed,) = work.glob("pyodide-*.tgz")
    if base64.b64encode(hashlib.sha512(packed.read_bytes()).digest()).decode() != PYODIDE_SHA512:
        raise ValueError(f"pyodide {PYODIDE} from the registry is not the one that was pinned")
    with tarfile.open(packed) as archive:
        archive.extractall(work, filter="data")
    return work / "package"


def _forget_packages(lock: Path) -> None:
    """Leave of the list of packages only what Python for browsers is: it looks into it at each start."""
    told = json.loads(lock.read_text("utf-8"))
    lock.write_text(json.dumps({"info": told["info"], "packages": {}}), "utf-8")


def _page() -> Iterator[tuple[str, bytes]]:
    words = {one: {key: wording(one).say(f"web.site.{key}", kind="{kind}", file="{file}") for key in WORDS}
             | _words_of_screens(one) for one in screen_languages()}
    yield "words.json", json.dumps(words, ensure_ascii=False).encode()
    yield "icon.svg", (LOOK / "icon.svg").read_bytes()
    for each in sorted(one for one in LOOK.rglob("*") if one.is_file()):  # no screen waits for Python to have its style
        yield f"app/static/{each.relative_to(LOOK).as_posix()}", each.read_bytes()
    for name in ("site.css", "old.js", "shell.mjs", "worker.mjs", "python.mjs", "keeping.mjs",
                 "manifest.webmanifest"):
        yield name, (STATIC / name).read_bytes()
    yield "index.html", _first_page(words).encode()


def _words_of_screens(language: str) -> dict[str, str]:
    """Return what the page around the screens says in their words."""
    say = wording(language).say
    return {"paste": say("web.list.paste"), "from_menu": say("web.print.from_menu", button=say("web.desk.print"))}


def _first_page(words: Mapping[str, Mapping[str, str]]) -> str:
    """Return the page around the screens; what it loads itself is named with its hash (Subresource Integrity)."""
    filled = {"POLICY": _in_page(POLICY), "WAIT": words["en"]["loading"], "SCRIPTS": words["en"]["scripts"],
              "OLD": json.dumps({one: told["old"] for one, told in words.items()}, ensure_ascii=False)}
    filled |= {path.name: f"sha384-{base64.b64encode(hashlib.sha384(path.read_bytes()).digest()).decode()}"
               for path in (STATIC / "site.css", LOOK / "paper.css", STATIC / "old.js", STATIC / "shell.mjs")}
    page = (STATIC / "index.html").read_text("utf-8")
    return re.sub(r"@([\w.]+)@", lambda found: html.escape(filled[found[1]]), page)


def _in_page(policy: str) -> str:
    """Return a policy without what only a header may say (CSP 3, 3.3)."""
    return "; ".join(part for part in policy.split("; ") if not part.startswith("frame-ancestors"))


def _library(work: Path) -> Path:
    """Gather the engine and its libraries in a zip, not packed in itself: the whole is packed once."""
    wheels, out = work / "wheels", work / "library.zip"
    pip = [sys.executable, "-m", "pip", "--disable-pip-version-check", "--quiet"]
    subprocess.run([*pip, "download", "--no-deps", "--require-hashes", "--only-binary", ":all:",
                    "--python-version", "3.11", "--platform", "manylinux2014_x86_64", "--platform", "any",
                    "-r", HERE / "lock.txt", "-d", wheels], check=True)
    subprocess.run([*pip, "wheel", "--no-deps", "-w", wheels, SOURCE], check=True)
    with zipfile.ZipFile(out, "w") as archive:
        for name, data in sorted(_sources(wheels)):
            archive.writestr(name, data)
    return out


def _sources(wheels: Path) -> Iterator[tuple[str, bytes]]:
    for wheel in sorted(wheels.glob("*.whl")):
        with zipfile.ZipFile(wheel) as archive:
            yield from ((name, archive.read(name)) for name in archive.namelist() if is_needed(name))
    yield from STAND_INS.items()


def is_needed(name: str) -> bool:
    """Say whether a file of a wheel, by its path, goes into the site."""
    if name.startswith("pyphen/dictionaries/"):
        language = name.rpartition("/hyph_")[2].split(".")[0].split("_")[0]
        return name.endswith(".dic") and not name.endswith(SAME_PATTERNS) and language in PATTERNS_FOR
    if name.startswith("fontTools/"):
        return name in FONTTOOLS
    if name in STAND_INS or name.startswith(LEFT_OUT) or name.endswith((".so", ".pyi", ".c", "/")):
        return False
    return (".data/" not in name and (".dist-info/" not in name or name.endswith("METADATA")))


def main() -> None:
    """Build the site from the command line, and tell its size."""
    parser = argparse.ArgumentParser(prog="python -m namewright.site.build", description=__doc__.splitlines()[0])
    parser.add_argument("-o", "--output", type=Path, default=Path("dist/site"))
    out = parser.parse_args().output
    size = build(out)
    sent, raw = size["sent"] / 1e6, size["raw"] / 1e6
    print(f"{out}: {size['files']} files, {sent:.1f} MB sent on a first visit ({raw:.1f} MB unpacked)")


if __name__ == "__main__":
    main()
