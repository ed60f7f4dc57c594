"""A header row into roles: what each column holds, by the words above it.

In the six languages of the pages. A header may say
more than it must (``Child's legal first name``, ``StudentLastName``, ``Left-handed?``); what is about somebody
else (``Mother's name``) is of no use here. A row that is no header gives None.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from namewright.message import Problem
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.buddies import with_buddies
from namewright.roster.header_words import (
    ABOUT_THE_CHILD,
    ASKING,
    BE_CALLED,
    CALLED_QUESTIONS,
    CHILD_CALLED,
    CHILD_WORDS,
    GIVEN_WORDS,
    GOES_BY_WORDS,
    HAND_WORDS,
    HEADER_WORDS,
    IN_CLASS,
    IN_USE,
    LANGUAGE_WORDS,
    MAYBE_WHOLE,
    NAME_OR_FAMILY,
    NOT_NAMES,
    ORDINALS,
    REACHED,
    SAYS_NAME,
    SIDES,
    SOMEBODY_ELSE,
    WHERE_CALLED,
    WITHIN,
    WRITING_WORDS,
    YOURS,
)
from namewright.roster.heading_words import COLOURS
from namewright.roster.known import is_family, is_given, is_known
from namewright.roster.vocabulary import (
    AND_WORDS,
    ANY_DAYS,
    ATTENDANCE,
    DAYS,
    GROUPS,
    HANDS,
    MONTHS,
    NAME_ROLES,
    OF_THE,
    OTHER_PEOPLE,
    STATES,
    Role,
    fold,
)
from namewright.settings import Hand
from namewright.store import keeps_names

_LONGEST_HEADER = 80
_NOT_NINO = ("niño", "niña")  # a child; without its mark a name
_CERTAIN = 3  # header words in a row: it is no child
_TITLES = {"given": "Given name", "family": "Family name", "name": "Full name", "other": "Notes"}
_OWNED = frozenset(("kindes", "l'enfant", "enfant", "l'eleve", "hijo", "hija", "filho", "filha", "figlio", "figlia"))
_BEING = frozenset(("wird", "viene", "est", "on", "se", "le", "como", "come", "comment", "wie", "is", "how"))
_CALLED = frozenset(("nom", "rufname", "llama", "llamado", "llamada"))  # elsewhere these ask for a name
_CAMEL = pattern(r"(?<=[a-z])(?=[A-Z])")
_SIGNS = str.maketrans("’_", "' ", "?¿!*")
_LETTER_FIGURE = pattern(r"(?<=[^\W\d_]{3})(?=\d)")
_NUMBER = pattern(r"[#(]?(\d)(?:st|nd|rd|th|er|ere|e|eme|[.:)º°ªo])*")
_LAST_FIGURE = pattern(r"(\d)\s*\)?$")
_FIRST_FIGURE = pattern(r"(?<=\w)\s?\(?1\)?$")
_UNIT_TAIL = pattern(r"[\s,]*(?:\(.*\)|\bin (?:mm|cm|inches|inch)|\bmm|\bcm|\d)$")
_DATE = pattern(r"\d{1,4}([-/.])\d{1,2}\1\d{1,4}")
_ENDINGS = pattern(r"(?<=[^\W\d_]{2})(?:[/:*·.](?:in|innen|as?|os?|e|es)|\((?:in|innen|as?|os?|e|es|s)\))(?![\w])")
_BETWEEN_PARTS = pattern(r"[()\[\]:|·–—]| - ")
_INSIDE = pattern(r"\(([^()]+)\)")
_WORD = pattern(r"[^\W\d_][^\s/,.()]*")
_HALVES = pattern(r"[/,]| and | y ")
_TWICE = pattern(r"\s[-–—|·]\s")
_COUNTED = pattern(r"\(\s*\d+\s*\)")
_GIVEN = r"(?:first|given|forename|nombre|prenom|vorname|\b(?:vor|ruf)- |\bnome)"
_FAMILY = (r"(?:last|surname|family|apellido|nachname|familienname|\b(?:nach|zu|familien)- |zuname|cognome|sobrenome|"
           r"apelido|\bname\b|\bnom\b)")
_FAMILY_THEN_GIVEN = f"{_FAMILY}.*{_GIVEN}"  # compiled by re where a list first has titles
_GIVEN_THEN_FAMILY = f"{_GIVEN}.*{_FAMILY}"


def header_roles(cells: Sequence[str], *, ruled: bool = False) -> tuple[Role, ...] | None:
    """Return the role of each column if ``cells`` are a header row of two columns or more, else None.

    A header row names at least one part of a name, in words that no child is called by; or both; or at least two of
    its cells, and half of the filled ones, are known words. Where a line is ``ruled`` below it, one word is enough.
    """
    filled = [cell for cell in cells if cell]
    if len(filled) < 2:
        return None
    known = with_buddies(cells, _without_days(cells, [header_role(cell) for cell in cells]))
    known = _with_further_given(cells, _without_second_persons(cells, _without_second_names(cells, known)))
    count = sum(role is not None for role in known)
    parts = {Role.GIVEN, Role.FAMILY} <= set(known)  # First | Last | M | T | W | Th | F
    if not NAME_ROLES.intersection(known) or not (
        ruled or parts or _says_name(cells, known) or _are_states(cells, known)
        or (count >= 2 and count * 2 >= len(filled))
    ):
        return None
    known = _called_for_given(_of_the_child(cells, known))
    if count < _CERTAIN and _is_a_child(cells, known):
        return None
    if Role.FAMILY not in known:
        whole = [not MAYBE_WHOLE.isdisjoint(_tries(_plain(cell))) for cell in cells]
        known = [Role.FULL if at and role is Role.GIVEN else role for at, role in zip(whole, known, strict=True)]
    return tuple(role or Role.OTHER for role in known)


def names_both_parts(cells: Sequence[str]) -> bool:
    """Say whether titles are over given and family names, these as ``Nom`` or ``Name`` beside ``Prénom``, too."""
    return {Role.GIVEN, Role.FAMILY} <= {
        Role.FAMILY if _plain(cell) in NAME_OR_FAMILY else header_role(cell) for cell in cells}


def are_sides(cells: Sequence[str]) -> bool:
    """Say whether titles name groups of children, so that every cell below is one: ``Boys`` and ``Girls``.

    Each is another word for these, names the same kind of group (``Table 1`` and ``Table 2``), or is a colour and at
    most one of them a girl's name.
    """
    titles = [_COUNTED.sub("", _plain(cell)).strip(" :") for cell in cells if cell]
    if len(titles) < 2 or len(set(titles)) < len(titles) or not cells[0]:  # names stand under a first one without
        return False
    words = [title.split() for title in titles]
    shared = any(all(group in each for each in words) for group in GROUPS.intersection(words[0]))
    coloured = COLOURS.issuperset(titles) and sum(map(is_given, titles)) < len(titles) - 1
    return coloured or SIDES.issuperset(titles) or (shared and all(len(each) > 1 for each in words))


def _without_days(cells: Sequence[str], known: list[Role | None]) -> list[Role | None]:
    """Take the roles from days of a week, which may be called as other titles are: ``Di, Mi, Do``."""
    days = [fold(cell).rstrip(".") in ANY_DAYS for cell in cells]
    several = sum(days) > 1
    return [Role.OTHER if several and role and day else role for day, role in zip(days, known, strict=True)]


def _without_second_names(cells: Sequence[str], known: list[Role | None]) -> list[Role | None]:
    """Take the roles from name columns that repeat a header once both parts were named: they are a parent's."""
    seen: set[Role | None] = set()
    for at, role in enumerate(known):
        if role in NAME_ROLES and cells[at] in cells[:at] and seen >= {Role.GIVEN, Role.FAMILY}:
            known[at] = Role.OTHER
        seen.add(Role.FAMILY if role is Role.FULL and _plain(cells[at]) in NAME_OR_FAMILY else role)
    return known


