"""Two made-up languages, to show that every word a person reads comes from a language's one file.

In ``qaa`` every word of English has a mark before it; in ``qab`` so it has, and the fields of every sentence stand the
other way round. (ISO 639-2 keeps qaa to qtz for private use.) A word in what was made that has no mark was written
somewhere in the program, and not in the file; names, measures and file names are what a test allows beside.
"""

from __future__ import annotations

import json
import re
import string
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from importlib import resources
from pathlib import Path

import pytest

from namewright import wording as room

MARK = "ʻ"
"""A letter that our alphabet draws, that has no capital, and that no English word begins with."""
MARKED, TURNED = "qaa", "qab"
MADE_UP = (TURNED, MARKED)  # the first finds all that the other does; the long run tells them apart
_WORD = re.compile(r"[^\W\d_]+(?:['’\-][^\W\d_]+)*")
_AS_THEY_ARE = ("page.language",)  # no word, but the code of a language


@contextmanager
def made_up_languages(patch: pytest.MonkeyPatch, place: Path) -> Iterator[None]:
    """Put the made-up languages beside the real ones. Nothing that read a list of languages before knows of them."""
    for entry in resources.files("namewright.wording").iterdir():
        if entry.name.endswith(".toml"):
            (place / entry.name).write_text(entry.read_text(encoding="utf-8"), encoding="utf-8")
    english = tomllib.loads((place / "en.toml").read_text(encoding="utf-8"))
    for language in MADE_UP:
        tables: dict[str, list[str]] = {}
        for key, text in _flat(english):
            table, _, name = key.rpartition(".")
            words = json.dumps(_made_up(key, text, language), ensure_ascii=False)
            tables.setdefault(table, []).append(f"{name} = {words}")
        tables["grammar"] = [f'last = "{MARK}and"', f'either = "{MARK}or"']
        written = "\n".join(line for table, lines in sorted(tables.items())
                            for line in (f"\n[{table}]" if table else "", *lines))
        (place / f"{language}.toml").write_text(written, encoding="utf-8")
    patch.setattr(room, "folder", lambda: place)
    _forget()
    yield
    patch.undo()
    _forget()


def _forget() -> None:
    room.wording.cache_clear()
    room.languages.cache_clear()


def _flat(table: Mapping[str, object], prefix: str = "") -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from _flat(value, f"{prefix}{key}.")
        else:
            yield prefix + key, str(value)


def _made_up(key: str, template: str, language: str) -> str:
    if key in _AS_THEY_ARE:
        return language
    parts = list(string.Formatter().parse(template))
    fields = [f"{{{name}:{how}}}" if how else f"{{{name}}}" for _, name, how, _ in parts if name is not None]
    if language == TURNED:
        fields.reverse()
    left = iter(fields)
    return "".join(_marked(text) + (next(left) if name is not None else "") for text, name, _, _ in parts)


def _marked(text: str) -> str:
    marked = _WORD.sub(lambda word: MARK + word[0], text)
    return marked.replace("{", "{{").replace("}", "}}")


def unmarked(text: str, allowed: Iterable[str] = ()) -> list[str]:
    """Return the words in a text that have no mark, each once; ``allowed`` are names and the like, as they stand in it.

    A word that is a part of something allowed is found where it stands outside of it.
    """
    for phrase in sorted(set(allowed), key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(phrase)}(?!\w)", " ", text)
    return list(dict.fromkeys(word for word in _WORD.findall(text) if not word.startswith(MARK)))
