"""What was changed on the desk and is not kept yet, for the class and for each child, as the forms there hold it.

A draft is a whole form, sent as one field in the encoding of forms: ``draft-class`` for everyone, ``draft-7`` for the
child with that number. A picture, a count and a PDF are made of what is kept with the drafts laid over it, so what is
shown is what is printed. Out of scope: how a form looks (the templates), what a setting means (``classbook.keys``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from urllib.parse import parse_qsl

from flask import abort
from werkzeug.datastructures import MultiDict

from namewright.classbook import BookChild
from namewright.classbook.rosters import with_namesakes
from namewright.making.request import Kind
from namewright.practice.ordering import Placed, completed, order_class
from namewright.web.answers import pages_of
from namewright.web.desk import Member, book, class_settings, members
from namewright.web.requests import CannotDraw, of_child
from namewright.web.sent_number import sent_number
from namewright.web.settings_in_forms import asked_settings, own_settings
from namewright.web.trial import tried

PREFIX, OF_CLASS = "draft-", "class"
_MAX_FIELDS = 400

Form = MultiDict[str, str]


@dataclass(frozen=True, slots=True)
class Drafts:
    """The forms that were changed: the one for everyone, and those of children by their numbers."""

    everyone: Form | None = None
    own: Mapping[int, Form] = field(default_factory=dict)

    def settings(self) -> Mapping[str, str]:
        """Return the class's settings with what was changed. Raises ClassbookError for what cannot be set."""
        return class_settings() if self.everyone is None else asked_settings(self.everyone)

    def child(self, one: BookChild) -> BookChild:
        """Return a child with what was changed for it. Raises ClassbookError for what cannot be set."""
        if one.id not in self.own:
            return one
        found = tried(one, own_settings(self.own[one.id]))
        if found.child.practice == one.child.practice:
            return found
        others = with_namesakes([found, *(each for each in book().children() if each.id != one.id)])
        return replace(found, namesake=others[0].namesake)

    def refuse_undrawn(self, one: BookChild) -> None:
        """Raise CannotDraw where a child's sheet can be drawn as it is kept and could not be with what was changed."""
        def drawn(child: BookChild, settings: Mapping[str, str]) -> None:
            pages_of(of_child(Kind.SHEETS, child, settings))

        try:
            drawn(one, class_settings())
        except CannotDraw:
            return
        drawn(self.child(one), self.settings())

    def members(self) -> Sequence[Member]:
        """Return the class in its order, each child as it was changed. Raises ClassbookError as the others do."""
        settings = self.settings()
        return [self._member(one, settings) for one in members(settings)]

    def _member(self, member: Member, settings: Mapping[str, str]) -> Member:
        one = self.child(member.one)
        return member if one is member.one else Member(one, _placed(member.placed, one, settings))


def _placed(before: Placed, one: BookChild, settings: Mapping[str, str]) -> Placed:
    """Return a child's place for the child as it was changed; of another name the beats and letters are found anew."""
    if before.child.practice == one.child.practice:
        return before._replace(child=one.child)
    (alone,) = completed(order_class([one.child]), settings.get("language", "en"), names_in=settings.get("names_in"))
    return alone._replace(position=before.position, of=before.of, group=before.group)


def read_drafts(sent: Form) -> Drafts:
    """Return the drafts among the fields of a form or an address; fields that name nobody are passed over.

    Aborts with 413 for a draft of more fields than any form of ours has.
    """
    found = {key.removeprefix(PREFIX): _form(text) for key, text in sent.items() if key.startswith(PREFIX)}
    own = {number: form for key, form in found.items() if (number := sent_number(key)) is not None}
    return Drafts(found.get(OF_CLASS), own)


def _form(text: str) -> Form:
    try:
        return MultiDict(parse_qsl(text, keep_blank_values=True, max_num_fields=_MAX_FIELDS))
    except ValueError:  # too many of them
        abort(413)
