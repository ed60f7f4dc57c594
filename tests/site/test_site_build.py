"""What goes into the site: all that is asked for there, and no more than a first visit may send."""

from __future__ import annotations

import ast
import json
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pyphen
import pytest

import namewright
from namewright.names.beats import NAMES_IN
from namewright.site.build import STAND_INS, is_needed
from namewright.wording import languages

SENT_AT_MOST = 11_500_000  # bytes: half a million less than what was asked for, so that what is still to come has room
STOOD_IN = """
import json, sys, types
for path, source in json.loads(sys.argv[1]).items():
    name = path.removesuffix(".py").replace("/", ".")
    sys.modules[name] = types.ModuleType(name)
    exec(source, vars(sys.modules[name]))
from namewright.site.bridge import Bridge
bridge = Bridge(sys.argv[2], "play.example", "/names/app")
print(*(bridge.answer("GET", "/names/app" + path).status for path in ("/", "/class/list", "/now", "/gone")))
"""


def asked_for(source: Path, package: str) -> Iterator[str]:
    """Yield the modules of a library that a file asks for when it is loaded or later, each by its dotted name."""
    for node in ast.walk(ast.parse(source.read_text("utf-8"))):
        if isinstance(node, ast.ImportFrom) and (node.module or "").split(".")[0] == package:
            yield str(node.module)
            yield from (f"{node.module}.{each.name}" for each in node.names)


def file_of(module: str) -> Path | None:
    """Return the source of a module, which may lie beside a compiled one; None where the name is no module."""
    path = Path(pyphen.__file__).parents[1].joinpath(*module.split("."))
    return next((each for each in (path / "__init__.py", path.with_suffix(".py")) if each.exists()), None)


def patterns(dictionary: Path) -> list[bytes]:
    """Return the patterns of a file without the remarks between them."""
    return [line for line in dictionary.read_bytes().splitlines() if not line.startswith((b"%", b"#"))]


def test_every_language_of_names_and_pages_keeps_its_patterns() -> None:
    """Those that pyphen itself takes for it, line for line; of a language that nobody can ask for none are kept."""
    places = sorted(set(map(Path, pyphen.LANGUAGES.values())))
    kept = [each for each in places if is_needed(f"pyphen/dictionaries/{each.name}")]
    for language in {*NAMES_IN, *languages()}:
        tag = pyphen.language_fallback(language)
        there = next((each for each in kept if each.stem.split("_")[1] == language), places[0])
        assert tag is None or patterns(there) == patterns(Path(pyphen.LANGUAGES[tag])), language
    assert "hyph_hu_HU.dic" not in {each.name for each in kept}


def test_what_fonttools_is_asked_for_is_there() -> None:
    """Every module that the engine imports of it, wherever it does, and all that those ask for in turn."""
    ours = Path(namewright.__file__).parent
    files = [each for each in ours.rglob("*.py") if is_needed(f"namewright/{each.relative_to(ours).as_posix()}")]
    waiting = {name for each in files for name in asked_for(each, "fontTools")}
    assert "fontTools.misc.bezierTools" in waiting
    seen: set[str] = set()
    while fresh := waiting - seen:
        seen |= fresh
        for name in fresh:
            if source := file_of(name):
                assert is_needed("/".join(source.parts[source.parts.index("fontTools"):])), name
                waiting |= set(asked_for(source, "fontTools"))


def test_the_application_answers_with_what_stands_in(tmp_path: Path) -> None:
    """No server and no terminal is asked for, from the first page on."""
    told = json.dumps({path: source.decode() for path, source in STAND_INS.items() if path != "unicodedata2.py"})
    made = subprocess.run([sys.executable, "-c", STOOD_IN, told, tmp_path / "class.db"],
                          check=True, capture_output=True, text=True)
    assert made.stdout.split() == ["302", "200", "200", "404"]


@pytest.mark.long
def test_a_first_visit_sends_little(folder: Path) -> None:
    assert sum(each.stat().st_size for each in folder.rglob("*") if each.is_file()) <= SENT_AT_MOST
