"""Judges the lines of one list without columns: how it writes a comma, and which lines are titles or several children.

What a single line cannot tell, the others do: given names alone, remarks behind commas, pairs on most lines.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cached_property

from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, says_what_called, strip_numbering
from namewright.roster.capitals import is_small_word, is_titled
from namewright.roster.care_words import CARE
from namewright.roster.columns import stray_cells
from namewright.roster.commas import comma_tells, family_first_by_comma
from namewright.roster.dashed import has_family_before_dash
from namewright.roster.dictated import told_aloud
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.header_words import HEADER_WORDS, SOLO_HEADERS
from namewright.roster.headers import family_first, given_first, header_role
from namewright.roster.heading_words import COLOURS, HEADING_WORDS, JOBS, MAYBE
from namewright.roster.headings import heading_reason, is_placed
from namewright.roster.kin import are_grown_ups_behind
from namewright.roster.known import is_family, is_given, is_given_alone, is_known, lean, opens_with_given
from namewright.roster.name_order import Habits, Order, are_surely_given_first, order_of
from namewright.roster.names_in_text import Children, bare_word
from namewright.roster.remarks import has_a_remark, remarks_by_comma, says_the_same_by_comma, with_remarks
from namewright.roster.sentences import speaks_of_several, told_in_a_sentence
from namewright.roster.several import ARROW, DASH, Several, are_groups, several_in
from namewright.roster.shares import share
from namewright.roster.vocabulary import AND, AND_WORDS, OR, STATES, Role, fold
from namewright.roster.within import behind_a_sign, behind_a_word, behind_an_adult, leads_to_names, named_behind_a_day
from namewright.store import keeps_names

ASIDE = pattern(r"[(\[][^()\[\]]*[)\]]|\s[-–—]\s.*|:\s.*")
"""What stands beside a name in its line: in brackets, or behind a dash or a colon."""
_PAIR = pattern(rf"[^\W\d_][\w’'-]+\s+(?:{AND}|&|\+)\s+[^\W\d_][\w’'-]+")
_SAID = pattern(r",\s+[a-zß-ÿ\d].*", needs=",")  # Vost Mira, née le 3/4
_TWO_WORDS = pattern(r"\s*([^\W\d_][\w’'-]+),\s*([^\W\d_][\w’'-]+)\s*", needs=",")
_OFTEN = 0.6
_ABOVE = 10  # first lines among which a title may stand
_SAYS = CARE | COLOURS | STATES | frozenset(HEADER_WORDS) | HEADING_WORDS | JOBS
_OR = pattern(rf"\s+(?:{OR})\s+(?=[^\W\d_a-z])")
_TOLD_ASIDE = pattern(r"[,:;(\[]|\s[-–—]\s")
_MOST_EITHER = 3  # names, and words of each
_FEW = 2  # lines tell little of how a list is written
_MAX_ASKED = 2_000
"""Characters of a line that are looked through for several children: a longer one is no list of names but a text."""


class Judge:
    """Judges each line by all ``texts`` of its list; ``plain`` are names that it writes without marks as its own.

    ``in_rows`` says that each stands in a row with more about it, as one child does.
    """

    def __init__(self, texts: Sequence[str], plain: frozenset[str] = frozenset(), *, in_rows: bool = False) -> None:
        self._seen = frozenset(texts)
        self._lines = tuple(self._seen)
        self._titles = frozenset(text for text in self._seen if is_title(text)) - _with_places(texts)
        self._pairs = {text: parts for text in self._seen if (parts := _TWO_WORDS.fullmatch(strip_numbering(text)))}
        self._titles -= _with_words_as_families(texts, self._pairs) | _called_as_titles(self._titles)
        filled = [text for text in texts if text.strip() and text not in self._titles]
        self._alone = len(filled) < 2
        if in_rows:  # one child may have several: a row for each grown-up
            filled = list(dict.fromkeys(filled))
        filled = _with_numbers(filled)
        self._family_first = family_first_by_comma(filled)
        single = sum(" " not in strip_numbering(text) for text in filled)
        self._grouped = are_groups(filled)
        self._paired = len(filled) > _FEW and share(map(_is_pair, filled)) >= _OFTEN
        self._remarked = with_remarks(filled)
        self._givens = len(filled) > _FEW and 2 * single >= len(filled)
        by_comma = self._family_first and not single
        same = says_the_same_by_comma(filled)
        names = [text for text in (_SAID.sub("", text) for text in filled) if "," not in text]
        surely = any(map(family_first, texts[:_ABOVE])) and are_surely_given_first(names)
        self.habits = Habits(_order(names, texts, surely), by_comma, same or remarks_by_comma(filled), same, surely,
                             by_comma and not comma_tells(filled), plain)
        self._families = by_comma and not in_rows and _open_with_families(filled)
        self._found: dict[str, Several | None] = {}

    def is_title(self, text: str) -> bool:
        """Say whether a line is about the class and no child."""
        return text in self._titles if text in self._seen else is_title(text)

    def several(self, text: str) -> Several | None:
        """Return the children of a line, None where it is one child or none."""
        found = self._several(text)
        if found is None and text in self._pairs and text not in self._titles and self._are_asked_about:
            return Several((self._pairs[text][1], self._pairs[text][2]), False)
        return found

    @cached_property
    def _are_asked_about(self) -> bool:
        """Say whether most lines of two words about a comma may be two children: then so may the others."""
        return len(self._pairs) > _FEW and share(self._several(text) is not None for text in self._pairs) >= _OFTEN

    def _several(self, text: str) -> Several | None:
        if text not in self._found:
            self._found[text] = self._judged(text)
        return self._found[text]

    def told(self, text: str) -> Several | None:
        """Return the children told in a sentence: for sure where none of them has a line in this list."""
        found = told_in_a_sentence(text) if len(text) <= _MAX_ASKED and not says_what_called(text) else None
        found = found or told_aloud(text)
        return found and found._replace(sure=found.sure and not self._have_lines(found.parts))

    def _have_lines(self, names: Sequence[str]) -> bool:
        """Say whether somebody who is told of has a line of fewer names, with the family's perhaps."""
        found = (self._lines[at] for name in names
                 for at in self._children.places([bare_word(word) for word in name.split()]))
        return any(not all(name in line for name in names) for line in found)

    @cached_property
    def _children(self) -> Children:
        """Return which line holds which words; made once, since each sentence of a long letter asks."""
        return Children(enumerate(self._lines))

    def _judged(self, text: str) -> Several | None:
        if told := self.told(text):
            return told
        if text.isalpha() or len(text) > _MAX_ASKED or self.is_title(text) or says_what_called(text):
            return None
        if are_grown_ups_behind(strip_numbering(text)):
            return None
        if told := speaks_of_several(text):
            return told
        if text in self._remarked or (self.habits.same_by_comma and has_a_remark(text)):
            return None
        cells = stray_cells(text)
        if len(cells) > 1:
            given = all(" " not in cell and lean(cell) > 0 for cell in cells)
            row = self._alone and len(cells) > _FEW and all(cell.isalpha() and len(cell) > 1 for cell in cells)
            return Several(tuple(cells), given and len(cells) > _FEW) if given or row else None
        if (day := named_behind_a_day(bare := strip_numbering(text))) and not NAME_LABEL.match(text):
            sure = day.are_known() and (len(day.parts) > 1 or " " in day.parts[0])  # Bus: Robin may be the bus
            return Several(day.parts, sure, f"{day.before.rstrip(' :')}:")
        if either := _either(bare):
            return Several(either, False)
        if has_family_before_dash(bare):
            return Several(tuple(DASH.split(bare)), False)
        if self._families and (two := _two_given(bare)):
            return Several(two, False)
        if (led := behind_an_adult(bare)) and not NAME_LABEL.match(text):
            return Several(led.parts, False, f"{led.before.rstrip(' :')}:")
        found = several_in(text, family_first=self._family_first, alone=self._alone, givens=self._givens,
                           grouped=self._grouped)
        if found is None and not NAME_LABEL.match(text):
            return _perhaps_behind(bare)
        return found._replace(sure=True) if found and self._paired and _is_pair(text) else found