def _without_second_persons(cells: Sequence[str], known: list[Role | None]) -> list[Role | None]:
    """Take the roles from names of a further person: ``First1, Last1, First2, Last2``; not ``Nombre1, Nombre2``."""
    found = [(at, int(match[1])) for at, cell in enumerate(cells)
             if known[at] in NAME_ROLES and not child_number(cell)[0] and (match := _LAST_FIGURE.search(cell))]
    parts = [{known[at] for at, number in found if number == which} for which in (1, 2)]
    if not all(each >= {Role.GIVEN, Role.FAMILY} for each in parts) or [number for _, number in found] != sorted(
            number for _, number in found):
        return known
    further = {at for at, number in found if number > 1}
    return [Role.OTHER if at in further else role for at, role in enumerate(known)]


def _with_further_given(cells: Sequence[str], known: list[Role | None]) -> list[Role | None]:
    """Take given names that are counted beside a first one for middle names: ``Prénom 1, Prénom 2``; in papers alone.

    Two that are both counted are one name in Spanish: ``Nombre 1, Nombre 2``.
    """
    plain = [title if "nombre" in (title := _plain(cell)) else _FIRST_FIGURE.sub("", title) for cell in cells]
    first = {title for title, role in zip(plain, known, strict=True) if role is Role.GIVEN}
    counted = [_LAST_FIGURE.sub("", title).rstrip(" (") if _LAST_FIGURE.search(title) else "" for title in plain]
    return [Role.MIDDLE if role is Role.GIVEN and title in first else role
            for role, title in zip(known, counted, strict=True)]


