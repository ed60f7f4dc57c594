"""What is said of a child on lines below its name: ``Mia Vost``, then ``Allergy: nuts`` or ``  - new in May``.

Such lines are known by coming again, not by their words: the same label under one name after another, or lines set in,
or in capitals, below names that are not, or the other way round. Where they might as well be the children of groups
(``Captain: Mia``), nothing is taken. Out of scope: forms, whose names stand behind a label, too (``forms``).
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_state, is_word_about, strip_numbering
from namewright.roster.capitals import is_loud, is_small_word, is_titled
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.headers import header_role, is_about_somebody_else
from namewright.roster.heading_words import COLOURS
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_known, lean, opens_with_given
from namewright.roster.labelled import labelled
from namewright.roster.names_in_text import BRACKETS, Children
from namewright.roster.numbers import is_of_figures
from namewright.roster.pasted import Line, cells_run_on
from namewright.roster.prose import Aside
from namewright.roster.several import may_be_a_name
from namewright.roster.shares import given_share, share
from namewright.roster.shouted import is_loud_line, is_shouted
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, TITLES, fold

_LABELLED = pattern(
    r"\s*(?:[-–—*•·◦▪>]\s*)?([^\W\d_][^:,;\d]{0,39}?(?:\s\d)?)(?:\s?:|\s+[-–—=](?=\s))(?:\s+(\S.*)|\s*)", needs=":-–—=")
_SET_IN = pattern(r"(?:\s+(?:[-–—*•·◦▪>]\s*|[a-z\d]{1,2}[.)]\s+)?|[-–—*•·◦▪>]\s*)(\S.*)")
_TIME = pattern(r"\d{1,2}[:.h]\d\d(?:\s?(?:Uhr|h|[AaPp]\.?[Mm]\.?))?")
"""What stands behind one name alone, as when a child came: ``Mira – 9:26``."""
_SAID = message("roster.said_below")
_FEW, _OFTEN = 2, 3  # names under which a label stands
_HALF, _MOSTLY, _NEARLY_ALL = 0.5, 0.6, 0.8
_LEAST_NAMED = 0.3  # of what stands behind labels: so many known names may be the children
_LONGEST = 200


class _Said(NamedTuple):
    """A line below a name: its label, empty where it has none, and its words; ``names`` where these may be children."""

    label: str
    words: str
    names: bool = False


class _Block(NamedTuple):
    """A line that may be a name, and the lines (0-based) that are said below it."""

    owner: str
    below: Mapping[int, _Said]

    def labels(self) -> frozenset[str]:
        """Return the labels below the name."""
        return frozenset(said.label for said in self.below.values())


def without_said_below(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children, and those that are said of the child above each."""
    texts = [line.text if len(line.text) <= _LONGEST else "" for line in lines]
    if sum(bool(NAME_LABEL.match(text)) for text in texts) > 1 or cells_run_on(texts):
        return list(lines), []
    blocks = _labelled_below(texts) or _set_in_below(texts) or _shouted_below(texts) or _spoken_below(texts)
    known = Children([(at, block.owner) for at, block in enumerate(blocks)])
    said = {at: _told(lines[at], said, known) for block in blocks for at, said in block.below.items()}
    said |= {at: Aside(lines[at], (message("roster.unlike", words=texts[at].strip()[:60]),), asked=True)
             for at in _apart_above(texts, said, len(blocks))}
    return [line for at, line in enumerate(lines) if at not in said], [said[at] for at in sorted(said)]


def _apart_above(texts: Sequence[str], said: Mapping[int, Aside], count: int) -> list[int]:
    """Return the first line where an empty one parts it from names that all have lines below, and nobody knows it."""
    filled = [at for at, text in enumerate(texts) if any(map(is_letter, text))]
    first = filled[0] if count >= _OFTEN else -1
    owners = sum(at not in said for at in filled)
    apart = owners == count + 1 and first + 1 not in said and not texts[first + 1].strip() if first >= 0 else False
    return [first] if apart and not opens_with_given(texts[first]) and not heading_reason(texts[first]) else []


def _told(line: Line, said: _Said, known: Children) -> Aside:
    """Return what is said of a line; a child whom it names and who has no line is asked about: ``Friend: Leo``."""
    name = fold(said.words).split()[:1]
    asked = said.names and opens_with_given(said.words) and not known.hold(name)
    question = message("roster.sentence_names" if said.label else "roster.unlike",
                       **{"names" if said.label else "words": said.words[:60]})
    return Aside(line, (question if asked else _SAID,), asked=asked)


