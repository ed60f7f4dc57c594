"""Lines of a list without columns that are unlike all the others: a letter about the list, a remark under a name.

What a line is follows from the others: words in small letters among names with capitals, one unknown word among whole
names, a line that stands again and again. Such a line is left out and said; with ``Name:`` before it, it is a child.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import groupby, pairwise, takewhile

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import heads_a_name, is_word_about, strip_numbering, take_beside
from namewright.roster.block_heads import block_heads
from namewright.roster.capitals import is_loud, is_titled
from namewright.roster.care_words import CARE
from namewright.roster.class_words import opens_as_class
from namewright.roster.columns import stray_cells
from namewright.roster.date_lines import is_a_day_in_figures
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.group_lines import group_lines
from namewright.roster.heading_words import ARTICLES, CLOSINGS, MAIL_LABELS, OPENERS, PLACES, TODAY
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.labelled import labelled
from namewright.roster.labelled_groups import head_of
from namewright.roster.month_heads import month_heads
from namewright.roster.shares import are_most, share
from namewright.roster.shouted import is_shouted
from namewright.roster.sure_groups import is_a_job, is_over_groups, may_be_jobs
from namewright.roster.vocabulary import AND_WORDS, ANY_DAYS, DAYS, GOES_BY_OPENINGS, MONTHS, SEASONS, TITLES, fold
from namewright.store import keeps_names

_ENOUGH = 4  # lines that must agree before another is unlike them
_HALF, _MOSTLY, _NEARLY_ALL = 0.5, 0.6, 0.8
_LONGEST = 600  # characters: a longer line is a text; two dozen names told in a sentence are none
_OFTEN, _OFTEN_SHARE = 3, 0.25
_PHRASE = 2  # words in small letters behind a given name: “Will needs help”
_SIGNED, _LONG_SIGNATURE = 3, 7  # lines of a signature at most, and of one that may be children after all
_WHOLE = 3  # whole names that show how the children are written
_SHORT_DAY = 3  # letters
_BELOW = 2  # names under a title
_STEP = 2  # spaces that set a line in
_LATIN_END = "\u0370"  # the first letter behind those of Latin
_LEGEND = pattern(r"\s*(\*+|†|‡|°|\(\*+\)|\[[a-z\d]\])\s*[=:–-]?\s*\S", needs="*†‡°([")
_SIGNS = frozenset(",:;/")
_REMARK_SIGN = pattern(r":\s+(?=\S)|\s[-–—]\s+(?=\S)")
_IN_BRACKETS = pattern(r"\([^()]*\)", needs="(")
_FIGURE = pattern(r"[\d°º#№]")
_FIGURE_INSIDE = pattern(r"[^\W\d_]+\d+[^\W\d_]\w*,?")  # Abi01a: a photo’s reading of a name
_MAIL = pattern(r"[>\s]*([^\W\d_]{1,10})\s?:\s")
_TO_ONE = pattern(r"[>\s]*(?:To|From|An|Von|Para|De|À|A|Da|Aan|Van|Cc|Ccn|Cco|Kopie)\s?:\s+[^:,;<>]{2,60}"
                  r"(?:<[^:,;<>]*>\s*)?")
_RULED = pattern(r"\s*([-=_*~–—] ?){3,}\s*")
_DATED = DAYS | MONTHS | SEASONS | TODAY
_LONGEST_NAME = 4  # words
_WITH = frozenset(("in", "im", "en", "em", "con", "com", "per", "por", "para", "mit", "zu", "au"))
"""Before a word in small letters these are of no name, though In, Con and Per are: ``In macchina``."""
_ASKED = pattern(r"\?\s+")
_FIRST_CLAUSE = pattern(r"[^,.!?:–—]*")


class Unlike(NamedTuple):
    """Why a line is no child; ``doubtful`` where it might be one, ``told`` where that is sure before it is read."""

    notes: tuple[Message, ...]
    doubtful: bool = False
    told: bool = False


def unlike_lines(texts: Sequence[str]) -> Mapping[int, Unlike]:
    """Return the lines (0-based) that are no children because of what the others are; ``texts`` are as typed."""
    filled = {at: text for at, text in enumerate(texts)
              if len(text) <= _LONGEST and any(map(is_letter, text)) and not NAME_LABEL.match(text)}
    blocks = block_heads(texts, filled)
    groups = group_lines(texts, filled)
    ends, perhaps = _signature(filled)
    found = _told("closing", ends) | _told("sign", legend(filled)) | _told("label", _addressed(filled))
    months, named = month_heads(filled)
    found |= _told("over", (*_heads(filled), *months))
    found |= _told("over", (*blocks.heads, *groups.ages)) | _told("title", blocks.titles)
    found |= _told("stop", groups.stops) | _told("count", groups.counts)
    found |= {at: _said_again(count) for at, count in _repeated(filled).items()}
    rest = {at: text for at, text in filled.items() if at not in found and not text.rstrip().endswith(":")}
    places = (*blocks.doubtful, *groups.doubtful, *perhaps, *named)
    doubtful = (*_only_dated(rest), *_underlined(texts, rest), *_over_a_block(texts, rest), *_set_apart(texts, rest),
                *_odd(rest), *_open_as_others(texts, rest),
                *_labelled(rest), *_before_an_adult(rest), *_jobs(rest), *_of_two_words(rest),
                *((at, rest[at]) for at in places if at in rest))
    return found | {at: perhaps_unlike(text) for at, text in doubtful} | _only_day(texts, rest)


def month_rows(texts: Sequence[str]) -> dict[int, Unlike]:
    """Return the months alone (0-based) over days and names in columns, where that is sure."""
    return _told("over", month_heads({at: text for at, text in enumerate(texts) if text.strip()})[0])


def perhaps_unlike(text: str) -> Unlike:
    """Return what is said of a line that may be a child after all."""
    return Unlike((message("roster.unlike", words=text[:60]),), doubtful=True)


def _told(why: str, lines: Iterable[int]) -> dict[int, Unlike]:
    """Return what is said of lines that are surely no children."""
    return {at: Unlike((message(f"roster.heading_{why}"),)) for at in lines}


def _said_again(count: int) -> Unlike:
    return Unlike((message("roster.repeated_line", count=count),))


def _repeated(filled: Mapping[int, str]) -> dict[int, int]:
    """Return the lines whose words stand on many others, with how many; ``Red table`` twice is no child, either."""
    folded = {at: fold(strip_numbering(text)) for at, text in filled.items()}
    counts = Counter(folded.values())
    often = max(_OFTEN, _OFTEN_SHARE * len(filled))
    return {at: counts[text] for at, text in folded.items() if counts[text] < len(filled)
            and (counts[text] >= often or (counts[text] > 1 and not PLACES.isdisjoint(text.split())))}


def _signature(filled: Mapping[int, str]) -> tuple[list[int], list[int]]:
    """Return the lines that end a letter and surely sign it, and those below such a one that may be children.

    ``Love, Kirk`` ends none where most lines are written so. Of a long signature the first line is sure.
    """
    places, pairs = list(filled), {at: _is_pair(text) for at, text in filled.items()}
    mostly_pairs = are_most((pair for at, pair in pairs.items() if pair or not heading_reason(filled[at])),
                            _MOSTLY, _ENOUGH)  # without the headings of groups
    sure: list[int] = []
    perhaps: list[int] = []
    for order, at in enumerate(places[1:], 1):
        closing = is_closing(filled[at])
        if (mostly_pairs and pairs[at]) or not (closing or (at - 1 not in filled and _is_farewell(filled[at]))):
            continue
        below = _to_a_quote(filled, at, places[order + 1 : order + 2 + _LONG_SIGNATURE])
        if not closing and not 0 < len(below) <= _SIGNED:
            continue
        if len(below) > _SIGNED and 2 * len(below) <= order and len(below) <= _LONG_SIGNATURE:
            return [*sure, at, below[0]], below[1:]
        signed = below if len(below) <= _SIGNED else []
        whole = bool(signed) and are_most(
            (" " in strip_numbering(filled[one]) for one in places[:order]), _MOSTLY, _WHOLE)
        perhaps += signed  # of each mail in a thread
        sure += [at, *(one for rank, one in enumerate(signed) if _signs(filled[one], alone=whole and not rank))]
    return sure, [at for at in perhaps if at not in sure]


def _signs(text: str, *, alone: bool) -> bool:
    """Say whether a line below the end of a letter is surely no child: an adult, a place, one name among whole ones."""
    words = strip_numbering(text).split()
    if heading_reason(text) or any(map(str.isdigit, text)) or is_closing(text):
        return True
    return alone and len(words) == 1 and is_given(words[0])


def _to_a_quote(filled: Mapping[int, str], closing: int, below: Sequence[int]) -> list[int]:
    """Return the lines ``below`` a closing one to where a quoted mail begins, or ends."""
    quoted = is_quoted(filled[closing])
    return [*takewhile(lambda at: is_quoted(filled[at]) == quoted, below)]


def is_quoted(text: str) -> bool:
    """Say whether a line is of a mail that is quoted."""
    return text.lstrip().startswith(">")


def _addressed(filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines that say whom a message goes to, one name each, next to its sender, day or subject."""
    heads = {at for at, text in filled.items() if (label := _MAIL.match(text)) and fold(label[1]) in MAIL_LABELS}
    to = {at: match for at, text in filled.items() if (match := _TO_ONE.fullmatch(text))}
    for _, run in groupby(enumerate(sorted(heads.union(to))), lambda each: each[1] - each[0]):  # that follow each other
        places = [at for _, at in run]
        if not heads.isdisjoint(places):
            yield from (at for at in places if at in to)


