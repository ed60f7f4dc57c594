"""What stands around a name in a line or a cell: numbering, brackets, e-mails, dates, stray signs.

Everything taken away is named in a note, except the numbering of a list. Out of scope: which word of the
name itself is given or family (see ``free_text``).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

import unicodedata2

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.care_words import CARE, CARE_ENDINGS, CARE_MARKS, CARE_OR_FAMILY
from namewright.roster.date_lines import is_a_day_in_figures
from namewright.roster.heading_words import JOB_ENDINGS, JOBS, OPENERS
from namewright.roster.known import is_double, is_given, is_known, opens_with_given
from namewright.roster.numbers import behind_a_date, take_numbers
from namewright.roster.vocabulary import (
    AND_WORDS,
    ANY_DAYS,
    ATTENDANCE,
    BESIDE_CALLING,
    CALLING,
    DAYS,
    GOES_BY_OPENINGS,
    HANDS,
    OTHER_PEOPLE,
    REMARKS,
    SIZES,
    STATES,
    STREETS,
    SUPPORTS,
    TITLES,
    fold,
    word_set,
)
from namewright.settings import Hand, Support
from namewright.store import keeps_names
from namewright.units import MAX_LINE_MM, MIN_LINE_MM, parse_length_mm

BULLETS = "-*•‣◦·–—▪■●○✓✔✗✘☐☑☒□▢◻►➢➤→§"
"""Signs in front of the lines of a list, as they stand in a set of a regular expression."""
_OF_SCHOOL = "Anos?|Ciclo|Curso|Grado|Grau|Classe|Turma|Sala|Per[ií]odo|Turno|Trimestre|Bimestre|Semestre"
"""Words that go on with a count and are no child: ``1.º Ciclo``."""
_NUMBERING = pattern(
    rf"\s*(?:[{BULLETS}" r"\uf0b7\uf0a7>]\s+|\[[ xX]?\]\s*|\(\d{1,4}\)\s*|[#№]\s?\d{1,4}[.):]?\s*|"
    r"(?:[Nn][.]?[º°]|[Nn]o[.])\s?\d{1,4}[.):]?\s+|"
    rf"\d{{1,4}}\.[ºª]\s+(?!(?:{_OF_SCHOOL})\b)(?=[^\W\d_a-z][^\W\d_])|"
    r"\d{1,4}\s*[.):](?![ºª])\s*|\d{1,4}\s*[-–]\s*(?=[^\W\d_])|\d{1,4}\s+|"
    r"[a-zA-Z]\)\s+|(?:[a-z]|[ivx]{2,5})\.\s+(?=[^\W\d_a-z])|o\s+(?=[^\W\d_a-z]))"
)
_BRACKETED = pattern(r"\(([^()]*)\)|\[([^\[\]]*)\]|\{([^{}]*)\}|（([^（）]*)）", needs="([{（")
_QUOTED = pattern(
    r"[\"“”„«]([^\"“”„«»]*)[\"“”»]|(?<!\S)(?:''|``|‘‘)([^\s'’‘]{2,})(?:''|’’)|(?<!\S)['‘]([^\s'’‘]{2,})['’](?![^\s,;])",
    needs="\"“”„«'`‘")
_SPACED_DASH = pattern(r" *([-‐–—]{1,2}|:|//|#|→|⇒|[-=]>|⚠\ufe0f?) +| (=|\.{2,}|…) +| +([-‐–—]{1,2}) *| +(/) +")
_LETTER_DASH = pattern(r"(?<=[^\W\d_])[–—−](?=[^\W\d_])", needs="–—−")
_LOOSE_MARK = pattern(r"(?<=[^\W\d_])[`´′](?=[^\W\d_])", needs="`´′")
_LABELLED = pattern(r"([^\W\d_]): *(?=\S*\d)", needs=":")
_INITIAL_BY_DOT = pattern(r"(?<=[\w'’][^\W\d_])\.(?=[^\W\d_a-z]\.?$)", needs=".")
_LOOSE_APOSTROPHE = pattern(r"\b([OD])(['’]) (?=[^\W\d_a-z])", needs="'’")
_HYPHENS = frozenset({"-", "‐", "–", "—"})
_PARTED = pattern(r"\s*[,;/+&]\s*|\s+(?:and|y|et|und|e)\s+")
_HEIGHT = pattern(r"""
    (?:lines?|line\ height|lineas?|renglon(?:es)?|lignes?|zeilen?|righ?[ae]|linhas?)?\s*(?:of|de|von|di)?\s*
    (\d+(?:[.,]\d+)?)\s?(mm|cm)\s*(?:high|lines?|lineas?|lignes?|zeilen?|righe|linhas?)?""", re.VERBOSE)
_CRY = pattern(r"\s*([¡*]*)([^\W\d_]{2,15})([!*]+)[\s:]+(?=[^\W\d_])", needs="!*")
INITIALLED = pattern(r"[^\W\d_][\w’'-]+ [^\W\d_]\.?")
"""A given name and the initial of another."""
_GO_ON = word_set("""
    in, off, out, up, back, away, home, to, on, for, by, about, this, today, early, late, a, en, por, para, con, que,
    hoy, au, aux, ce, cet, cette, par, pour, hier, im, zum, zur, ins, vom, heute, wegen, che, oggi, per, alla, dal,
    dalla, ao, na, no, pela, pelo, hoje""")
"""Small words behind one of calling that go on with what happened: ``called in``, ``appelé au bureau``."""
_GOING_ON = AND_WORDS | frozenset((
    "also", "plus", "auch", "sowie", "ausserdem", "tambien", "ademas", "aussi", "puis", "anche", "inoltre", "tambem"))
_FREE_OF = frozenset(("free", "frei"))
_ABBREVIATION = 4  # letters of one in capitals, at most
_FEWEST_SAID, _SHORTEST_SAID = 2, 4  # words of what is said behind a name, and letters of one of them
_MAX_WORDS = 3  # of a name to go by in brackets
_EDGE_KEEP = frozenset("'’‘`ʼʻ")
_STRAY_SIGN = pattern(r"[^\w\s'’‘`´ʼʻ.,·\-‐‑\u0300-\u036f]|_")


class Reading(NamedTuple):
    """The parts of one name, NFC and in the case they were typed in, with what was left out or guessed."""

    given: str = ""
    family: str = ""
    goes_by: str = ""
    hand: Hand | None = None
    support: Support | None = None
    line_height_mm: float | None = None
    notes: tuple[Message, ...] = ()


@keeps_names(4096)
def strip_numbering(text: str) -> str:
    """Take off a number, a bullet or a tick box in front of a name, if a name follows."""
    match = _NUMBERING.match(text)
    if not match or not any(is_letter(char) for char in text[match.end() :]):
        return text.strip()
    return text[match.end() :].strip()


@keeps_names(2048)
def take_beside(text: str) -> tuple[str, Reading]:
    """Take out what stands beside a name; return the bare text, and what was found, with its notes."""
    if text.replace(" ", "").isalpha() and text.istitle() and not _is_care_behind(text.rpartition(" ")[2]) and not (
            said_by_a_register(text.split(), ATTENDANCE)):
        return text, Reading()
    notes: list[Message] = []
    found = Reading()
    for aside in (_BRACKETED, _QUOTED):
        for match in aside.finditer(text):
            inside = next((group for group in match.groups() if group is not None), "").strip()
            if aside is _BRACKETED and _is_of_somebody(text[: match.start()]):  # Theo - Dad (Tom)
                notes.append(message("roster.remark", words=f"({inside[:60]})"))
                continue
            found = _judge_bracket(inside, aside.sub(" ", text), found, notes, quoted=aside is _QUOTED)
        text = aside.sub(" ", text)
    text, found = _cut_called(text, found)
    text, behind = behind_a_date(text)
    if any(map(is_letter, behind)) and " " not in behind.strip():
        found = _judge_remark(behind, found, notes)
    elif behind:
        text = f"{text} {behind}"
    text, found = _cut_remark(_without_cry(_marks_mended(text), notes), found, notes)
    text, found = _cut_last_words(take_numbers(text, notes), found, notes)
    signs = "".join(sign for sign in dict.fromkeys(_STRAY_SIGN.findall(text)) if not _is_mark(sign))
    if signs:
        notes.append(message("roster.signs", signs=signs[:20]))
        text = text.translate(dict.fromkeys(map(ord, signs), " "))
    return " ".join(word for word in text.split() if word != "."), found._replace(notes=tuple(notes))


def _is_of_somebody(before: str) -> bool:
    """Say whether the word before a bracket is for somebody of the family, whose name stands in it."""
    return any(fold(word.strip(".,:")) in OTHER_PEOPLE for word in before.split()[1:][-1:])


def _without_cry(text: str, notes: list[Message]) -> str:
    """Take a cry off the front of a name: ``NEW! Mira``, ``*new* Mira``, ``NEW Mira``; so for ``and`` and ``baby``."""
    opening, _, name = text.strip().partition(" ")
    if opening.islower() and fold(opening) in _GOING_ON and opens_as_a_name(name):
        return name
    if opening.islower() and fold(opening) in SIZES and opens_as_a_name(name):  # baby Jo
        notes.append(message("roster.remark", words=opening))
        return name
    match = _CRY.match(text)
    if match and not is_given(match[2]) and ("!" in match[3] or fold(match[2]) in STATES):
        notes.append(message("roster.remark", words=match[2]))
        return text[match.end() :]
    first, _, rest = text.partition(" ")
    if first.isupper() and not rest.isupper() and len(first) > 2 and " " in rest and is_state(first):
        notes.append(message("roster.remark", words=first))
        return rest
    return text


def is_state(words: str) -> bool:
    """Say whether words before a name tell that a child is here, comes or goes, and are no name."""
    return fold(words) in STATES and not is_given(words)


def _marks_mended(text: str) -> str:
    """Write what programs make of a hyphen or apostrophe as these (``Mary–Kate``, ``O`Neil``); drop a label’s colon."""
    text = _LOOSE_MARK.sub("’", _LETTER_DASH.sub("-", text))
    text = _INITIAL_BY_DOT.sub(" ", text)
    text = _LOOSE_APOSTROPHE.sub(r"\1\2", text)
    return _LABELLED.sub(r"\1 ", text)


def trim(text: str) -> str:
    """Take punctuation and lone marks off both ends; apostrophes, the ʻokina and a closing dot stay."""
    start, end = 0, len(text)
    while start < end and not (is_letter(text[start]) or text[start] in _EDGE_KEEP):
        start += 1
    while end > start and not (
        is_letter(text[end - 1])
        or text[end - 1] in _EDGE_KEEP
        or text[end - 1] == "."
        or _is_mark(text[end - 1])
    ):
        end -= 1
    return text[start:end]


def _is_mark(char: str) -> bool:
    """Say whether ``char`` attaches to the letter before it."""
    return not char.isascii() and str(unicodedata2.category(char))[0] == "M"


def _cut_remark(text: str, found: Reading, notes: list[Message]) -> tuple[str, Reading]:
    """``Katie Moss – new`` ends in a remark; ``Mary - Kate`` is one name with spaces about its hyphen."""
    match = _SPACED_DASH.search(text)
    before = text[: match.start()].strip() if match else ""
    after = text[match.end() :].strip() if match else ""
    if not match or not any(map(is_letter, before)) or not after:
        return text, found
    dash = next(filter(None, match.groups()))
    if dash == "/" and not _is_remark(before, after):
        return text, found
    label = before.replace(",", " ").split()[-1]
    if dash == ":" and " " in before and is_word_about(label):  # Mom: Jo
        before, after = before[: before.rindex(label)].rstrip(" ,"), f"{label}: {after}"
    spaced = match[0].startswith(" ") and match[0].endswith(" ")
    if dash in _HYPHENS and _is_second_half(before, after, spaced=spaced):
        notes.append(message("roster.joined", name=f"{before}-{after}"))
        return f"{before}-{after}", found
    if not any(map(is_letter, "".join(take_numbers(before, []).split()))):  # May 12: Mia
        return take_numbers(before, notes) + after, found
    if dash in _HYPHENS and not match[0].startswith(" ") and not _is_remark(before, after):
        return text, found
    if not begins_small(after) and not _is_remark(before, after) and heads_a_name(before, after):
        notes.append(message("roster.remark", words=before[:60]))
        return after, found
    return before, _judge_remark(after, found, notes)


def heads_a_name(before: str, after: str) -> bool:
    """Say whether a state, a job or an address stands before a name: ``Absent: Mira Vost``, ``Line leader: Bo``."""
    if is_state(before) or _is_a_job(before):
        return True
    words = [fold(word) for word in before.split()]
    if " " not in after or len(words) < 2 or STREETS.isdisjoint((words[-1], *words[:2])):
        return False
    return any(map(str.isdigit, before)) or not any(map(is_given, words))


def _is_a_job(before: str) -> bool:
    """Say whether words are what a child does for the class, and open as no name does: ``Line leader: Ludvig``."""
    first, *rest = before.split()
    if not rest or not (fold(rest[-1]) in JOBS or fold(rest[-1]).endswith(JOB_ENDINGS)):
        return False
    return begins_small(rest[-1]) or not (is_known(rest[-1]) or is_given(first))


def _is_second_half(before: str, after: str, *, spaced: bool) -> bool:
    """Say whether ``after`` goes on with a name of one word that ends in a hyphen with a space beside it.

    With spaces on both sides it parts two names, but for a known pair.
    """
    if " " in before or not opens_with_given(after) or is_a_day_in_figures(after):
        return False
    if fold(after.split()[0]) in ANY_DAYS or (spaced and not is_double(before, after.split()[0])):
        return False
    return not _is_remark(before, after)


def _is_remark(before: str, after: str) -> bool:
    """Say whether words behind a name are about the child: small letters behind a capital, or words for remarks."""
    folded = [fold(word) for word in after.split()]
    loud = any(map(str.isupper, before)) or not any(map(str.islower, before))
    small = loud and begins_small(after.split()[0]) and folded[0] not in PARTICLES
    return small or any(is_word_about(word) for word in folded) or fold(after) in HANDS


@keeps_names(4096)
def is_word_about(word: str) -> bool:
    """Say whether a word beside a name is about the child or somebody else: a remark, health and care, a title."""
    folded = fold(word).strip(".,;!?()")
    if len(folded) == 1 and "." in word:  # an initial
        return False
    if folded in REMARKS or folded in TITLES or folded in OTHER_PEOPLE or word in CARE_MARKS:
        return True
    return is_of_care(folded)


def is_of_care(word: str) -> bool:
    """Say whether a word is of health and care and no given name."""
    folded = fold(word)
    return (folded in CARE or folded.endswith(CARE_ENDINGS)) and not is_given(folded)


def _judge_remark(remark: str, found: Reading, notes: list[Message]) -> Reading:
    """Take settings or the name a child goes by from a remark; say that anything else is left out."""
    parts = list(filter(None, _PARTED.split(remark)))
    rest = []
    for part in parts:
        before, found = found, _taken_from(part, found)
        if found is before:
            rest.append(part)
    if rest or not parts:  # of which nothing was taken it is told as it was typed
        notes.append(message("roster.remark", words=(remark if len(rest) == len(parts) else ", ".join(rest))[:60]))
    return found


def _taken_from(part: str, found: Reading) -> Reading:
    """Return what was found with a hand, a level of support, a line height or a name to go by; else as it was."""
    folded = fold(part)
    if len(folded) > 1 and folded in HANDS:
        return found._replace(hand=HANDS[folded])
    if " " in folded and folded in SUPPORTS:  # one word alone (light, total) may mean anything
        return found._replace(support=SUPPORTS[folded])
    if (height := _HEIGHT.fullmatch(folded)) and MIN_LINE_MM <= (
            length := parse_length_mm(f"{height[1]} {height[2]}")) <= MAX_LINE_MM:
        return found._replace(line_height_mm=length)
    if (called := _after_goes_by(part)) and not found.goes_by:
        return found._replace(goes_by=called)
    return found


def says_what_called(text: str) -> bool:
    """Say whether a line tells, behind a name and out of brackets, what the child goes by."""
    return bool(_called_behind(_BRACKETED.sub(" ", text))[1])


def _cut_called(text: str, found: Reading) -> tuple[str, Reading]:
    """Cut what a child goes by off the end of a name: ``Katie Moss wird Will gerufen``."""
    before, called = _called_behind(text)
    if not called:
        return text, found
    return before, found._replace(goes_by=found.goes_by or called)


@keeps_names(1024)
def _called_behind(text: str) -> tuple[str, str]:
    """Return a name without what is told of its calling, and the name to go by, empty where nothing is told."""
    if CALLING.isdisjoint(fold(text).replace(",", " ").split()):
        return text, ""
    words = text.split()
    for at in range(1, len(words)):
        parted = not any(map(is_letter, words[at])) or words[at - 1].endswith((",", ":", ";"))
        if called := _called_in(" ".join(words[at:]), parted=parted):
            return " ".join(words[:at]).rstrip(" ,;:-–—"), called
    return text, ""


def _called_in(text: str, *, parted: bool) -> str:
    """Return the name among words of calling (``on l’appelle Will``); ``parted`` that it may open them."""
    words = [word for word in text.replace(":", " ").strip("-–—,; ").split() if any(map(is_letter, word))]
    capital = [at for at, word in enumerate(words) if not word[0].islower()]
    said = [fold(word).strip(",;.!") for word in words if word[0].islower()]
    if not capital or capital[-1] - capital[0] >= min(_MAX_WORDS, len(capital)) or (not capital[0] and not parted):
        return ""
    if CALLING.isdisjoint(said) or not (CALLING | BESIDE_CALLING).issuperset(said):
        return ""
    name = words[capital[0] : capital[-1] + 1]
    return trim(" ".join(name)) if _may_be_called(name) and not any("," in word for word in name[:-1]) else ""


def _may_be_called(words: Sequence[str]) -> bool:
    """Say whether words are no day and nothing about a child or somebody else, nor go on as ``called in sick`` does."""
    if words[0].islower() and fold(words[0]) in _GO_ON:
        return False
    return not any(map(is_word_about, words)) and DAYS.isdisjoint(map(fold, words))


def _after_goes_by(text: str) -> str:
    """Return the name in ``goes by Will``, empty where the words do not say so."""
    words = text.replace(":", ": ").split()
    for size in (3, 2, 1):
        if (fold(" ".join(words[:size])) in GOES_BY_OPENINGS and 0 < len(words) - size < 4
                and _may_be_called(words[size:])):
            return trim(" ".join(words[size:]))
    return _called_in(text, parted=True)


def _cut_last_words(text: str, found: Reading, notes: list[Message]) -> tuple[str, Reading]:
    """Cut ``aka Will`` and small words about the child off the end of a name that is not all small itself."""
    words = text.split()
    for at in range(1, len(words)):
        if called := _after_goes_by(" ".join(words[at:])):
            return " ".join(words[:at]).rstrip(" ,"), found._replace(goes_by=found.goes_by or called)
    at = next((here for here in range(1, len(words) - 1) if _tells_a_hand(words[here:])), len(words))
    while at > 1 and (cut := _cut_behind(words[:at])):
        at -= cut
    if at == len(words) or (words[0].islower() and begins_small(words[0])):
        return text, found
    at = _cell_start(words, at)
    return " ".join(words[:at]).rstrip(" ,"), _judge_remark(" ".join(words[at:]), found, notes)


def _cut_behind(words: Sequence[str]) -> int:
    """Return how many words at the end of a name are about the child, as far as the last of them tells."""
    last = words[-1]
    if (last.islower() and len(last) > 2 and _is_cut(last)) or _is_care_behind(last) or _is_care_mark(last, words[:-1]):
        return 1
    size = said_by_a_register(words, ATTENDANCE)
    return size if len(words) - size > 1 else 0  # two words may be a name: Mira New


def said_by_a_register(words: Sequence[str], said: frozenset[str]) -> int:
    """Return how many words behind a name are those of a register: ``Mira Vost Present``, ``Leo Berg En retard``."""
    return next((size for size in (2, 1) if size < len(words) and fold(" ".join(words[-size:])).strip(",;()!") in said),
                0)


def without_said(text: str, found: Reading) -> tuple[str, Reading]:
    """Cut what is said in small letters off a name with a capital: ``Ava starts Monday in the afternoon group``."""
    words = text.split()
    at = next((at for at, word in enumerate(words) if at and begins_small(word) and word.lower() not in PARTICLES), 0)
    said = words[at:]
    small = [word.strip(",.;:!?") for word in said if begins_small(word)]
    if not at or begins_small(words[0]) or len(said) < _FEWEST_SAID:
        return text, found
    if is_known(small[0]) and len(said) <= _FEWEST_SAID + 1:
        return text, found
    if OPENERS.isdisjoint(small) or not any(len(word) >= _SHORTEST_SAID and not is_known(word) for word in small):
        return text, found
    told = message("roster.remark", words=" ".join(said)[:60])
    return " ".join(words[:at]).rstrip(" ,"), found._replace(notes=(*found.notes, told))


def _tells_a_hand(words: list[str]) -> bool:
    """``left handed`` behind a name: in small letters, as no name is."""
    return words[0].islower() and fold(" ".join(words)) in HANDS


def _cell_start(words: list[str], at: int) -> int:
    """Return where the words behind a comma begin that end in a remark, if a whole name stands before it."""
    start = next((here for here in range(at, 1, -1) if words[here - 1].endswith(",")), at)
    return start if start > 1 else at


@keeps_names(1024)
def is_all_about(line: str) -> bool:
    """Say whether a line has words of health and care and small ones alone, or opens with one and a sign."""
    words = strip_numbering(line).split()
    if len(words) > 2 and _is_care_behind(words[0]) and not any(map(is_letter, words[1])) and not any(
            map(is_given, words)):  # Allergien / Essen
        return True
    small = [word.islower() or (line.isupper() and fold(word) in OPENERS) for word in words]  # ALLERGIC TO NUTS
    sure = [fold(word) in CARE or fold(word) in OTHER_PEOPLE for word in words]
    named = any(is_given(word) for word, is_small in zip(words, small, strict=True) if word.islower() or not is_small)
    return any(sure) and not named and all(
        is_sure or is_small or is_word_about(word) for word, is_sure, is_small in zip(words, sure, small, strict=True))


@keeps_names(2048)
def _is_care_behind(word: str) -> bool:
    """Say whether a word behind a name is of health and care, however it is written, and on no list of names."""
    whole = fold(word).strip(".,;!?()")
    first, *rest = whole.split("-")
    if first in CARE and rest and (rest[-1] in _FREE_OF or (word.islower() and not is_known(first))):  # NUT-FREE
        return True
    return any(map(is_of_care, (whole, first, *rest))) and not any(map(is_known, (word, first, *rest)))


def _is_care_mark(word: str, name: Sequence[str]) -> bool:
    """Say whether a word is a mark of care behind a name that is not all capitals: ``Yanis Roux PAI``."""
    bare = word.strip("(),;")
    return bare in CARE_MARKS or (
        bare in CARE_OR_FAMILY and len(name) > 1 and any(map(str.islower, "".join(name))))


def _is_cut(word: str) -> bool:
    return is_word_about(word) or fold(word) in HANDS


def _judge_bracket(inside: str, outside: str, found: Reading, notes: list[Message], *, quoted: bool) -> Reading:
    """Decide whether words in brackets or quotation marks are a name to go by, a hand, or a remark to leave out."""
    if not inside:
        return found
    words = inside.split()
    alone = not any(map(is_letter, outside))
    if not found.goes_by and _can_be_called(words, outside) and (
        quoted or alone or (all(map(is_given, words)) and not is_abbreviation(inside, outside))
        or _is_short_for(inside, outside)
    ):
        return found._replace(goes_by=trim(inside))
    return _judge_remark(inside, found, notes)


def is_abbreviation(words: str, name: str) -> bool:
    """Say whether a few capitals stand beside a name that is not all capitals: ``Mira Vost (AL)``."""
    return len(words) <= _ABBREVIATION and words.isupper() and any(map(str.islower, name))


def _can_be_called(words: list[str], outside: str) -> bool:
    """Say whether nothing speaks against a name: no figure or sign, no word about the child, no small word."""
    inside = " ".join(words)
    return (
        len(words) <= _MAX_WORDS
        and len(inside) > 1
        and not any(char.isdigit() or char in "/,:;@" for char in inside)
        and any(map(is_letter, inside))
        and not any(map(is_word_about, words))
        and not _is_small_beside(words, outside)
        and fold(inside) not in HANDS
        and not _after_goes_by(inside)
        and not any(map(_is_said_aloud, words))
    )


def _is_said_aloud(word: str) -> bool:
    """Say whether a word is how a name is said, with the part in capitals that is stressed: ``KAY-lah``, ``zo-É-lie``.

    It is so in every alphabet that has capitals.
    """
    parts = word.split("-")
    return any(one.isupper() and len(one) > 1 and other.islower() for pair in pairwise(parts)
               for one, other in (pair, pair[::-1]))


def _is_short_for(inside: str, outside: str) -> bool:
    """Say whether a name is cut from one that stands outside: three letters of its front, or all of a shorter one."""
    short = fold(inside)
    names = fold(outside).replace(",", " ").split()
    if is_abbreviation(inside, outside):
        return names[0].startswith(short)
    return any(name.startswith(short[:3]) or name.endswith(short) for name in names)


def _is_small_beside(words: list[str], outside: str) -> bool:
    """Say whether the words are small where the name around them is not: ``Katie Moss (glasses)``."""
    small = not any(map(str.islower, outside)) or any(map(str.isupper, outside))  # or it knows no capitals
    return any(map(begins_small, words)) and (len(words) > 1 or small)
