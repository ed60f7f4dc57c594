"""Every key that the program names has words, and every word is named by the program: none is missing, none is dead."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from importlib import resources
from pathlib import Path

import pytest

from namewright.lines.ruling import PRESETS
from namewright.wording import FIRST, wording

SOURCE = Path(str(resources.files("namewright")))
KEYS = frozenset(re.sub(r"\.(one|other)$", "", key) for key in wording(FIRST).templates)
PARTS = frozenset(key.partition(".")[0] for key in KEYS)
KEY = re.compile(r"[a-z]+(?:\.[A-Za-z0-9_-]+)+")
ANY = r"[\w.-]+"
ADDED = ("command.", "web.")
"""Parts that a function adds to what it is given."""
IN_TEMPLATE = re.compile(r"'([a-z]+\.[\w.-]*)'(?:\s*~\s*(?:[\w.]+(?:\s*~\s*'([\w.]+)')?)?)?")
ENDINGS = ("html", "toml", "css", "js", "svg", "db", "txt", "py", "pdf", "csv", "json", "ttf", "zip")


def _constants(tree: ast.AST) -> Iterator[str]:
    """Yield strings that stand whole, those inside of a string with fields left out."""
    inside = {id(part) for node in ast.walk(tree) if isinstance(node, ast.JoinedStr) for part in node.values}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inside:
            yield node.value


def _patterns(tree: ast.AST) -> Iterator[str]:
    """Yield what strings with fields could be, those that begin as a key does."""
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr) and isinstance(node.values[0], ast.Constant):
            text = "".join(re.escape(str(part.value)) if isinstance(part, ast.Constant) else ANY
                           for part in node.values)
            if re.match(r"[a-z]+\\\.", text):
                yield text


@cache
def _named() -> tuple[set[str], set[str]]:
    """Return the keys that the program names whole, and patterns of those that it puts together."""
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in SOURCE.rglob("*.py")]
    whole = {text for tree in trees for text in _constants(tree)}
    patterns = {text for tree in trees for text in _patterns(tree)}
    for path in SOURCE.rglob("*.html"):
        for found in IN_TEMPLATE.finditer(path.read_text(encoding="utf-8")):
            patterns |= {re.escape(found[1]) + ANY + re.escape(found[2] or "")} if "~" in found[0] else set()
            whole |= set() if "~" in found[0] else {found[1]}
    return whole, patterns


def test_every_key_that_is_named_has_words() -> None:
    """A key that stands whole in code or in a template is in the file; addresses of the web page are no keys."""
    from namewright.web import create_app

    pytest.importorskip("flask")
    addresses = set(create_app({"CLASS": "none.db", "HOSTS": []}).view_functions)
    keys = {text for text in _named()[0] if KEY.fullmatch(text) and text.partition(".")[0] in PARTS}
    keys = {key for key in keys - addresses if key.rpartition(".")[2] not in ENDINGS}
    assert {key for key in keys if not {key, *(part + key for part in ADDED)} & KEYS} == set()


def test_every_word_is_said_somewhere() -> None:
    """A key of the file is named in the program: whole, or put together from a choice or a kind that it knows."""
    whole, patterns = _named()
    loose = {pattern for pattern in patterns if re.fullmatch(r"[a-z]+\\\." + re.escape(ANY) + "(_source)?", pattern)}
    families = {name.partition("-")[0] for name in PRESETS}
    tails = "|".join(re.escape(text) for text in whole | families if re.fullmatch(r"[\w-]+", text))
    made = [re.compile(pattern) for pattern in patterns - loose]
    made += [re.compile(pattern.replace(ANY, rf"(?:{tails}|\d+)")) for pattern in loose]
    called = {key: {key, *(key.removeprefix(part) for part in ADDED)} for key in KEYS}
    assert {key for key, names in called.items() if not names & whole
            and not any(pattern.fullmatch(name) for pattern in made for name in names)} == set()