def _is_farewell(text: str) -> bool:
    """Say whether a line goes on in small letters to a comma at its end, and opens with no given name."""
    words = text.strip().rstrip(",").split()
    small = [word for word in words[1:] if _is_small(word)]
    return text.rstrip().endswith(",") and "," not in text.strip()[:-1] and bool(small) and not is_given(words[0])


def _is_pair(text: str) -> bool:
    """Say whether words stand on both sides of a comma, those behind it no adult’s title."""
    before, _, behind = text.partition(",")
    return bool(before.strip() and behind.strip()) and fold(behind.split()[0]).strip(".") not in TITLES


@keeps_names(1024)
def is_closing(text: str) -> bool:
    """Say whether a line ends a letter: ``Thanks, Mrs Vale``, ``By Monday? Thank you!``, ``Vielen Dank und Grüße``."""
    text = _IN_BRACKETS.sub("", text) if text.rstrip().endswith(")") else text  # Love (twins)
    clause = _FIRST_CLAUSE.match(_ASKED.split(text.strip())[-1].lstrip("¡>* "))
    opening = clause[0].strip() if clause else ""
    words = fold(opening).split()
    size = next((size for size in range(len(words), 0, -1) if " ".join(words[:size]) in CLOSINGS), 0)
    if not size or (len(words) == 1 and is_given(words[0]) and len(opening) == len(text.strip())):
        return False
    rest = opening.split()[size:]
    if len(rest) > 1 and rest[0] in AND_WORDS and is_closing(" ".join(rest[1:])):
        return True
    soon = all(_is_small(word) or fold(word) in DAYS for word in rest)  # See you Thursday!
    return not rest or soon or rest[0].lower().strip(".") in TITLES


