"""What stands on a child's page to know the name by, computed once: the page and the adult's answer both come from it.

Out of scope: how it is drawn (``pages.know``), and what the adult is told (``knowing``).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import islice

from namewright.classbook.growing import not_standing
from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import print_ruling
from namewright.making.account import NoFriends, NothingToWrite
from namewright.making.request import Kind, Member, Request
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import written_signs
from namewright.practice.finding import Finding, finding
from namewright.practice.friends import FRIENDS, Mate, friends
from namewright.practice.gaps import GapRow, gap_rows
from namewright.practice.letter_hunt import Hunt, letter_hunt
from namewright.practice.mixing import ORDERS, Letters, mixed

READ_MM = 5.0  # an x-height at which a name is tried


@dataclass
class Contents:
    """What stands on the pages of one request; names are tried once, whether our letters or the font can draw them."""

    request: Request
    setter: Typesetter
    _drawn: dict[str, bool] = field(default_factory=dict)

    def name(self, one: Member) -> str:
        """Return the name that a child practises. Raises NothingToWrite."""
        name = one.placed.child.practice
        if not written_signs(name):
            raise NothingToWrite(one.placed.child.label)
        return name

    def _seed(self, kind: Kind, one: Member) -> str:
        child = one.placed.child
        return f"{kind}/{child.line}/{child.practice}/{self.request.shuffle}"

    def found(self, one: Member) -> Finding:
        """Return a child's page of names; another typeface is left out where it lacks a letter that the page needs."""
        mates = [child.practice for child in self.request.classmates if self._can_draw(child.practice)]
        taken = [name for child in self.request.classmates for name in (child.practice, child.given)]
        holds, seed = self.request.settings_of(one), self._seed(Kind.FIND, one)
        for other_face in (True, False):
            found = finding(self.name(one), mates, holds.support, seed, language=holds.names_in, usual=holds.language,
                            other_face=other_face, taken=taken, usable=self._can_draw)
            if not any(part.other_face for part in found.parts) or _in_other_face(found):
                break
        return found

    def gaps(self, one: Member) -> tuple[GapRow, ...]:
        """Return a child's rows with gaps, on full pages. Raises NothingToWrite, MissingLetters, DoesNotFit."""
        from namewright.pages.know.missing import on_full_pages

        name, holds = self.name(one), self.request.settings_of(one)
        rows = gap_rows(name, holds.support, self._seed(Kind.MISSING, one), not_standing(name, one.notes),
                        marks=self.setter.knows_strokes)
        return on_full_pages(self.setter, rows, holds)

    def orders(self, one: Member) -> tuple[Letters, ...]:
        """Return the orders in which a child's letters lie mixed, as many as a page takes. Raises as ``gaps`` does."""
        from namewright.pages.know.mixed import on_one_page

        name, holds = self.name(one), self.request.settings_of(one)
        orders = mixed(name, self._seed(Kind.MIXED, one), ORDERS[holds.support])
        return on_one_page(self.setter, name, orders, holds)

    def hunt(self, one: Member) -> Hunt:
        """Return a child's letters among others. Raises NothingToWrite."""
        name = self.name(one)
        return letter_hunt(name, self.request.settings_of(one).support, self._seed(Kind.LETTERS, one),
                           not_standing(name, one.notes))

    def friends(self, one: Member) -> tuple[str, ...]:
        """Return the names of a child's friends. Raises NoFriends, NothingToWrite."""
        from namewright.pages.know.friends import has_room, on_one_page

        tables = {each.placed.child.line: each.placed.group for each in self.request.members
                  if each.placed.is_completed}
        table, line = tables.get(one.placed.child.line), one.placed.child.line
        mates = [Mate(child.practice, table is not None and tables.get(child.line) == table)
                 for child in self.request.classmates if child.line != line and self._can_draw(child.practice)]
        holds = self.request.settings_of(one)
        ranked = friends(self.name(one), mates, len(mates))
        fitting = (name for name in ranked if has_room(self.setter, name, holds))
        found = tuple(islice(fitting, FRIENDS[holds.support]))
        if not found:
            raise NoFriends(one.placed.child.label)
        return on_one_page(self.setter, found, holds)

    def _can_draw(self, name: str) -> bool:
        if name not in self._drawn:
            self._drawn[name] = bool(written_signs(name)) and self._sets(name)
        return self._drawn[name]

    def _sets(self, name: str) -> bool:
        try:
            self.setter.ruled(print_ruling(READ_MM)).line(name)
        except MissingLetters:
            return False
        return True


def _in_other_face(found: Finding) -> bool:
    from namewright.schoolfont.other_face import face_for

    return face_for(shown.name for part in found.parts if part.other_face for shown in part.shown) is not None
