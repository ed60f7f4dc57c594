"""The door for other programs: what is promised is there, what is shown in the README runs, and no more is needed."""

from __future__ import annotations

import inspect
import io
import re
import subprocess
import sys
from pathlib import Path
from typing import Any

import pypdf
import pytest

import namewright

README = Path(__file__).parents[1] / "README.md"
NAMES = "Mira\nTilo\nZoë\nМарко\n"


def shown_in_the_readme() -> str:
    """Return the program in the README."""
    (code,) = re.findall(r"```python\n(.*?)```", README.read_text(encoding="utf-8"), re.DOTALL)
    return str(code)


def test_the_lines_in_the_readme_run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """At most six of them, from the text of a list to a PDF and a drawing."""
    code = shown_in_the_readme()
    assert len([line for line in code.splitlines() if line.strip()]) <= 6
    monkeypatch.chdir(tmp_path)
    found: dict[str, object] = {}
    exec(code, found)
    assert len(pypdf.PdfReader("class.pdf").pages) == 3
    assert all(str(drawing).startswith(("<?xml", "<svg")) for drawing in found["drawings"])  # type: ignore[attr-defined]


def test_what_is_promised_is_there_with_types_and_words() -> None:
    """Every name in ``__all__`` can be had, is documented, and a function says the type of all it takes and returns."""
    for name in namewright.__all__:
        thing = getattr(namewright, name)
        if name == "__version__":
            continue
        assert inspect.getdoc(thing), name
        if inspect.isfunction(thing):
            assert set(thing.__annotations__) == {*inspect.signature(thing).parameters, "return"}, name
    assert set(dir(namewright)) == set(namewright.__all__)


def test_what_is_not_promised_is_not_there() -> None:
    with pytest.raises(AttributeError, match="Typesetter"):
        _ = namewright.Typesetter  # type: ignore[attr-defined]


@pytest.mark.parametrize("kind", ["sheets", "cards", "tiles", "sizes", "groups", "adult", "plan"])
def test_every_kind_of_page(kind: str) -> None:
    """Whoever cannot be made is in the account with a reason in words; all others are made."""
    making = namewright.make(kind, namewright.read_roster(NAMES), paper="a4", language="es", line_height="15")
    out = io.BytesIO()
    count = namewright.write_pdf(making, out)
    assert count == len(pypdf.PdfReader(out).pages) >= 1
    assert all(one.child.practice == "Марко" for one in making.account.not_made)
    if kind in ("sheets", "cards", "tiles", "sizes"):
        assert "cyrillic" in namewright.in_words(making.account.not_made[0].cause).lower()


def test_what_the_list_says_of_a_child_goes_before_the_settings() -> None:
    roster = namewright.read_roster("Name,Line height\nMira,30\nTilo,\n")
    making = namewright.make("sheets", roster, line_height="20")
    heights = [making.request.settings_of(one).ruling.line_height_mm for one in making.request.members]
    assert heights == [30.0, 20.0]


@pytest.mark.parametrize(("settings", "words"), [
    ({"paper": "a3"}, "a3"), ({"colour": "red"}, "colour"), ({"line_height": "900"}, "900")])
def test_a_setting_that_cannot_be_is_said_in_words(settings: dict[str, str], words: str) -> None:
    with pytest.raises(namewright.Problem) as caught:
        namewright.make("sheets", namewright.read_roster(NAMES), **settings)
    assert words in namewright.in_words(caught.value)


@pytest.mark.parametrize("settings", [{"line_height": 20}, {"sleeve": True}, {"hand": None}, {"paper": b"a4"}])
def test_a_setting_that_is_no_text_is_a_type_error_that_tells_how_it_is_written(settings: dict[str, Any]) -> None:
    with pytest.raises(TypeError, match=f'{next(iter(settings))} has to be text.*"20"'):
        namewright.make("sheets", namewright.read_roster(NAMES), **settings)


@pytest.mark.parametrize("given", [{"text": b"Mira"}, {"text": 5}, {"columns": 3}, {"names_in": 4}])
def test_a_list_that_is_no_text_is_a_type_error(given: dict[str, Any]) -> None:
    with pytest.raises(TypeError, match=f"{next(iter(given))} has to be text"):
        namewright.read_roster(**{"text": NAMES, **given})


@pytest.mark.parametrize(("kind", "words"), [("posters", "posters"), ("year", "class’s file")])
def test_a_kind_that_cannot_be_made_here_is_a_value_error(kind: str, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        namewright.make(kind, namewright.read_roster(NAMES))


def test_a_list_without_children_is_said_in_words() -> None:
    with pytest.raises(namewright.RosterError) as caught:
        namewright.read_roster("\n\n")
    assert namewright.in_words(caught.value).endswith(".")


def test_nothing_is_written_where_nobody_can_be_made(tmp_path: Path) -> None:
    making = namewright.make("sheets", namewright.read_roster("Марко\n"))
    assert namewright.write_pdf(making, tmp_path / "class.pdf") == 0
    assert list(tmp_path.iterdir()) == []


def test_the_package_can_be_run_and_loads_no_engine_until_it_is_asked_for() -> None:
    done = subprocess.run([sys.executable, "-m", "namewright", "--version"], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == f"namewright {namewright.__version__}"
    code = "import sys, namewright; print([name for name in sys.modules if name.startswith('namewright.')])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