def _open_with_families(filled: Sequence[str]) -> bool:
    """Say whether most lines open with a known family name and a comma."""
    before = [strip_numbering(text).partition(",")[0].split() for text in filled if "," in text]
    return len(before) > _FEW and share(bool(words) and is_family(words[0]) for words in before) >= _OFTEN


def _two_given(text: str) -> tuple[str, str] | None:
    """Return two given names about a comma, the first known as no family's: two children, or a rare family name."""
    parts = _TWO_WORDS.fullmatch(text)
    return (parts[1], parts[2]) if parts and is_given_alone(parts[1]) and is_given(parts[2]) else None


def _with_words_as_families(texts: Sequence[str], pairs: Mapping[str, re.Match[str]]) -> frozenset[str]:
    """Return the lines of a child whose family name is a word of titles, where most lines are so: ``Dear, Oliver``."""
    if len(pairs) <= _FEW or len(pairs) < _OFTEN * sum(map(bool, map(str.strip, texts))):
        return frozenset()
    named = {text for text, parts in pairs.items() if is_family(parts[1]) and is_given(parts[2])}
    return frozenset(named) if len(named) >= _OFTEN * len(pairs) else frozenset()


def _called_as_titles(titles: frozenset[str]) -> frozenset[str]:
    """Return the only title of one word where it is a given name, too (``Mattina``); beside another it is a title."""
    single = {bare: text for text in titles if (bare := text.strip()).isalpha() and fold(bare) in HEADING_WORDS}
    return frozenset(text for bare, text in single.items() if len(single) == 1 and is_given(bare))


