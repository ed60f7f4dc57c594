"""Modules in one file: each is imported as if it lay beside that file, and all of them are found."""

from __future__ import annotations

import compileall
import subprocess
import sys
from pathlib import Path

import pytest

import namewright
from namewright.site.bundle import below, module_name, packed

MODULES = {
    "play/__init__.py": "from play.swing import high",
    "play/swing.py": "high = 3",
    "play/sand/__init__.py": "from pathlib import Path\nread = Path(__file__).with_name('pit.txt').read_text()",
    "play/sand/castle.py": "import none_such",
    "slide.py": "from importlib.resources import files\nsame = files('play.sand') / 'pit.txt'",
}
ASKED = """
import sys
from namewright.site import bundle
bundle.install(sys.argv[1])
import play, play.sand, slide
assert (play.high, play.sand.read, slide.same.read_text()) == (3, "wet", "wet")
assert [*bundle.below(play)] == ["play.sand", "play.sand.castle", "play.swing"]
assert play.__path__ == [sys.argv[2] + "/play"] and slide.__file__ == sys.argv[2] + "/slide.pyc"
assert not hasattr(slide, "__path__")
try:
    import play.sand.castle
except ModuleNotFoundError as error:
    assert error.name == "none_such"
else:
    raise AssertionError
"""


@pytest.fixture
def bundle(tmp_path: Path) -> Path:
    """A file of five modules, with a file of data where it lay beside them."""
    source, out = tmp_path / "source", tmp_path / "out"
    for name, text in MODULES.items():
        (source / name).parent.mkdir(parents=True, exist_ok=True)
        (source / name).write_text(text, "utf-8")
    assert compileall.compile_dir(source, quiet=1, legacy=True)
    files = {each.relative_to(source).as_posix(): each.read_bytes() for each in source.rglob("*.pyc")}
    (out / "play" / "sand").mkdir(parents=True)
    (out / "play" / "sand" / "pit.txt").write_text("wet", "utf-8")
    (out / "modules").write_bytes(packed(files))
    return out / "modules"


def test_modules_are_imported_as_if_they_lay_beside_their_file(bundle: Path) -> None:
    """Packages and their modules, files of data beside them, and a module that is not there."""
    subprocess.run([sys.executable, "-c", ASKED, bundle, bundle.parent], check=True)


def test_modules_that_are_files_of_their_own_are_found_as_well() -> None:
    """The command line's modules lie in no such file."""
    found = set(below(namewright))
    assert {"namewright.names", "namewright.names.clusters", "namewright.site.bundle"} <= found


def test_a_module_has_the_name_of_its_path() -> None:
    assert module_name("play/sand/__init__.pyc") == "play.sand"
    assert module_name("slide.pyc") == "slide"
