"""A pattern answers as a compiled expression does, and is compiled only when it is first asked."""

from __future__ import annotations

import copy
import pickle
import re
from collections.abc import Iterable, Iterator
from importlib import import_module
from pathlib import Path
from re._constants import ASSERT, BRANCH, IN, LITERAL, MAX_REPEAT, MIN_REPEAT, RANGE, SUBPATTERN  # type: ignore
from re._parser import parse  # type: ignore
from typing import Any

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


def test_a_text_without_the_signs_is_answered_with_nothing_compiled(monkeypatch: pytest.MonkeyPatch) -> None:
    """As the expression answers it; the first text with one of them has it compiled, also for those without."""
    ours, theirs = pattern(r"\(([^()]*)\)|=", needs="(="), re.compile(r"\(([^()]*)\)|=")

    def answers(one: re.Pattern[str], text: str) -> list[object]:
        return [one.match(text), one.fullmatch(text), one.search(text, 2), one.findall(text), list(one.finditer(text)),
                one.split(text, maxsplit=1), one.sub("", text), one.sub("", text, count=1)]

    held = answers(theirs, "Bo Tamsel")
    with monkeypatch.context() as patched:
        patched.setattr(re, "compile", None)
        for _ in range(2):
            assert answers(ours, "Bo Tamsel") == held
        with pytest.raises(TypeError):
            ours.search("Bo (Tamsel)")
    assert list(map(str, answers(ours, "Bo (Tam) = (s)"))) == list(map(str, answers(theirs, "Bo (Tam) = (s)")))
    assert answers(ours, "Bo Tamsel") == held


def test_a_long_list_has_every_expression_compiled() -> None:
    """Asking for the signs takes longer than a compiled expression: it is for lists that are short."""
    ours = pattern(r"\(([^()]*)\)", needs="(")
    assert not any(ours.search("Bo Tamsel") for _ in range(5_000))
    assert isinstance(getattr(ours.search, "__self__", None), re.Pattern)


def patterns() -> Iterator[tuple[str, Any]]:
    """Yield each pattern of the program that stands in a module, with the name of that module."""
    for path in sorted(SOURCE.rglob("*.py")):
        if "= pattern(" in path.read_text(encoding="utf-8"):
            module = import_module(".".join(("namewright", *path.relative_to(SOURCE).with_suffix("").parts))
                                   .removesuffix(".__init__"))
            yield from ((module.__name__, value) for value in vars(module).values()
                        if isinstance(value, type(pattern(""))))


def always_has(parsed: Iterable[tuple[Any, Any]], signs: frozenset[str]) -> bool:
    """Say whether whatever a parsed expression matches has one of the signs, by how it is put together."""
    return any(part_has(kind, of, signs) for kind, of in parsed)


def part_has(kind: Any, of: Any, signs: frozenset[str]) -> bool:
    if kind is LITERAL:
        return chr(of) in signs
    if kind is IN:
        return all((each is LITERAL and chr(inside) in signs)
                   or (each is RANGE and signs.issuperset(map(chr, range(inside[0], inside[1] + 1))))
                   for each, inside in of)
    if kind is BRANCH:
        return all(always_has(way, signs) for way in of[1])
    if kind in (MAX_REPEAT, MIN_REPEAT):
        return of[0] > 0 and always_has(of[2], signs)
    return kind in (SUBPATTERN, ASSERT) and always_has(of[-1], signs)


def test_what_a_pattern_needs_is_in_all_that_it_matches() -> None:
    """Proved from the parts of each expression; signs have no letter among them, whose case might be left open."""
    needy = [(module, one) for module, one in patterns() if one._needs]
    assert len(needy) > 25
    for module, one in needy:
        assert not any(map(str.isalpha, one._needs)), module
        assert always_has(parse(one._text, one._flags), one._needs), (module, one._text)
    assert not always_has(parse("a?:?b", 0), frozenset(":"))
    assert not always_has(parse("(?:a|:)(?!:)[^:][:b]", 0), frozenset(":"))


def test_every_pattern_of_the_program_can_be_compiled() -> None:
    """One that is wrong would else be found by whoever first has such a list."""
    found = 0
    for module, value in patterns():
        assert value.groups >= 0, (module, value)
        found += 1
    assert found > 100


def test_a_pattern_can_be_copied() -> None:
    """What holds one may be copied or sent to another process."""
    one = pattern("a+", needs="a")
    for other in (copy.deepcopy(one), pickle.loads(pickle.dumps(one))):
        assert other.sub("b", "caat") == "cbt"
