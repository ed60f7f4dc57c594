"""Every known name in an ordinary place of an ordinary list: alone, whole, family first, in a table, numbered, said.

The other names of a list are common ones of its language, so that nothing but the name that is tried may be odd.
Several are tried in one list; who is not read right there is tried again alone.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from types import MappingProxyType

from namewright.roster import known
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold


@dataclass(frozen=True, slots=True)
class Tongue:
    """The words of lists in a language, and common names that stand beside the one that is tried."""

    first: str
    last: str
    both: str
    givens: tuple[str, ...]
    families: tuple[str, ...]


def _tongue(first: str, last: str, both: str, givens: str, families: str) -> Tongue:
    return Tongue(first, last, both, tuple(givens.split()), tuple(families.split()))


TONGUES: Mapping[str, Tongue] = MappingProxyType({
    "en": _tongue(
        "First name", "Last name", "and",
        "Oliver Emma Jack Sophie Harry Lucy Thomas Ella Daniel Alice Henry Zoe",
        "Smith Jones Taylor Brown Wilson Evans Roberts Walker Wright Robinson Hughes Edwards"),
    "es": _tongue(
        "Nombre", "Apellidos", "y",
        "Lucía Hugo Martina Pablo Julia Diego Valeria Mateo Carla Adrián Irene Javier",
        "García López Martínez Sánchez Pérez Gómez Fernández Ruiz Díaz Moreno Álvarez Romero"),
    "fr": _tongue(
        "Prénom", "Nom", "et",
        "Louise Gabriel Camille Hugo Manon Raphaël Léa Nathan Inès Théo Juliette Antoine",
        "Martin Bernard Dubois Robert Durand Moreau Laurent Lefebvre Leroy Roux Fournier Girard"),
    "de": _tongue(
        "Vorname", "Nachname", "und",
        "Lena Paul Hannah Felix Lea Jonas Marie Moritz Clara Niklas Greta Anton",
        "Müller Schmidt Schneider Fischer Weber Meyer Wagner Becker Schulz Hoffmann Koch Richter"),
    "it": _tongue(
        "Nome", "Cognome", "e",
        "Giulia Francesco Aurora Lorenzo Chiara Matteo Giorgia Davide Alice Riccardo Sara Pietro",
        "Rossi Russo Ferrari Esposito Bianchi Romano Colombo Ricci Marino Greco Bruno Gallo"),
    "pt": _tongue(
        "Nome próprio", "Apelido", "e",
        "Beatriz João Mariana Tiago Leonor Gonçalo Carolina Rodrigo Inês Duarte Joana Rafael",
        "Silva Santos Ferreira Pereira Oliveira Costa Rodrigues Martins Sousa Fernandes Gonçalves Lopes"),
})

Row = tuple[str, str]
Place = Callable[[Sequence[Row], Tongue], str]


def _lines(write: Callable[[Row], str]) -> Place:
    return lambda rows, _: "\n".join(map(write, rows))


def _said(rows: Sequence[Row], tongue: Tongue, write: Callable[[Row], str]) -> str:
    names = list(map(write, rows))
    return f"{', '.join(names[:-1])} {tongue.both} {names[-1]}"


def _numbered(rows: Sequence[Row], write: Callable[[Row], str]) -> str:
    return "\n".join(f"{at}. {write(row)}" for at, row in enumerate(rows, 1))


def _given(row: Row) -> str:
    return row[0]


def _whole(row: Row) -> str:
    return f"{row[0]} {row[1]}"


def _turned(row: Row) -> str:
    return f"{row[1]}, {row[0]}"


def _table(rows: Sequence[Row], tongue: Tongue) -> str:
    return "\n".join([f"{tongue.first},{tongue.last}", *(",".join(row) for row in rows)])


RIGHT = "right"
INSIDE, FIRST, LAST = "inside", "first", "last"
_TOGETHER = 4
GIVEN_PLACES: Mapping[str, tuple[str, Place]] = MappingProxyType({
    "alone": (INSIDE, _lines(_given)), "before a family name": (INSIDE, _lines(_whole)),
    "behind a comma": (INSIDE, _lines(_turned)), "in a table": (INSIDE, _table),
    "numbered": (INSIDE, lambda rows, _: _numbered(rows, _given)), "first line": (FIRST, _lines(_given)),
    "last line": (LAST, _lines(_given)), "said": (INSIDE, lambda rows, tongue: _said(rows, tongue, _given)),
})
"""Where a given name stands, and how the list is written."""
FAMILY_PLACES: Mapping[str, tuple[str, Place]] = MappingProxyType({
    "behind a given name": (INSIDE, _lines(_whole)), "before a comma": (INSIDE, _lines(_turned)),
    "in a table": (INSIDE, _table), "numbered": (INSIDE, lambda rows, _: _numbered(rows, _whole)),
    "numbered with a comma": (INSIDE, lambda rows, _: _numbered(rows, _turned)), "first line": (FIRST, _lines(_whole)),
    "last line": (LAST, _lines(_turned)), "said": (INSIDE, lambda rows, tongue: _said(rows, tongue, _whole)),
})
"""Where a family name stands, and how the list is written."""


def every(part: str) -> tuple[str, ...]:
    """Return the words of a part (``given``, ``family``) in the reader's own data, as names are written, sorted."""
    text = (Path(known.__file__).parent / "data" / "known-names.txt").read_text(encoding="utf-8")
    words = {word for line in text.splitlines() for words in line.split("\t")[1:] if line.startswith((part, "either"))
             for word in words.split() if sum(map(str.isalpha, word)) > 1}
    return tuple(sorted(word.title() if "'" not in word else word.capitalize() for word in words))


