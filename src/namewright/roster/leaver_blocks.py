"""Children under a word for those who have left: ``Leavers:``, ``Abgänge``, ``Bajas (2)``: told, and not made.

The part below such a word ends at an empty line, or at the next line that is a heading or a state. Names behind it on
its own line are asked about. A word that may be of the day alone, or of trips and of times to go home, asks about
each; and where the list tells who is present or absent beside it, the day is meant, and nothing is taken out. Others
must stand outside of the part, for a list of nothing else is what was pasted to be made.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_known
from namewright.roster.leavers import have_a_stem, stems_of, without_date
from namewright.roster.pasted import COLUMN_ENDS, Line, most_words
from namewright.roster.prose import Aside
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.vocabulary import OF_THE, STATES, fold, word_set

_LEFT = word_set("""
    leavers, leaver, left us, have left, has left us, have left us, left class, left school, left our class, left
    our school, who left, students who left, children who left, kids who left, who have left, moved away, moved on,
    no longer here, no longer with us, no longer in class, no longer enrolled, no longer attending, not returning,
    withdrawn, withdrawals, withdrew, transferred, transferred out, transfers out, unenrolled, disenrolled, dropped,
    drops, dropped out, former students, former pupils, former children, past students, past pupils, inactive,
    inactive students, alumni, abgange, abgang, abganger, abgangerinnen, schulabgange, abgegangen, abgemeldete,
    abgemeldete kinder, ausgetreten, austritte, ausgeschieden, weggezogen, verzogen, weggezogene kinder, ehemalige,
    ehemalige kinder, ehemalige schuler, ehemalige schulerinnen und schuler, nicht mehr da, nicht mehr dabei, nicht
    mehr hier, nicht mehr klasse, haben uns verlassen, uns verlassen, haben klasse verlassen, schulwechsel,
    schulwechsler, ont quitte, ont quitte ecole, ont quitte l'ecole, ont quitte classe, nous ont quittes, eleves
    partis, enfants partis, eleves sortis, radies, radiations, eleves radies, anciens eleves, plus ecole, plus
    classe, plus dans classe, plus a l'ecole, ne sont plus, ont demenage, demenages, ecole quittee, bajas, baja,
    dados baja, dadas baja, alumnos baja, alumnos dados baja, alumnos que se fueron, se han ido, ya no estan, ya no
    esta, ya no vienen, trasladados, trasladadas, traslados, se mudaron, se han mudado, exalumnos, ex alumnos,
    antiguos alumnos, retirados, retiradas, egresados, cambiaron escuela, cambio escuela, usciti dalla classe,
    trasferiti, trasferite, trasferimenti, ritirati, ritirate, ritiri, non piu con noi, non piu classe, non piu in
    classe, non ci sono piu, non frequentano piu, ex alunni, hanno lasciato scuola, hanno cambiato scuola, si sono
    trasferiti, alunni trasferiti, alunni ritirati, transferidos, transferidas, transferencias, alunos transferidos,
    desistentes, desistencias, desistiram, abandonos, evadidos, ja nao estao, ja nao esta, nao estao mais, mudaram
    escola, mudaram de escola, mudaram-se, mudaram, ex-alunos, ex alunos, antigos alunos, sairam turma, sairam
    escola, deixaram escola""")
_OF_A_DAY = word_set("""
    left, gone, exits, exited, departures, sorties, sortis, departs, partis, parties, abgemeldet,
    salidas, se fueron, salieron, uscite, usciti, partenze, saidas, sairam, foram embora""")
"""Words that may be of the day alone, of trips or of the way home: asked about. One alone, ``Départ``, titles times."""
_ANY = _LEFT | _OF_A_DAY
_STEMS = stems_of(_ANY)
_SMALL = OF_THE | word_set("in, im, our, this, unserer, aus, ab, dans, notre, della, nostra, nossa, l'ecole, l’ecole")
_WITHOUT_SMALL = {" ".join(word for word in words.split() if word not in _SMALL): words for words in _ANY}
_FRAME = pattern(r"\s*[(\[][^()\[\]]*[)\]]|[\d*#=~_•|/+>]+|\s[–—-]+|[–—-]+\s|^[–—-]+|[–—-]+$")
_SIGN = pattern(r"\s?:\s*|\s[–—-]\s+")
_COMMA = pattern(r"\s*[,;]\s*")
_LONGEST, _LONGEST_LABEL, _MOST_WORDS = 300, 60, 8
_MOST = 0.5  # of the lines


class _Part(NamedTuple):
    """The line (0-based) with a word for leavers, the word, the lines below it, and if these are asked about."""

    head: int
    words: str
    below: Sequence[int]
    asked: bool


def without_leaver_blocks(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without the children under words for those who have left, and these."""
    if not have_a_stem(lines, _STEMS):
        return lines, []
    parts = [part for at, line in enumerate(lines) if (part := _part(lines, at, line.text))]
    if parts and any(_is_state(line.text) for line in lines):
        parts = [part for part in parts if _words(part.words) not in _OF_A_DAY]
    gone = {at: part for part in parts for at in (part.below or (part.head,))}
    named = sum(any(map(is_letter, line.text)) and not heading_reason(line.text) for line in lines)
    if not gone or len(gone) > _MOST * named:
        return lines, []
    heads = {part.head for part in parts}
    asides = [Aside(lines[at], (message("roster.among_leavers", words=part.words[:60]),), asked=part.asked)
              for at, part in sorted(gone.items())]
    return [line.heading(line.text.strip(COLUMN_ENDS)) if at in heads else line
            for at, line in enumerate(lines) if at not in gone], asides


