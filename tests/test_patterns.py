"""A pattern answers as a compiled expression does, and is compiled only when it is first asked."""

from __future__ import annotations

import re
from importlib import import_module
from pathlib import Path

import pytest

import namewright
from namewright.patterns import pattern

SOURCE = Path(namewright.__file__).parent


def test_it_answers_as_the_compiled_expression() -> None:
    ours, theirs = pattern("([a-c])(?P<rest>x+)", re.IGNORECASE), re.compile("([a-c])(?P<rest>x+)", re.IGNORECASE)
    text = "axx, Bx and dx"
    assert ours.findall(text) == theirs.findall(text)
    assert ours.sub(r"\g<rest>", text) == theirs.sub(r"\g<rest>", text)
    assert ours.split(text, maxsplit=1) == theirs.split(text, maxsplit=1)
    assert ours.fullmatch(text) is None
    found = ours.search(text, 3)
    assert found is not None
    assert found.span() == (5, 7)
    assert (ours.pattern, ours.flags, ours.groups) == (theirs.pattern, theirs.flags, theirs.groups)
    assert pattern(rb"\d+").findall(b"1, 22") == [b"1", b"22"]


def test_it_is_compiled_at_its_first_use_and_no_more(monkeypatch: pytest.MonkeyPatch) -> None:
    compiled: list[str] = []

    def compile_told(text: str, flags: int = 0) -> re.Pattern[str]:
        compiled.append(text)
        return original(text, flags)

    original = re.compile
    monkeypatch.setattr(re, "compile", compile_told)
    label = pattern("(label):")
    assert compiled == []
    assert [label.match(line) is not None for line in ("label: a", "b", "label: c")] == [True, False, True]
    assert compiled == ["(label):"]


def test_every_pattern_of_the_program_can_be_compiled() -> None:
    """One that is wrong would else be found by whoever first has such a list."""
    found = 0
    for path in sorted(SOURCE.rglob("*.py")):
        if "= pattern(" in path.read_text(encoding="utf-8"):
            module = import_module(".".join(("namewright", *path.relative_to(SOURCE).with_suffix("").parts))
                                   .removesuffix(".__init__"))
            for value in vars(module).values():
                if isinstance(value, type(pattern(""))):
                    assert value.groups >= 0, (module.__name__, value)
                    found += 1
    assert found > 100
