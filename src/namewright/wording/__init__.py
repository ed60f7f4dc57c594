"""Every word that a person reads, one file a language: ``wording/<language>.toml``.

A template is one whole sentence (or heading, or label) with its fields in {curly} brackets. Filling one in, joining a
list, choosing a plural and writing a number happen here and nowhere else. To add a language, copy ``en.toml``.

Out of scope: which message is told when (the engine), and in which language (the edges).
"""

from __future__ import annotations

import re
import string
from collections.abc import Iterable, Iterator, Mapping
from enum import StrEnum
from functools import cache, lru_cache
from pathlib import Path

from namewright import toml
from namewright.message import Field, Message, Problem
from namewright.named_tuples import NamedTuple
from namewright.units import number

TIED_SPACE = "\u00a0"
"""The space at which no line breaks (Unicode NO-BREAK SPACE)."""
FIRST = "en"
"""The language that is asked for where a person has not said any."""


class Grammar(NamedTuple):
    """What a language does with any template: how it joins a list, counts, and writes a number.

    ``one`` holds the whole numbers that take the singular (Unicode CLDR, plural rules: 0 and 1 in French and
    Portuguese, 1 elsewhere among the languages here). ``last_before`` is a pattern, and the word that stands for
    "and" before what it matches (Spanish y, but e before the sound i; RAE, Ortografía), both empty where there is none;
    ``either_before`` the same for "or". A space before a sign of ``tied_before`` and after one of ``tied_after``
    (French) is one at which no line breaks.
    """

    last: str = "and"
    either: str = "or"
    last_before: tuple[str, str] = ("", "")
    either_before: tuple[str, str] = ("", "")
    comma: str = ", "
    decimal: str = "."
    one: frozenset[int] = frozenset({1})
    tied_before: str = ""
    tied_after: str = ""

    def joined(self, parts: Iterable[str], *, either: bool = False) -> str:
        """Join parts as a sentence lists them: ``a``, ``a and b``, ``a, b and c``; with ``or`` where asked."""
        *first, last = parts = list(parts) or [""]
        if not first:
            return last
        pattern, instead = self.either_before if either else self.last_before
        word = self.either if either else self.last
        if pattern and re.match(pattern, last, re.IGNORECASE):
            word = instead
        return f"{self.comma.join(first)} {word} {last}"

    def tied(self, template: str) -> str:
        """Return a template in which no line breaks between a sign and the word that it belongs to."""
        for signs, place in ((self.tied_before, " (?=[{}])"), (self.tied_after, "(?<=[{}]) ")):
            template = re.sub(place.format(re.escape(signs)), TIED_SPACE, template) if signs else template
        return template

    def number(self, value: float, digits: int = 3) -> str:
        """Write a number with the language's decimal mark, rounded, with no trailing zeros."""
        return number(value, digits).replace(".", self.decimal)


class Wording(NamedTuple):
    """One language: its templates by key, and its grammar."""

    language: str
    templates: Mapping[str, str]
    grammar: Grammar = Grammar()

    def say(self, told: Message | str, /, **fields: Field) -> str:
        """Return a message, or the template of a key with these fields, in words. Raises KeyError for no such key.

        A template that has a plural is chosen by the field ``count``. In a template, ``{names:or}`` joins a list by
        "or" instead of "and", ``{names:,}`` by commas alone, ``{told: }`` sets sentences one after another, and
        ``{height:.1}`` rounds to that many decimals.
        """
        key, inside = (told.key, dict(told.fields)) if isinstance(told, Message) else (told, fields)
        template = self._template(key, inside.get("count"))
        return _fill(template, inside, self) if inside else template.replace("{{", "{").replace("}}", "}")

    def sentence(self, told: Message | Problem | str, /, **fields: Field) -> str:
        """Return the same, or what a problem tells, as a sentence.

        A full stop stands at its end, a capital at its beginning unless that was typed.
        """
        told = told.message if isinstance(told, Problem) else told
        words = self.say(told, **fields)
        opening = words[:1] if self._opens_as_typed(told, fields) else words[:1].upper()
        return opening + words[1:] + ("" if words.endswith((".", "!", "?", "…")) else ".")

    def text(self, *told: Message) -> str:
        """Return sentences, one after another."""
        return " ".join(self.sentence(each) for each in told)

    def has(self, key: str) -> bool:
        """Say whether there are words for a key."""
        return key in self.templates or f"{key}.other" in self.templates

    def listed(self, parts: Iterable[Field], *, either: bool = False) -> str:
        """Return fields joined as a list, each in words."""
        return self.grammar.joined([self._worded(part, "") for part in parts], either=either)

    def _opens_as_typed(self, told: Message | str, fields: Mapping[str, Field]) -> bool:
        """Say whether the first words are a field that somebody typed, such as the name of a file."""
        key, inside = (told.key, dict(told.fields)) if isinstance(told, Message) else (told, fields)
        before, first, *_ = _parts(self._template(key, inside.get("count")))[0]
        value = inside.get(first) if first and not before else None
        while isinstance(value, tuple):
            value = value[0] if value else None
        if isinstance(value, Message):
            return self._opens_as_typed(value, {})
        return isinstance(value, str) and not isinstance(value, StrEnum)

    def _template(self, key: str, count: Field | None) -> str:
        try:
            return self.templates[key]
        except KeyError:
            if f"{key}.other" not in self.templates:
                raise
        one = isinstance(count, int) and count in self.grammar.one
        return self.templates[f"{key}.one" if one else f"{key}.other"]

    def _worded(self, value: Field, how: str) -> str:
        if isinstance(value, Message):
            return self.say(value)
        if isinstance(value, tuple):
            if how == " ":
                return " ".join(self.sentence(each) if isinstance(each, Message) else str(each) for each in value)
            parts = [self._worded(each, "") for each in value]
            return self.grammar.comma.join(parts) if how == "," else self.grammar.joined(parts, either=how == "or")
        if isinstance(value, StrEnum):
            return self.templates.get(f"word.{value.value}", value.value)
        if isinstance(value, float):
            return self.grammar.number(value, int(how.removeprefix("."))) if how else self.grammar.number(value)
        return str(value)