def _called_for_given(known: list[Role | None]) -> list[Role | None]:
    """Take a column of what children go by for that of given names, where family names have one and these have none."""
    if Role.FAMILY not in known or {Role.GIVEN, Role.FULL, Role.MIDDLE}.intersection(known):
        return known
    return [Role.GIVEN if role is Role.GOES_BY else role for role in known]


def _is_a_child(cells: Sequence[str], known: Sequence[Role | None]) -> bool:
    """Say whether a row is a child called as a header is: ``Anna`` and ``Kind``, or ``5) Kind`` and a birthday.

    ``Zak`` is a pupil elsewhere, and beside a family name a child.
    """
    pairs = [(strip_numbering(cell), role) for cell, role in zip(cells, known, strict=True) if cell]
    if any(fold(cell) in REACHED and not is_known(cell) for cell, _ in pairs):
        return False  # Niño, Parada, Hora, Teléfono
    others = [cell for cell, role in pairs if role is None]
    if any(role in NAME_ROLES and is_given(cell) for cell, role in pairs) and any(map(is_family, others)):
        return True
    if not any(role in NAME_ROLES and is_family(cell) for cell, role in pairs):
        return False
    named = any(is_given(word := cell.split()[0]) and fold(word) not in MONTHS | DAYS for cell in others)
    return named or sum(map(is_a_plain_date, others)) == 1


def is_a_plain_date(cell: str) -> bool:
    """Say whether a cell is a date in figures and nothing else: ``3/12/2019``."""
    return _DATE.fullmatch(cell) is not None


def _of_the_child(cells: Sequence[str], known: list[Role | None]) -> list[Role | None]:
    """Leave out columns of names that do not say they are the child's, where others of the same kind do."""
    said = [role in NAME_ROLES and not CHILD_WORDS.isdisjoint(re.split(r"[ /]", _plain(cell)))
            for cell, role in zip(cells, known, strict=True)]
    owned = [any("'s" in word or word in _OWNED for word in _plain(cell).split()) or _is_of_the_child(_plain(cell))
             for cell in cells]
    roles = {role for role, own in zip(known, said, strict=True) if own}
    if {Role.GIVEN, Role.FAMILY} <= roles:
        roles.add(Role.FULL)
    elif any(own and role is Role.FULL for own, role in zip(owned, known, strict=True)) and not _may_be_parts(
            cells, known):
        roles |= {Role.GIVEN, Role.FAMILY}
    yours = [any(said) and not own and not YOURS.isdisjoint(_plain(cell).split())
             for cell, own in zip(cells, said, strict=True)]
    if Role.FULL in roles and Role.FAMILY not in known:  # Alumno, Teléfono, Nombre
        known = [Role.FULL if role is Role.GIVEN and not own and not MAYBE_WHOLE.isdisjoint(_tries(_plain(cell))) else
                 role for cell, role, own in zip(cells, known, said, strict=True)]
    return [Role.OTHER if role in NAME_ROLES and not own and (role in roles or who) else role
            for role, own, who in zip(known, said, yours, strict=True)]


def _may_be_parts(cells: Sequence[str], known: Sequence[Role | None]) -> bool:
    """Say whether two titles may be over both parts of a name: ``Prénom`` and ``Nom de l'élève``."""
    if Role.FAMILY in known or known.count(Role.GIVEN) != 1 or known.count(Role.FULL) != 1:
        return False
    return _plain(cells[known.index(Role.FULL)]).split()[0] in NAME_OR_FAMILY


def _is_of_the_child(title: str) -> bool:
    """``Nome del bambino``: a word for a child behind a small word."""
    words = re.split(r"[ /]", title)
    return any(two in CHILD_WORDS and one in OF_THE for one, two in pairwise(words))