def _part(lines: Sequence[Line], at: int, text: str) -> _Part | None:
    """Return who stands under or behind a word for leavers, None where a line has no such word, or nobody stands so."""
    text = text.strip(COLUMN_ENDS)
    if len(text) > _LONGEST or "\t" in text:
        return None
    label, *behind = _SIGN.split(strip_numbering(text).strip(" *#=~_–—-"), maxsplit=1)
    words = _words(label)
    if len(label) > _LONGEST_LABEL or words not in _ANY:
        return None
    rest = behind[0].strip(" *.") if behind else ""
    if rest:
        names = [name for name in _COMMA.split(rest) if name]
        told = ":" in text and all(may_be_a_name(name) and is_titled_name(name) for name in names)
        return _Part(at, label.strip(), (), asked=True) if told else None
    below = _below(lines, at)
    bare = ":" not in text and is_known(words)  # a child called so
    return _Part(at, label.strip(" :"), below, asked=words in _OF_A_DAY) if below and not bare else None


def _below(lines: Sequence[Line], head: int) -> list[int]:
    """Return the lines of names below a word up to an empty line or a heading, none where one is no name."""
    found: list[int] = []
    for at in range(head + 1, len(lines)):
        text = lines[at].text
        named, bare = any(map(is_letter, text)), text.strip(COLUMN_ENDS)
        headed = named and (heading_reason(bare) or _is_state(bare) or _words(bare) in _ANY)
        if headed or (found and not text.strip(COLUMN_ENDS)):
            break
        if named:
            if most_words(text) > _MOST_WORDS or NAME_LABEL.match(text):
                return []
            found.append(at)
    return found


def _words(label: str) -> str:
    """Return the folded words of a label without its frame, its day and small words."""
    bare = _FRAME.sub(" ", strip_numbering(label)) if len(label) <= _LONGEST_LABEL else ""
    words = " ".join(fold(bare).strip(": ").split())
    if words in _ANY:
        return words
    plain = " ".join(word for word in words.split() if word not in _SMALL)
    return _WITHOUT_SMALL.get(plain) or without_date(words)


def _is_state(text: str) -> bool:
    """Say whether a line is a state over names or opens with one and a colon: ``Present``, ``Absent: Mia``."""
    label = _SIGN.split(text, maxsplit=1)[0] if len(text) <= _LONGEST else ""
    return fold(_FRAME.sub(" ", label)) in STATES and _words(label) not in _ANY
