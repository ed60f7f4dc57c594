"""The house as DEVELOPERS.md draws it: which room may use which, and no circle. Judged by import-linter."""

from __future__ import annotations

import ast
import re
import tomllib
from collections import Counter
from collections.abc import Iterator
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


# --- every module has its tests where they are looked for ----------------------------------------------------

SOURCE, TESTS = ROOT / "src" / "namewright", ROOT / "tests"
NO_LOGIC = frozenset({"pages/sheet_settings", "roster/children"})
"""Values alone, with at most a way to read one of their fields."""
TRIED_IN = {
    "classbook/kept_lists": "classbook/test_list_before", "classbook/kept_settings": "classbook/test_saves",
    "classbook/traces": "classbook/test_erased_everywhere",
    "lines/arrows": "lines/test_lines_cues", "lines/cue_places": "lines/test_lines_cues",
    "lines/cue_search": "lines/test_lines_cues", "making/know_contents": "pages/test_know",
    "making/knowing": "pages/test_know",
    "making/moves": "commands/test_next",
    "output/_cairo": "output/test_png", "output/pdf/document": "outside/test_pdf",
    "output/pdf/forms": "outside/test_pdf_drawing", "output/pdf/tags": "outside/test_pdf_structure",
    "output/record_csv": "pages/test_record_table", "pages/drawable": "pages/test_odd_names",
    "pages/record": "pages/test_record_table",
    "pages/strips": "pages/test_tile_sheet", "practice/chant": "outside/test_practice_tiles_and_chant",
    "practice/friends": "practice/test_letter_hunt_and_friends", "practice/gaps": "practice/test_gaps_and_mixing",
    "practice/letter_hunt": "practice/test_letter_hunt_and_friends", "practice/mixing": "practice/test_gaps_and_mixing",
    "practice/name_likeness": "outside/test_practice_names_alike",
    "practice/tile_set": "outside/test_practice_tiles_and_chant", "practice/unkind": "practice/test_gaps_and_mixing",
    "roster/pasted": "roster/test_roster_pastes",
    "roster/several": "roster/test_roster_pastes", "roster/unfolding": "roster/test_roster_pastes",
    "web/clapping": "web/test_web_week", "web/class_files": "web/test_web_classes",
    "web/class_pdf": "web/test_printing", "web/copies": "site/test_site_browser",
    "roster/web_page": "roster/test_roster_pastes", "web/list_reading": "web/test_list_review",
    "web/next_month": "web/test_web_week", "web/prompt": "web/test_web_guard",
}
"""Modules that are tried under another name, beside what they belong to, and where."""
FOLDERS = {"pages/know": "pages/test_know"}
"""Folders inside a room whose modules are tried together."""


def modules() -> Iterator[tuple[str, ...]]:
    """Yield each module that does something, as the parts of its path."""
    for path in sorted(SOURCE.rglob("*.py")):
        parts = path.relative_to(SOURCE).with_suffix("").parts
        does = any(isinstance(node, ast.FunctionDef) for node in ast.walk(ast.parse(path.read_text("utf-8"))))
        if does and not parts[-1].startswith("__"):
            yield parts


def is_named_after(test: Path, module: tuple[str, ...]) -> bool:
    """Say whether a file of tests is named after a module: by its name in its room, or by room or folder and name."""
    room, name = module[0], module[-1]
    in_room = len(module) == 1 or test.parent.name == room
    return (in_room and test.stem == f"test_{name}") or (
        len(module) > 1 and test.stem in (f"test_{room}_{name}", f"test_{module[-2]}_{name}"))


def test_every_module_has_its_tests() -> None:
    """In a file named after it, or in the one that is told above; no row of that table is idle."""
    files = list(TESTS.rglob("test_*.py"))
    without = {"/".join(module) for module in modules() if not any(is_named_after(test, module) for test in files)}
    told = {name for name in without if name in TRIED_IN or name in NO_LOGIC or name.rpartition("/")[0] in FOLDERS}
    assert sorted(without - told) == []
    assert sorted({*TRIED_IN, *NO_LOGIC} - without) == []
    assert [name for name in (*TRIED_IN.values(), *FOLDERS.values()) if not (TESTS / f"{name}.py").exists()] == []


def test_no_two_files_of_tests_have_one_name() -> None:
    """Pytest takes the second for the first, so none of its tests would run; each room alone would not show that."""
    names = Counter(path.name for path in TESTS.rglob("test_*.py"))
    assert [name for name, times in names.items() if times > 1] == []