@lru_cache(maxsize=1000)
def _parts(template: str) -> tuple[tuple[str, str | None, str | None], ...]:
    """Return what stands in a template before each field, and the field with the way it is shown."""
    return tuple((literal, name, how) for literal, name, how, _ in string.Formatter().parse(template))


def _fill(template: str, fields: Mapping[str, Field], wording: Wording) -> str:
    """Fill in a template's fields; a field that ends in a full stop ("Ava B.") ends the sentence by itself."""
    text = ""
    for literal, name, how in _parts(template):
        text += literal[text.endswith(".") and literal.startswith("."):]
        if name is not None:
            text += wording._worded(fields[name], how or "")
    return text


def folder() -> Path:
    """Return where the files of the languages are; a test lays others beside them."""
    return Path(__file__).parent


@cache
def languages() -> tuple[str, ...]:
    """Return the languages that have words, sorted."""
    names = (entry.name for entry in folder().iterdir())
    return tuple(sorted(name.removesuffix(".toml") for name in names if name.endswith(".toml")))


@cache
def wording(language: str) -> Wording:
    """Return the words of a language. Raises Problem, naming those there are, for another."""
    if language not in languages():
        raise Problem("problem.language", language=language, known=languages())
    return read_wording(language, folder().joinpath(f"{language}.toml").read_text(encoding="utf-8"))


def has_table(language: str, name: str) -> bool:
    """Say whether the file of a language has a table; its words stay unread, for most runs speak one language."""
    return f"\n[{name}]".encode() in folder().joinpath(f"{language}.toml").read_bytes()


def read_wording(language: str, text: str) -> Wording:
    """Return the words in the text of a language's file."""
    tables = _tables(text)
    grammar = toml.loads(tables.pop("grammar", "")).get("grammar", {})
    pairs = {key: tuple(grammar[key]) for key in ("last_before", "either_before") if key in grammar}
    one = frozenset(grammar.get("one", (1,)))
    own = Grammar(**{**grammar, **pairs, "one": one})
    return Wording(language, _Templates(tables, own), own)


def _tables(text: str) -> dict[str, str]:
    """Return the tables of a TOML text by their names, each as its own text; what stands before the first by ""."""
    first, *others = f"\n{text}".split("\n[")  # not by an expression, which would look at every sign of a long text
    tables = {"": first}
    for table in others:
        name, _, inside = table.partition("]")
        tables[name] = f"[{name}]{inside}"
    return tables


class _Templates(Mapping[str, str]):
    """Templates by key; a table of the file is read when one of its keys is first asked for, for most runs need few.

    Several threads may ask at once: a table is no longer unread only when all its templates are here.
    """

    def __init__(self, tables: Mapping[str, str], grammar: Grammar) -> None:
        self._unread, self._grammar = dict(tables), grammar
        self._read: dict[str, str] = {}

    def __getitem__(self, key: str) -> str:
        if key not in self._read and self._unread:
            for end in (0, *(at for at, sign in enumerate(key) if sign == ".")):
                self._read_table(key[:end])
        return self._read[key]

    def _read_table(self, name: str) -> None:
        text = self._unread.get(name)
        if text is not None:
            self._read.update((key, self._grammar.tied(template)) for key, template in _flat(toml.loads(text)))
            self._unread.pop(name, None)

    def _all(self) -> Mapping[str, str]:
        for name in tuple(self._unread):
            self._read_table(name)
        return self._read

    def __iter__(self) -> Iterator[str]:
        return iter(self._all())

    def __len__(self) -> int:
        return len(self._all())


def _flat(table: Mapping[str, object], prefix: str = "") -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from _flat(value, f"{prefix}{key}.")
        else:
            yield prefix + key, str(value)
