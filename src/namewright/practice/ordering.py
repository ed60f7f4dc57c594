"""The class in an order for practice.

Names go by three bands (``difficulty``), in a band by how many letters there are to write, and only then by the load
that is left: marks, gaps, mirror twins and harder letters. So nothing decides that is not told: two names whose
letters cannot be told apart stand by their length. Everything is a suggestion for a teacher; nothing here reads or
writes a file. Out of scope: the order written down (``output.order_tables``), plans over weeks (``weeks``).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from enum import StrEnum

import unicodedata2

from namewright.letters.alphabet import upright
from namewright.message import Message, Problem
from namewright.named_tuples import NamedTuple
from namewright.names.alphabetical import base_letters
from namewright.names.beats import Spoken, beats, spoken_beats
from namewright.names.clusters import clusters
from namewright.practice.difficulty import Band, NameDifficulty, band_of, base_letter, name_difficulty, written_signs
from namewright.practice.families import Family, family_of
from namewright.practice.reason import for_parent, no_place, reason
from namewright.practice.sequence import practice_sequence
from namewright.practice.wishes import NO_WISHES, Wishes
from namewright.roster.children import Child
from namewright.settings import Support


class Order(StrEnum):
    """How to order a class: see ``order_class``."""

    PRACTICE = "practice"
    NEED = "need"
    FAMILY = "family"
    ROSTER = "roster"
    NAME = "name"


_BANDS = {band: rank for rank, band in enumerate(Band)}


class Placed(NamedTuple):
    """One child in an ordered class.

    ``position`` counts from 1; ``difficulty`` is ``letter_part`` + ``workload``; ``length`` counts letters
    (and digits) to write; ``of`` children have a place. ``rating`` is the difficulty of the name. A child whose name
    cannot be written here (a letter that cannot be drawn, or none at all) has position 0, no band and no letters, and
    the reason says so. The order of the letters and what is told are put together when they are asked for: sheets need
    neither, and of a large class they would take more room than all the rest.

    Plans and groups need the child's table, ``group`` from 1, and the name's ``beats`` in order (``beats_known`` is
    false where they are a guess). Both take time to find, so a place has them only where it was ``completed``.
    """

    child: Child
    position: int
    difficulty: float
    letter_part: float
    workload: float
    length: int
    band: Band | None
    of: int
    rating: NameDifficulty
    beats: tuple[str, ...] = ()
    beats_known: bool = False
    group: int = 0

    @property
    def is_completed(self) -> bool:
        """Say whether beats and table were found."""
        return self.group > 0

    @property
    def letters(self) -> tuple[tuple[str, Band], ...]:
        """Return the different letters in practice order, each with its band."""
        if self.band is None:
            return ()
        ordered = practice_sequence(self.rating.letters, own_initial(self.child))
        return tuple((each.letter, each.band) for each in ordered)

    @property
    def small_signs(self) -> int:
        """Return how many signs of the name are no letters, marks among them."""
        return self.rating.small_signs

    @property
    def twins(self) -> tuple[tuple[str, str], ...]:
        """Return the pairs of letters in the name that are mirror or turned twins."""
        return self.rating.twins

    @property
    def reason(self) -> tuple[Message, ...]:
        """Return what is told to the teacher, each message one sentence."""
        if self.band is None:
            return (no_place(self.child.label, upright().missing(self.child.practice)),)
        return reason(self.child.label, self.position, self.of, self.length, self.letters, own_initial(self.child))

    @property
    def to_parent(self) -> tuple[Message, ...]:
        """Return what could be told to a parent, each message one sentence."""
        if self.band is None:
            return self.reason
        return for_parent(self.child.label, self.rating, own_initial(self.child))


def order_class(children: Sequence[Child], by: Order = Order.PRACTICE, usual: Support = Support.FULL, *,
                writable: Callable[[str], bool] | None = None) -> tuple[Placed, ...]:
    """Return every child of a class once, in the order asked for.

    PRACTICE goes from the easier band to the harder, in a band from the shorter name to the longer, then by load;
    equal ones stand by name, then as in the roster. NEED goes from the most support to the least (``usual`` for a
    child whose list says nothing: the teacher knows more than a figure), and inside a level the other way. FAMILY goes
    by how the pencil moves in the own initial, inside a family by PRACTICE. NAME follows ``collation_key``. In all of
    them names that are not ``writable`` (by our own alphabet unless said) come last, without a place. The same children
    in the same order give the same answer each time.
    """
    can = writable or _we_can_write
    rated: list[tuple[Child, NameDifficulty]] = []
    others: list[tuple[Child, NameDifficulty]] = []
    for child in children:
        rating = name_difficulty(child.practice, own_initial(child))
        (rated if can(child.practice) else others).append((child, rating))
    keys: dict[Order, Callable[[tuple[Child, NameDifficulty]], tuple[object, ...]]] = {
        Order.PRACTICE: lambda each: (*_work(each[1]), collation_key(each[0])),
        Order.NEED: lambda each: (_support_rank(each[0], usual), *(-part for part in _work(each[1])),
                                  collation_key(each[0])),
        Order.FAMILY: lambda each: (_family_rank(each[0]), *_work(each[1]), collation_key(each[0])),
        Order.NAME: lambda each: (collation_key(each[0]),),
        Order.ROSTER: lambda _: (),
    }
    ordered = enumerate(sorted(rated, key=keys[by]), start=1)
    return (*[_place(child, rating, position, len(rated)) for position, (child, rating) in ordered],
            *[_unplaced(child, rating) for child, rating in sorted(others, key=keys[by])])


def _we_can_write(name: str) -> bool:
    """Say whether our own letters can draw a name, and whether there is anything in it to write."""
    return bool(written_signs(name)) and not upright().missing(name)


def _work(rating: NameDifficulty) -> tuple[int, int, float]:
    """Return what PRACTICE goes by: the band, the letters to write, and the load that tells equals apart."""
    difficulty = rating.difficulty
    return _BANDS[band_of(difficulty)], rating.length, difficulty


def _support_rank(child: Child, usual: Support) -> int:
    return list(Support).index(child.support or usual)


def initial_family(child: Child) -> Family:
    """Return the family of the child's own initial, marks aside; OTHER where there is none."""
    initial = own_initial(child)
    return family_of(base_letter(initial)) if initial else Family.OTHER