def _labelled_below(texts: Sequence[str]) -> list[_Block]:
    """Return the names with labels below them, where the same come again below others."""
    found = {at: _Said(fold(match[1]), (match[2] or "").strip()) for at, text in enumerate(texts)
             if (match := _LABELLED.fullmatch(text)) and not NAME_LABEL.match(text)
             and (not match[1][-1].isdigit() or _is_of_others(fold(match[1])))}
    found |= {at: _Said("", text.strip()) for at, text in enumerate(texts) if at + 1 in found and is_of_figures(text)}
    counts = Counter(said.label for said in found.values())
    found = {at: said for at, said in found.items() if counts[said.label] > 1 or not _TIME.fullmatch(said.words)}
    blocks = list(_blocks(texts, {at: said for at, said in found.items()
                                  if counts[said.label] > 1 or not _may_be_whole(texts[at])}))
    again = _come_again(blocks)
    blocks = [block for block in blocks if again & block.labels()]
    labels = [said.label for block in blocks for said in block.below.values()]
    if len(blocks) < _FEW or share(label in again for label in labels) < _MOSTLY:
        return []
    words: dict[str, list[str]] = {label: [] for label in again}
    for said in (said for block in blocks for said in block.below.values() if said.words):
        if said.label in again:
            words[said.label].append(said.words)
    naming = {label for label in again if not _is_of_others(label) and given_share(words[label]) >= _HALF}
    told = [word for label in again - naming if not _is_of_others(label) for word in words[label]]
    set_in = all(texts[at][0].isspace() or strip_numbering(texts[at]) != texts[at] for block in blocks
                 for at in block.below)
    sure = len(again) > 1 or set_in or share(map(_is_small, told)) >= _HALF or _repeat(told)
    if naming == again or not sure or not _are_children([block.owner for block in blocks], told):
        return []
    return [block._replace(below={at: said._replace(names=said.label in naming) for at, said in block.below.items()})
            for block in blocks]


def _come_again(blocks: Sequence[_Block]) -> frozenset[str]:
    """Return the labels that stand below several names, where none of them tells of a name itself."""
    owners: dict[str, set[str]] = defaultdict(set)
    for block in blocks:
        for label in block.labels():
            owners[label].add(fold(block.owner))
    again = {label for label, of in owners.items() if len(of) >= _FEW and not is_state(label)}
    sure = any(len(owners[label]) >= _OFTEN or not opens_with_given(label) for label in again)
    named = any(header_role(label) in NAME_ROLES for label in again)
    return frozenset(again) if sure and not named else frozenset()


def _may_be_whole(text: str) -> bool:
    """Say whether what stands before the sign of a line may be a child’s name: ``Mia Vost: allergy``."""
    label = labelled(strip_numbering(text))
    return label is not None and is_titled(label.bare) and (" " in label.bare or opens_with_given(label.bare))


def _set_in_below(texts: Sequence[str]) -> list[_Block]:
    """Return the names with lines below them that are set in, or have a bullet: words in small letters."""
    found = {at: _Said("", match[1]) for at, text in enumerate(texts)
             if (match := _SET_IN.fullmatch(text)) and any(map(is_letter, text)) and not NAME_LABEL.match(text)
             and not _is_a_state_before_a_name(match[1])}
    blocks = list(_blocks(texts, found))
    words = [said.words for block in blocks for said in block.below.values()]
    if len(blocks) < _FEW or len(words) < len(found) or share(map(begins_small, words)) < _NEARLY_ALL:
        return []
    owners = [block.owner for block in blocks]
    if share(map(is_titled, owners)) < _NEARLY_ALL or not _are_children(owners, words):
        return []
    return [block._replace(below={at: said._replace(names=opens_with_given(said.words))
                                  for at, said in block.below.items()}) for block in blocks]


def _is_a_state_before_a_name(words: str) -> bool:
    """Say whether a star is no bullet of a line about the child above: ``*new* Mira Vost``."""
    first, _, rest = words.partition(" ")
    return is_state(first.strip("*_!:")) and bool(rest) and is_titled(rest)