def _either(text: str) -> tuple[str, ...] | None:
    """Return the names of which one is meant: ``Jan or Max``, ``Probably Jan or Max``."""
    parts = _OR.split(text)
    if not 1 < len(parts) <= _MOST_EITHER or any(_TOLD_ASIDE.search(part) for part in parts):
        return None
    words = [part.split() for part in parts]
    words[0] = words[0][fold(words[0][0]) in MAYBE :] or words[0] if words[0] else words[0]
    named = all(each and len(each) <= _MOST_EITHER and is_titled(" ".join(each)) for each in words)
    return tuple(" ".join(each) for each in words) if named and any(is_given(each[0]) for each in words) else None


def _perhaps_behind(text: str) -> Several | None:
    """Return the names that may stand behind words of which nothing tells whether they are a child, too."""
    within = behind_a_word(text) or behind_a_sign(text)
    if within is None:
        return None
    if behind_a_word(text) is None and _is_one_before_another(within.before, within.parts):
        return Several(within.parts, False)
    known, several = within.are_known(), len(within.parts) > 1
    if leads_to_names(within.before):
        return Several(within.parts, False) if known or several else None
    before = within.before
    label = fold(before) in STATES or fold(before) in HEADER_WORDS or not opens_as_a_name(before)
    if label or opens_with_given(before) or (" " in before and is_titled(before)):
        return None
    signed = behind_a_word(text) is None
    shown = several and (ARROW.search(text) or all(" " in part for part in within.parts))
    return Several(within.parts, False) if shown or (known and (several or signed)) else None


def _is_one_before_another(before: str, parts: Sequence[str]) -> bool:
    """Say whether a word and a sign stand before another, both written as names and on no list: ``Xobrel: Vemka``."""
    return len(parts) == 1 and all(
        one.isalpha() and one.istitle() and not is_known(one) and not is_word_about(one) and fold(one) not in _SAYS
        for one in (before, parts[0]))


def _with_numbers(filled: list[str]) -> list[str]:
    """Return the lines with a number where all with a comma between words have one: who signs a letter has none."""
    by_comma = [strip_numbering(text) != text.strip() for text in filled if text.partition(",")[2].strip()]
    if len(by_comma) < _FEW or not all(by_comma):
        return filled
    return [text for text in filled if strip_numbering(text) != text.strip()]


def _with_places(texts: Sequence[str]) -> frozenset[str]:
    """Return the lines that are children with a place behind them (``Mira – Blaue Gruppe``) and no titles.

    They open with a given name and are not the first line, or stand next to each other: a title has names below it.
    """
    lines = [text for text in texts if text.strip()]
    placed = [is_placed(text) for text in lines]
    beside = [before or after for before, after in zip([False, *placed], [*placed[1:], False], strict=False)]
    return frozenset(text for at, text in enumerate(lines) if placed[at] and (
        beside[at] or (at and opens_with_given(strip_numbering(text).replace(",", " ")))))


def _is_pair(text: str) -> bool:
    """Say whether two names of one word are told by a word between them: ``Mia and Leo``, ``Xobrel y Tarnul``."""
    return _PAIR.fullmatch(strip_numbering(text)) is not None


def _order(names: Sequence[str], texts: Sequence[str], surely_given: bool) -> Order:
    """Return which part of a name stands first: as a title says, or by the names, which have no comma."""
    titles = [bare for text in texts if fold(bare := text.strip("()[] ")) in SOLO_HEADERS]
    titles += [text for text in texts[:_ABOVE] if not AND_WORDS.isdisjoint(text.casefold().split())
               and family_first(text) and header_role(text.strip("()[] :")) is Role.FULL]
    if any(map(family_first, titles)) and not surely_given:
        return Order.FAMILY
    if any(map(given_first, titles)):
        return Order.GIVEN
    return order_of([name for name in map(_without_aside, names) if name])


def _without_aside(text: str) -> str:
    """Return a name without what stands beside it, words in small letters and figures behind it among that."""
    words = ASIDE.sub(" ", strip_numbering(text)).split()
    small = [not word[0].isalpha() or is_small_word(word) for word in words]
    end = small.index(True) if True in small[1:] and not small[0] else len(words)
    return " ".join(words[:end])


@keeps_names(2048)
def is_title(text: str) -> bool:
    """Say whether a line is about the class and no child."""
    return not any(map(is_letter, text)) or fold(text.strip("()[]")) in SOLO_HEADERS or heading_reason(text) is not None