@keeps_names(2048)
def header_role(cell: str) -> Role | None:
    """Say what a column holds by its header, None where the words are not known."""
    if len(cell) > _LONGEST_HEADER:
        return None
    words = _plain(child_number(cell)[1])
    if cell.casefold() in _NOT_NINO:
        return Role.FULL
    if words in HEADER_WORDS:  # lingua madre is no mother
        return HEADER_WORDS[words]
    if any(word in LANGUAGE_WORDS or word.endswith("sprache") for word in words.split()):
        return Role.LANGUAGE
    if any(phrase in words for phrase in CALLED_QUESTIONS) or _asks_what_called(words):
        return Role.GOES_BY
    if _is_in_use(words) or _is_said_in_class(words):
        return Role.GOES_BY
    if _tells_of_others(words):
        return Role.OTHER
    if not HAND_WORDS.isdisjoint(words.split()) and not WRITING_WORDS.isdisjoint(words.replace("-", " ").split()):
        return Role.HAND
    for text in _tries(words):
        if text in HEADER_WORDS:
            return HEADER_WORDS[text]
        if text in HANDS and len(text) > 2:
            return Role.HAND
    if said := _in_two_languages(words):
        return said
    halves = {HEADER_WORDS.get(half) for half in map(fold, _HALVES.split(words))}
    if halves >= {Role.GIVEN, Role.FAMILY} or _is_of_both(words):
        return Role.FULL
    if any(phrase in words for phrase in CHILD_CALLED):
        parts = {HEADER_WORDS.get(word.strip("()")) for word in words.split()} & {Role.GIVEN, Role.FAMILY}
        return parts.pop() if len(parts) == 1 else Role.FULL  # mit Nachnamen
    if any(phrase in words for phrase in GOES_BY_WORDS):
        return Role.GOES_BY
    if len(words.split()) > 1 and NOT_NAMES.intersection(words.split()):
        return Role.OTHER
    return next((HEADER_WORDS[half] for half in map(fold, words.split("/")) if half in HEADER_WORDS), None)


def _is_of_both(words: str) -> bool:
    """Say whether each word is one part of a name: ``Surname Forename``, ``Prénom + NOM``."""
    said = words.replace("+", " ").replace("&", " ").split()
    return len(said) > 1 and {Role.FAMILY if word in NAME_OR_FAMILY else HEADER_WORDS.get(word) for word in said} == {
        Role.GIVEN, Role.FAMILY}


def _in_two_languages(words: str) -> Role | None:
    """Return what a title says that says it twice, ``Cognome - Surname``: the part of a name, where one says which."""
    said = {HEADER_WORDS.get(half) for half in _TWICE.split(words)}
    if said <= NAME_ROLES and len(said) > 1:
        said -= {Role.FULL}  # Nome - Name
    return said.pop() if len(said) == 1 and _TWICE.search(words) else None


def _is_in_use(words: str) -> bool:
    """Say whether a title is over the name that a child uses, beside one of papers: ``Nombre de uso``."""
    parts = set(_BETWEEN_PARTS.sub(" ", words).split()) - ABOUT_THE_CHILD - {"first", "given"}
    return not IN_USE.isdisjoint(parts) and not GIVEN_WORDS.isdisjoint(parts) and (
        parts <= IN_USE | GIVEN_WORDS | IN_CLASS)


def _is_said_in_class(words: str) -> bool:
    """Say whether a title is over the name that is used at school: ``Name in der Schule``, ``Called in class``."""
    parts = set(_BETWEEN_PARTS.sub(" ", words).split()) - ABOUT_THE_CHILD - _BEING
    called = parts & (GIVEN_WORDS | BE_CALLED | _CALLED)
    within = not WITHIN.isdisjoint(words.split()) and "(" not in words  # Name (wie in der Schule) is a whole one
    return bool(called) and within and not WHERE_CALLED.isdisjoint(parts) and parts <= called | WHERE_CALLED | WITHIN


def _asks_what_called(words: str) -> bool:
    first, *rest = words.split() or [""]
    return first in ASKING and not BE_CALLED.isdisjoint(_ENDINGS.sub("", word) for word in rest)


def is_about_somebody_else(title: str) -> bool:
    """Say whether a title is over names of somebody else: ``Mother``, ``Picked up by``."""
    words = _plain(title)
    return _tells_of_others(words) or not SOMEBODY_ELSE.isdisjoint(_tries(words))


def _tells_of_others(words: str) -> bool:
    said = {word.removesuffix("'s") for word in re.split(r"[ /]", words)}
    return not OTHER_PEOPLE.isdisjoint(said) or any(map(_names_others, _INSIDE.findall(words)))


