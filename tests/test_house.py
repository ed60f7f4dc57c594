"""The house as DEVELOPERS.md draws it: which room may use which, and no circle. Judged by import-linter."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from importlinter.cli import lint_imports

ROOT = Path(__file__).parents[1]
NOTES = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
RULES = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["importlinter"]


def test_every_room_uses_only_what_lies_under_it(capfd: pytest.CaptureFixture[str]) -> None:
    """All contracts hold; where one does not, the way of the import is told."""
    status = lint_imports(config_filename=str(ROOT / "pyproject.toml"), no_cache=True, no_logo=True)
    assert status == 0, capfd.readouterr().out


def floors_told() -> list[set[str]]:
    """Return the rooms of each floor in the table, from the roof down."""
    table = NOTES[NOTES.index("| floor |"):]
    rows = re.findall(r"^\| (`[^|]+`) \|", table[:table.index("\n\n")], re.MULTILINE)
    return [set(re.findall(r"`(\w+)`", row)) for row in rows]


def test_the_table_is_the_rule() -> None:
    """The floors in the table for people are those that are held, in the same order."""
    (held,) = [one["layers"] for one in RULES["contracts"] if one["id"] == "floors"]
    assert floors_told() == [set(re.findall(r"\w+", floor)) for floor in held]


def test_every_room_is_drawn() -> None:
    """The picture shows each folder of the package by its name, but for the ground, which it sums up."""
    picture = NOTES[NOTES.index("```"):NOTES.index("| floor |")]
    for folder in (ROOT / "src" / "namewright").iterdir():
        if folder.is_dir() and (folder / "__init__.py").exists():
            assert re.search(rf"\b{folder.name}\b", picture), folder.name


def test_an_import_that_goes_up_is_found(tmp_path: Path, monkeypatch: pytest.MonkeyPatch,
                                        capfd: pytest.CaptureFixture[str]) -> None:
    """The judge is not blind: a house with one import that goes up, and one with a circle, are refused."""
    (tmp_path / "upside").mkdir()
    for name, text in (("__init__", ""), ("roof", ""), ("cellar", "import upside.roof")):
        (tmp_path / "upside" / f"{name}.py").write_text(text)
    rules = tmp_path / "rules.toml"
    rules.write_text("[tool.importlinter]\nroot_package = 'upside'\n[[tool.importlinter.contracts]]\nid = 'a'\n"
                     "name = 'a'\ntype = 'layers'\nlayers = ['upside.roof', 'upside.cellar']\n")
    monkeypatch.syspath_prepend(str(tmp_path))
    assert lint_imports(config_filename=str(rules), no_cache=True, no_logo=True) != 0
    assert "upside.cellar" in capfd.readouterr().out