def _family_rank(child: Child) -> int:
    return list(Family).index(initial_family(child))


def own_initial(child: Child) -> str:
    """Return the first letter of the child's first name, as written; empty where there is none.

    The practised name begins with it, unless the family name alone is practised.
    """
    family_only = bool(child.given) and child.practice == child.family
    return "".join(written_signs(child.given if family_only else child.practice)[:1])


def collation_key(child: Child) -> tuple[str, str, str, str]:
    """Return the key of NAME order: base letters whatever their case, then marks, then the text, the label.

    É stands with E and before F, Ł with L (``base_letters``); the marks decide only between names alike without
    them. A space, a hyphen or an apostrophe stands before every letter. No language's own rules are followed.
    """
    practice = child.practice
    marks = "" if practice.isascii() else "".join(
        char for char in unicodedata2.normalize("NFD", practice) if unicodedata2.category(char)[0] == "M")
    return base_letters(practice), marks, practice, child.label


def _place(child: Child, rating: NameDifficulty, position: int, of: int) -> Placed:
    return Placed(child=child, position=position, difficulty=rating.difficulty, letter_part=rating.letter_part,
                  workload=rating.workload, length=rating.length, band=rating.band, of=of, rating=rating)


def _unplaced(child: Child, rating: NameDifficulty) -> Placed:
    """Return a child whose name cannot be written here: no place, no band, no letters, no advice."""
    return Placed(child=child, position=0, difficulty=0.0, letter_part=0.0, workload=0.0, length=rating.length,
                  band=None, of=0, rating=rating)