def _names_others(inside: str) -> bool:
    """Say whether words in brackets name people and nothing else: ``Name (Mutter)``, not ``Name (an der Schule)``."""
    said = set(_WORD.findall(inside)) - ABOUT_THE_CHILD - AND_WORDS
    return said <= OTHER_PEOPLE and bool(said - IN_CLASS)


@keeps_names(2048)
def child_number(title: str) -> tuple[int, str]:
    """Return which child of a family a title is about, and the title without that; 0 where it has no number.

    ``Child 2 first name``, ``Prénom 2e enfant``, ``Segundo hijo``.
    """
    words = _LETTER_FIGURE.sub(" ", _plain(title)).split()
    child = [at for at, word in enumerate(words) if word.strip(".:()-–") in CHILD_WORDS]
    for at, word in enumerate(words):
        figure = _NUMBER.fullmatch(word)
        beside = at + 1 in child and word in ORDINALS
        if child and (figure or beside):
            rest = " ".join((*words[:at], *words[at + 1 :]))
            return int(figure[1]) if figure else ORDINALS[word], rest
    return 0, title


def asked_hand(title: str) -> Hand | None:
    """Return the hand that a header asks about with yes or no (``Left-handed?``), else None."""
    return next((HANDS[text] for text in _tries(_plain(title)) if text in HANDS and len(text) > 2), None)


@keeps_names(1024)
def family_first(title: str) -> bool:
    """Say whether a header tells that whole names below it open with the family name."""
    return len(title) <= _LONGEST_HEADER and bool(re.search(_FAMILY_THEN_GIVEN, _ordered(title)))


def given_first(title: str) -> bool:
    """Say whether a header tells that whole names below it open with the given name."""
    return len(title) <= _LONGEST_HEADER and bool(re.search(_GIVEN_THEN_FAMILY, _ordered(title)))


def titles_for(columns: str) -> list[str]:
    """Return the titles of columns that were said in words: ``given,family``, ``other,name``. Raises Problem.

    Words for a whole name, or for both of its parts, that come again are about another child: ``name,name``.
    """
    words = [word.strip().lower() for word in columns.split(",")]
    wrong = next((word for word in words if word not in _TITLES), None)
    if wrong is not None or not {"given", "family", "name"}.intersection(words):
        raise Problem("roster.no_columns", typed=columns[:60], known=tuple(_TITLES))
    several = words.count("name") > 1 or min(words.count("given"), words.count("family")) > 1
    return [f"Child {words[: at + 1].count(word)} {_TITLES[word].lower()}" if several and word != "other"
            else _TITLES[word] for at, word in enumerate(words)]


def _ordered(title: str) -> str:
    """Return a title with English parts of one word: in ``first name last name`` no “name” stands for a family name."""
    return re.sub(r"\b(first|last|given|family) names?\b", r"\1", _plain(title))


def _plain(cell: str) -> str:
    return fold(_CAMEL.sub(" ", cell).translate(_SIGNS))


def _tries(words: str) -> Iterator[str]:
    """Yield a header whole, without a unit or bracket at its end, and without words about the child."""
    yield words
    yield " ".join(words.replace(",", " ").split())  # Name, Vorname
    plain = _ENDINGS.sub("", words)  # bambino/a, Schüler:in
    yield plain
    yield _without_child(_BETWEEN_PARTS.sub(" ", plain))  # Child (first), Élève – prénom
    short = fold(_UNIT_TAIL.sub("", plain))
    yield short
    yield _without_child(short)
    yield _without_child(short.replace("/", " ").replace(",", " "))
    yield " ".join(word for word in short.split() if word == "e" or word not in ABOUT_THE_CHILD)


def _without_child(words: str) -> str:
    return " ".join(word for word in words.split() if word not in ABOUT_THE_CHILD)


def _are_states(cells: Sequence[str], known: Sequence[Role | None]) -> bool:
    """Say whether two titles or more are what a register says, and no other is unknown: ``Nome, Presente, Falta``."""
    said = [fold(cell) for cell, role in zip(cells, known, strict=True) if cell and role is None]
    return len(said) > 1 and all(word in ATTENDANCE or word in STATES for word in said)


def _says_name(cells: Sequence[str], known: Sequence[Role | None]) -> bool:
    """Say whether one cell alone makes the row a header; a cell that ends in a colon may be a form's label."""
    said = [cell for cell, role in zip(cells, known, strict=True) if role in NAME_ROLES and not cell.endswith(":")]
    return any(SAYS_NAME.intersection((plain, *re.split(r"[ (/,']", plain))) for plain in map(_plain, said))