def _shouted_below(texts: Sequence[str]) -> list[_Block]:
    """Return the names with a line below most of them that is in capitals, as no name is, and tells something."""
    loud = {at: _Said("", text.strip(), names=lean(text.split()[0]) > 0) for at, text in enumerate(texts)
            if is_loud_line(text)}
    names = sum(bool(text.strip()) for text in texts) - len(loud)
    blocks = list(_blocks(texts, loud))
    words = [said.words for said in loud.values()]
    if len(blocks) < max(_FEW, _MOSTLY * names) or share(map(is_shouted, words)) < _MOSTLY or any(
            all(map(is_known, one.split())) for one in words):
        return []
    return blocks if _are_children([block.owner for block in blocks], ()) else []


def _spoken_below(texts: Sequence[str]) -> list[_Block]:
    """Return the names in capitals alone with lines below some of them that go on small: ``Wears glasses``."""
    said = {at: _Said("", text.strip(), names=lean(text.split()[0]) > 0) for at, text in enumerate(texts)
            if _is_spoken(text)}
    names = [text for at, text in enumerate(texts) if at not in said and any(map(is_letter, text))]
    blocks = list(_blocks(texts, said))
    words = [one.words for one in said.values()]
    if len(blocks) < _FEW or sum(len(block.below) for block in blocks) < len(said) or not all(
            is_loud(block.owner) for block in blocks) or share(map(is_loud, names)) < _NEARLY_ALL:
        return []
    return blocks if _are_children([block.owner for block in blocks], words) else []


def _is_spoken(text: str) -> bool:
    """Say whether a line goes on in small letters as no name does, or is one word about a child."""
    words = text.split()
    if not words or is_loud(text) or NAME_LABEL.match(text):
        return False
    small = any(is_small_word(word) and len(word) > 1 for word in words[1:])
    return small or (len(words) == 1 and is_word_about(words[0]))


def _blocks(texts: Sequence[str], said: Mapping[int, _Said]) -> Iterator[_Block]:
    """Yield each line right above some that are said, with these."""
    for at, text in enumerate(texts):
        if at in said or at + 1 not in said or not any(map(is_letter, text)):
            continue
        end = next((below for below in range(at + 1, len(texts)) if below not in said), len(texts))
        yield _Block(strip_numbering(text), {below: said[below] for below in range(at + 1, end)})


def _are_children(owners: Sequence[str], told: Sequence[str]) -> bool:
    """Say whether lines over others are surely children, and what is said below them names nobody."""
    bare = [words for owner in owners if (words := BRACKETS.sub(" ", owner).replace(",", " ").split())]
    folded = {" ".join(map(fold, words)) for words in bare}
    if len(bare) < len(owners) or len(folded) < _NEARLY_ALL * len(bare) or folded <= COLOURS:
        return False
    if any(map(heading_reason, owners)) or not TITLES.isdisjoint(fold(words[0]) for words in bare):
        return False
    whole = [words for words in told if _is_written_as_whole(words)]
    if share(map(opens_with_given, told)) >= _LEAST_NAMED or (
            len(whole) >= _LEAST_NAMED * len(told) > 0 and not _repeat(whole)):
        return False
    if share(any(map(is_given, words)) for words in bare) >= _HALF:
        return True
    apart = all(len({fold(words[at]) for words in bare}) >= _NEARLY_ALL * len(bare) for at in (0, -1))
    wholes = all(len(words) > 1 for words in bare) and share(map(is_titled, owners)) >= _NEARLY_ALL
    return (wholes and apart) or share(map(_is_small, told)) >= _HALF or _repeat(told)


def _is_written_as_whole(words: str) -> bool:
    """Say whether words are written as a whole name is: ``Mira Vost``, no ``Mutter anrufen``."""
    return " " in words and is_titled(words) and may_be_a_name(words) and all(map(is_letter, words.replace(" ", "")))


def _repeat(told: Sequence[str]) -> bool:
    """Say whether words come again and again, as names of one class hardly do."""
    return len(set(map(fold, told))) <= _MOSTLY * len(told)


def _is_of_others(label: str) -> bool:
    """Say whether a label is about a grown-up or another child: names behind it are nobody of the class."""
    return is_about_somebody_else(label) or not OTHER_PEOPLE.isdisjoint(label.split())


def _is_small(words: str) -> bool:
    """Say whether words begin in small letters or with a figure."""
    return begins_small(words) or words[:1].isdigit()
