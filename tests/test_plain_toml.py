"""The quick reader of TOML answers as the standard library's."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import namewright
from namewright import plain_toml

SOURCE = Path(namewright.__file__).parent
FILES = sorted([*SOURCE.rglob("*.toml"), *SOURCE.parents[1].joinpath("fonts").glob("*.toml")])


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_our_files_are_read_as_tomllib_reads_them(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """And by the quick reader itself: each file is as plain as that."""
    text = path.read_text(encoding="utf-8")
    held = tomllib.loads(text)
    monkeypatch.setattr(tomllib, "loads", None)
    assert plain_toml.loads(text) == held


VALUES = st.sampled_from([
    '"a"', '"#ffffff"', '"a, b = c"', '"say \\"no\\" = 1, \\u00e9 \\U0001f600"', '"{ a = 1 }"', "'a\\b'",
    "1", "-2.50", "+3", "1_000", "0x1f", "inf", "true", "1979-05-27", "[]", '[1, 2.5, "x # y"]', "[1, 2,]", "{}",
    '[["a"], []]',
    '{ a = 1, b-c = "d = e" }', '{ "a b" = 2, c.d = [1] }', '{ a = { b = "}" } }', '{ a = "\\t{" }',
    '"""\nmore\nlines # no comment\n"""', '"""\nsaid “no”, said "no"\n"""', '"""one"""', '"\t"',
    '"a" # said', '"a" # "said"', "5# said", "[1, # said\n 2]",
])
KEYS = st.sampled_from(["a", "b-c", "d_1", "7", '"é ê"', '"x.y"', "f.g", "'lit'"])
LINES = st.one_of(st.builds("{} = {}".format, KEYS, VALUES), st.sampled_from([
    "", "# said", '# a = "b', "  # said", "[h]", "[h.i]", "[[j]]", "[[j]] # said", "[h] # \"said\"", "[ k ]", '["l m"]',
    "[j.n]", "  o = 1", "p=2", "q = 3\r",
]))


@given(st.lists(LINES, max_size=8))
def test_any_text_is_read_as_tomllib_reads_it(lines: list[str]) -> None:
    """Whatever is TOML; what is none may be taken, for our own files are held to it by the test above."""
    text = "\n".join(lines)
    try:
        held = tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        return
    assert plain_toml.loads(text) == held


def test_what_is_no_toml_is_told() -> None:
    with pytest.raises(tomllib.TOMLDecodeError):
        plain_toml.loads("a = 1\nthis is a sentence\n")
    with pytest.raises(tomllib.TOMLDecodeError):
        plain_toml.loads("a = 1\n[a]\nb = 2")