def legend(filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines that say what a sign means which stands behind names."""
    signs = Counter(match[1] for match in map(_LEGEND.match, filled.values()) if match)
    for at, text in filled.items():
        if (match := _LEGEND.match(text)) and any(
                other.rstrip().endswith(match[1].strip("()")) or other.rstrip().endswith(match[1])
                for other in filled.values() if other is not text) and signs[match[1]] <= _SIGNED:
            yield at


def _only_dated(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the first line where it alone ends in a date behind a comma, and opens with no known given name."""
    dated = [at for at, text in filled.items() if is_a_day_in_figures(text.rpartition(",")[2])]
    first = next(iter(filled), None)
    if dated == [first] and first is not None and len(filled) > _BELOW and not opens_with_given(filled[first]):
        yield first, filled[first].strip()


def _only_day(texts: Sequence[str], filled: Mapping[int, str]) -> dict[int, Unlike]:
    """Ask about the only day of the week that stands alone right below a name, where nothing heads others: Friday.

    Above all names one is asked about that is a name, too: ``Lundi``; no ``Dom`` and no ``Sol``.
    """
    figures = sum(any(map(str.isdigit, text)) for text in filled.values())
    days = [at for at, text in filled.items() if fold(text) in DAYS or (
        figures == 1 and is_a_day_in_figures(text) and fold(text.split()[0]) in DAYS)]  # Domenica 3/11
    above = min(filled, default=0)
    first = above in days and not any(map(str.strip, texts[:above])) and len(filled[above].strip()) > _SHORT_DAY and (
        heading_reason(filled[above]) is None)
    if not first and not _are_bulleted_below(filled, days) and (
            len(days) != 1 or not days[0] or not texts[days[0] - 1].strip() or any(
                heading_reason(text) for at, text in filled.items() if at not in days)):
        return {}
    asked = message("roster.perhaps_heading", words=filled[days[0]].strip()[:60])
    return {days[0]: Unlike((asked,), doubtful=True, told=True)}


def _are_bulleted_below(filled: Mapping[int, str], days: Sequence[int]) -> bool:
    """Say whether one day has no bullet, where all lines below it have one: ``Lundi``, over ``□ Mia``."""
    bulleted = [strip_numbering(text) != text.strip() for at, text in filled.items() if days and at > days[0]]
    return len(days) == 1 and len(bulleted) >= _BELOW and all(bulleted) and (
        strip_numbering(filled[days[0]]) == filled[days[0]].strip())


def _heads(filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the lines that stand out over others that are set in, where most are: groups with their names below."""
    places = list(filled)
    inside = {at: _is_set_in(text) for at, text in filled.items()}
    if not are_most(inside.values(), _MOSTLY, _ENOUGH):
        return
    for at, below in pairwise(places):
        if inside[below] and not inside[at] and not opens_with_given(strip_numbering(filled[at])):
            yield at


def _underlined(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the first line where it is a title: no known name, and the only one with a row of signs below it."""
    first = next(iter(filled), len(texts))
    ruled = [at for at, text in enumerate(texts) if _RULED.fullmatch(text)]
    if first + 1 in ruled and len(ruled) <= 2 and not opens_with_given(strip_numbering(filled[first])):
        yield first, strip_numbering(filled[first])


def _over_a_block(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the lines over others, with nothing above, where they are no known name and the others are: ``Die Igel``.

    One that stands in its place of the alphabet is a rare name.
    """
    heads = [at for at, text in filled.items() if not (at and texts[at - 1].strip()) and at + 1 in filled
             and strip_numbering(text) == text.strip() and "," not in text]
    if not are_most((any(map(is_known, _plain_words(text))) for at, text in filled.items() if at not in heads),
                    _NEARLY_ALL, _ENOUGH):
        return
    for at in heads:
        if _names_a_group(_plain_words(filled[at]), _is_in_order(filled[at], texts[at + 1 :])):
            yield at, filled[at].strip()


def _set_apart(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the first line where an empty one parts it from all others and no other stands so: ``Kuchenbasar``.

    It is no known name, while others are, or has more words or fewer than any of them.
    """
    first = next((at for at, text in enumerate(texts) if text.strip()), -1)
    if first not in filled or any(text.strip() for text in texts[first + 1 : first + 2]):
        return
    others = [at for at in filled if at != first]
    apart = any(not any(text.strip() for text in (*texts[at - 1 : at], *texts[at + 1 : at + 2])) for at in others)
    text, words = filled[first].strip(), _plain_words(filled[first])
    bare = strip_numbering(filled[first]) == text and "," not in text and not any(map(str.isdigit, text))
    several = len(others) > 1 if not apart else len(others) == 1 and "," in filled[others[0]]
    sizes = {len(filled[at].split()) for at in others}
    unlike = len(words) not in sizes or share(opens_with_given(strip_numbering(filled[at])) for at in others) >= _HALF
    below = [filled[at] for at in others]
    told = share(_REMARK_SIGN.search(line) is not None for line in below) >= _NEARLY_ALL  # and a family's is not
    named = any(map(is_given if told else is_known, words)) and not _is_of_another_script(text, below)
    if several and bare and words and unlike and not named:
        yield first, text


def _open_as_others(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield lines that open blocks as headings open others, where no name is written so: ``After-care``."""
    opening = {at for at, text in enumerate(texts) if text.strip() and not (at and texts[at - 1].strip())
               and any(map(str.strip, texts[at + 1 : at + 2]))}
    alone = [at for at in sorted(opening) if at in filled and heading_reason(filled[at]) is None]
    sizes = {len(filled[at].split()) for at in filled if at not in opening}
    if len(opening) - len(alone) >= _BELOW and min(sizes, default=0) > 1 and not any(
            opens_with_given(filled[at]) for at in alone):
        yield from ((at, filled[at].strip()) for at in alone if len(filled[at].split()) not in sizes)


def _is_of_another_script(text: str, others: Sequence[str]) -> bool:
    """Say whether a line is in Latin letters where none opens another one: ``Custodia``, over Bulgarian names."""
    return _opens_latin(text) and not any(map(_opens_latin, others))


def _opens_latin(text: str) -> bool:
    letter = next(filter(is_letter, text), "")
    return bool(letter) and letter < _LATIN_END


def _names_a_group(words: Sequence[str], in_order: bool) -> bool:
    """Say whether words over known names open as a class does, or have an article and no given name, or none known."""
    opening, *rest = [fold(word) for word in words] or [""]
    if opens_as_class(opening) and rest and not is_given(opening):
        return True
    if opening in ARTICLES and rest:
        return not any(map(is_known, rest)) or not any(map(is_given, words))
    return bool(words) and not any(map(is_known, words)) and not in_order


def _of_two_words(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the first line where it is two words about a hyphen, the second small and neither known: ``Make-ups``."""
    first = next(iter(filled), None)
    one, hyphen, two = filled[first].strip().partition("-") if first is not None else ("", "", "")
    unknown = bool(hyphen) and one.isalpha() and two.isalpha() and begins_small(two) and not any(
        map(is_known, (one, two, f"{one}{two}")))
    if first is not None and unknown and are_most((not begins_small(text.strip()) and any(
            map(is_known, text.split())) for at, text in filled.items() if at != first), _NEARLY_ALL, _BELOW):
        yield first, filled[first].strip()


def _plain_words(text: str) -> list[str]:
    """Return the words of a line that have no figure in them, without days before one: ``Mar 2/12``."""
    words = strip_numbering(text).replace(",", " ").split()
    dated = any(map(str.isdigit, "".join(words)))
    return [word for word in words if word.isalpha() and not (dated and fold(word) in ANY_DAYS)]


def _is_in_order(first: str, below: Sequence[str]) -> bool:
    """Say whether the lines to the next empty one go on by the alphabet from a first one."""
    block = [first, *takewhile(str.strip, below)]
    return all(fold(one) <= fold(two) for one, two in pairwise(block))


def _labelled(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the lines whose name may stand behind a label, where most are whole names: ``Missing: Mira Vost``."""
    labels = {at: label for at, text in filled.items()
              if (label := labelled(strip_numbering(text))) and _SIGNS.isdisjoint(label.rest)}
    if not are_most((" " in strip_numbering(text) and at not in labels for at, text in filled.items()), _HALF, _ENOUGH):
        return
    yield from ((at, label.rest) for at, label in labels.items() if _may_head(label.bare, label.rest))


def _before_an_adult(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the only line in which an adult stands behind words that are no given names: ``Zweitkraft: Frau Vost``."""
    found = {at: label for at, text in filled.items() if (label := labelled(strip_numbering(text)))
             and len(label.rest.split()) > 1 and fold(label.rest.split()[0].rstrip(".")) in TITLES}
    if len(found) == 1 and len(filled) >= _ENOUGH:
        yield from ((at, label.bare) for at, label in found.items() if not any(map(is_given, label.bare.split())))


def _jobs(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield lines that may have a job each and who does it, with the title over them: ``Plant waterer = Xobrel``."""
    found = {at: head.label for at, text in filled.items() if (head := head_of(text))}
    if len(found) >= _MOSTLY * len(filled) and may_be_jobs(list(found.values()), 1):
        yield from ((at, filled[at]) for at, label in found.items() if is_a_job(label) or not opens_with_given(label))
        yield from ((at, text) for at, text in filled.items() if at < min(found) and is_over_groups(text))


def _may_head(label: str, behind: str) -> bool:
    """Say whether words before a sign are no whole name, and those behind it may be one."""
    words = behind.split()
    before = [word for word in label.split() if not any(map(str.isdigit, word))]
    if not before or not 0 < len(words) <= _LONGEST_NAME:
        return False
    if any(map(is_word_about, words)) or is_a_day_in_figures(behind):
        return False
    if heads_a_name(label, behind) or fold(label) in GOES_BY_OPENINGS or any(map(is_given, before)):
        return False
    if any(map(is_known, before)) and not is_given(words[0]):  # a family may be called Chess
        return False
    lone = len(before) == 1 or any(map(_is_small, before)) or len(before) < len(label.split())
    return is_titled(behind) and len(words) > 1 and (lone or is_given(words[0]))


def _odd(filled: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the lines that are set in, in small letters or of one unknown word where hardly another is."""
    cells = {at: stray_cells(text) or [text] for at, text in filled.items()}
    names = {at: strip_numbering(" ".join(found)) for at, found in cells.items()}
    small = {at: _small_words(strip_numbering(found[0])) for at, found in cells.items()}
    titled = are_most((not count for count in small.values()), _MOSTLY, _ENOUGH)
    set_in = sum(map(_is_set_in, filled.values()))
    level = 0 < set_in < len(filled) - set_in
    level_names = [name for at, name in names.items() if not (level and _is_set_in(filled[at]))]
    size = [len(_worded(_before_remark(name))) for name in level_names]
    named = [count for count, name in zip(size, level_names, strict=True) if count > 1 or is_known(name.strip())]
    whole = (are_most((count > 1 for count in size), _MOSTLY, _ENOUGH)  # few may be one unknown word
             and are_most((count > 1 for count in named), _NEARLY_ALL, _ENOUGH))
    half = are_most((len(_worded(_before_remark(name))) > 1 for name in names.values()), _HALF, _ENOUGH)
    loud = are_most((not is_loud(text) for text in filled.values()), _MOSTLY, _ENOUGH)
    shouted = [name for name in names.values() if is_loud(name) and " " not in name]
    heads = sum(not is_given(name) for name in shouted) > 1  # HIGH, MIDDLE, LOW
    for at, name in names.items():
        words = _worded(_before_remark(name))
        lone = whole and len(words) == 1
        shout = loud and len(words) == 1 and is_loud(name) and (heads or not is_given(words[0].strip(",!")))
        counted = half and len(words) == 1 and any(map(str.isdigit, _IN_BRACKETS.sub("", name)))
        if (small[at] and titled and ((level and _is_set_in(filled[at])) or fold(name) in CARE)) or (
                shout or (loud and is_shouted(name)) or (lone and loud and is_loud(name)) or counted or (
                half and fold(name) in _DATED)):
            yield at, name
            continue
        given = is_given(words[0].strip(",!")) and not (small[at] and fold(words[0]) in _WITH | OPENERS)
        if given and (small[at] < _PHRASE or len(words) == small[at] == _PHRASE):
            continue
        if (titled and small[at]) or lone or (level and _is_set_in(filled[at])):
            yield at, name


def _before_remark(name: str) -> str:
    """Return what stands before a sign and small words or those about somebody, else the whole: ``Mira – Oma Ida``."""
    sign = _REMARK_SIGN.search(name)
    first = name[sign.end() :].split()[0] if sign else ""
    told = sign and name[: sign.start()].strip() and (_is_small(first) or is_word_about(first))
    return name[: sign.start()] if sign and told else name


def _worded(name: str) -> list[str]:
    """Return the words of a line without figures, signs and brackets, all of them where none is left."""
    words = [word for word in _IN_BRACKETS.sub(" ", name).split()
             if (not _FIGURE.search(word) or _FIGURE_INSIDE.fullmatch(word)) and any(map(is_letter, word))]
    return words or name.split()


@keeps_names(1024)
def _small_words(name: str) -> int:
    """Count the words in small letters of a name, without what stands beside it."""
    if name.istitle():
        return 0
    bare = take_beside(name)[0].partition(",")[0] or name
    return sum(map(_is_small, bare.split()))


def _is_set_in(text: str) -> bool:
    return text.startswith((" " * _STEP, "\t", "\u3000"))


def _is_small(word: str) -> bool:
    """Say whether a word is in small letters and no particle of a name."""
    letters = [char for char in word if is_letter(char)]
    small = all(map(str.islower, letters)) and fold(word) not in PARTICLES
    return len(letters) > 1 and small and begins_small(letters[0])