def not_right(names: Sequence[str], part: str, where: str, language: str) -> Iterator[tuple[str, str]]:
    """Yield the names that are not read right there, with what became of their list: lost, asked or wrong."""
    at, _ = (GIVEN_PLACES if part == "given" else FAMILY_PLACES)[where]
    together = _TOGETHER if at == INSIDE and where != "said" else 1
    for start in range(0, len(names), together):
        some = names[start : start + together]
        fate = fate_of(some, part, where, language)
        if fate != RIGHT and len(some) > 1:
            yield from ((name, fate) for name in some if (fate := fate_of([name], part, where, language)) != RIGHT)
        elif fate != RIGHT:
            yield some[0], fate


def fate_of(names: Sequence[str], part: str, where: str, language: str) -> str:
    """Say what became of a list with these names among common ones."""
    text, wanted = listed(names, part, where, language)
    try:
        roster = read_roster(text)
    except RosterError:
        return "asked"
    missing = Counter(map(fold, wanted))
    missing.subtract(fold(child.practice) for child in roster.children)
    if not any(missing.values()):
        return RIGHT
    if any(count < 0 for count in missing.values()):
        return "wrong"
    left = [fold(line.text) for line in roster.lines if line.outcome is Outcome.LEFT_OUT]
    return "asked" if all(any(name in line for line in left) for name, count in missing.items() if count) else "lost"


def listed(names: Sequence[str], part: str, where: str, language: str) -> tuple[str, list[str]]:
    """Return a list in which these names stand among common ones, and whom it names."""
    tongue = TONGUES[language]
    at, write = (GIVEN_PLACES if part == "given" else FAMILY_PLACES)[where]
    own = {word for name in names for word in fold(name).split()}
    givens = [name for name in tongue.givens if fold(name) not in own]
    families = [name for name in tongue.families if fold(name) not in own]
    rows = list(zip(givens, families, strict=False))[len(names) :]
    for order, name in enumerate(names):
        row = (name, families[order]) if part == "given" else (givens[order], name)
        rows.insert({FIRST: 0, LAST: len(rows)}.get(at, 2 + 2 * order), row)
    rows = rows[:4] if where == "said" else rows
    return write(rows, tongue), [given for given, _ in rows]