def completed(placed: Sequence[Placed], language: str = "en", before: Mapping[str, int] | None = None,
              wishes: Wishes = NO_WISHES, usual: Support = Support.FULL, names_in: str | None = None,
              ) -> tuple[Placed, ...]:
    """Return the same children with their beats and tables.

    Tables hang on the names and on the levels of help (``usual`` where a child has none) and not on the order.
    ``before`` gives the table of last time by label, from which a new one is made with as few moves as can be (see
    ``groups``), its number kept. Beats are those of the language that a child's name is in, else of
    ``names_in``, that of all names, by its tag; where nobody said, ``language`` is that of the pages.
    """
    number = tables(placed, before or {}, wishes, usual)
    return tuple(_completed(each, number[each.child.line, each.child.label],
                            Spoken(each.child.names_in or names_in, language, each.child.beats)) for each in placed)


def tables(placed: Sequence[Placed], before: Mapping[str, int], wishes: Wishes, usual: Support,
           ) -> dict[tuple[int, str], int]:
    """Return the number of each child's table, by line and label; see ``completed``."""
    from namewright.practice.groups import group_class, numbered  # not at the top: sheets are ordered without tables
    from namewright.practice.table_worth import pair_worth, wished
    from namewright.practice.weeks import letters_of

    children = [each.child for each in sorted(placed, key=lambda each: (each.child.line, each.child.label))]
    labels = [child.label for child in children]
    pairs = pair_worth([letters_of(child.practice) for child in children],
                       [child.support or usual for child in children])
    asked = wished(pairs, _places(wishes.together, labels), _places(wishes.apart, labels))
    earlier = {place: before[label] for place, label in enumerate(labels) if before.get(label, 0) > 0}
    old = [[place for place in earlier if earlier[place] == number] for number in sorted(set(earlier.values()))]
    number = numbered(group_class(asked, [child.practice for child in children], wishes.tables, old), earlier)
    return {(child.line, child.label): number[place] for place, child in enumerate(children)}


def _places(wishes: Sequence[tuple[str, str]], labels: Sequence[str]) -> list[tuple[int, int]]:
    """Return wishes by place; one about a child who is not here says nothing."""
    at = {label: place for place, label in enumerate(labels)}
    return [(at[one], at[other]) for one, other in wishes if one in at and other in at and one != other]


def unmet(planned: Sequence[Placed], wishes: Wishes) -> tuple[tuple[str, str], ...]:
    """Return the wishes, by label, that the tables do not meet: two contradict each other, or a table is too small."""
    from namewright.practice.table_worth import broken

    labels = [each.child.label for each in planned]
    groups = [[at for at, each in enumerate(planned) if each.group == number]
              for number in {each.group for each in planned}]
    missed = broken(groups, _places(wishes.together, labels), _places(wishes.apart, labels))
    return tuple((labels[one], labels[other]) for one, other in missed)


def _completed(each: Placed, group: int, spoken: Spoken) -> Placed:
    parts, known = _beats(each.child, spoken)
    return each._replace(beats=parts, beats_known=known, group=group)


def _beats(child: Child, spoken: Spoken) -> tuple[tuple[str, ...], bool]:
    """Return the beats as the name is spoken, and whether they are known; a name without a letter whole."""
    found = spoken_beats(clusters(child.practice), spoken) if child.practice.strip() else None
    return (found.parts, found.known) if found else ((child.practice,), False)


def beats_that_do_not_fit(children: Sequence[Child]) -> tuple[tuple[Child, Message], ...]:
    """Return every child whose beats in the roster do not join to the name, with what is wrong."""
    found: list[tuple[Child, Message]] = []
    for child in children:
        if child.beats:
            try:
                beats(child.practice, corrected=child.beats)
            except Problem as error:
                found.append((child, error.message))
    return tuple(found)
