"""What one start of the page keeps: the class's file, one typesetter, the jobs, the pictures made lately.

The typesetter keeps letters ready and may serve one request at a time, so it has a lock. Pictures are kept by what was
asked, never by who asked, and only the newest. Out of scope: what a page shows (the view modules).
"""

from __future__ import annotations

import hashlib
import os
import secrets
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from threading import Lock
from typing import TypeVar, cast

from flask import abort, current_app, g

from namewright.classbook import BookChild, Classbook, ClassbookError, grouping
from namewright.classbook.connect import Stamp, stamp_of
from namewright.making.request import Request
from namewright.message import Message
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, Placed, completed, order_class
from namewright.practice.wishes import NO_WISHES, Wishes
from namewright.settings import Support
from namewright.store import Store, forget_names
from namewright.web.jobs import Jobs, Missed

KEY = "namewright"
_KEPT_PICTURES = 200
_KEPT_TOLD = 100
_KEPT_ORDERS = 4
_KEPT_COUNTS = 3000
_KEPT_LOOKED_UP = 200
_KEPT_SHEETS = 200
Drawn = TypeVar("Drawn", str, bytes, tuple[Page, ...])
Seen = TypeVar("Seen")


@dataclass(frozen=True, slots=True)
class Counted:
    """How many pages a request has, and who is on none of them."""

    pages: int
    missed: tuple[Missed, ...] = ()


@dataclass
class Desk:
    """The one desk of a running program; ``turned`` hears from which class it turns to which."""

    path: Path
    setter: Typesetter = field(default_factory=lambda: Typesetter(kept_sheets=_KEPT_SHEETS))
    jobs: Jobs = field(default_factory=Jobs)
    lock: Lock = field(default_factory=Lock)
    _pictures: Store[str, object] = field(default_factory=lambda: Store(_KEPT_PICTURES))
    _orders: Store[tuple[object, ...], tuple[Placed, ...]] = field(default_factory=lambda: Store(_KEPT_ORDERS))
    _counts: Store[Request, Counted] = field(default_factory=lambda: Store(_KEPT_COUNTS))
    _looked_up: Store[Hashable, object] = field(default_factory=lambda: Store(_KEPT_LOOKED_UP))
    _told: Store[str, tuple[Message, ...]] = field(default_factory=lambda: Store(_KEPT_TOLD))
    _erasures: int | None = None
    _known: Stamp | None = None
    turned: Callable[[Path, Path], None] = lambda before, after: None
    soon: Iterator[object] = field(default_factory=lambda: iter(()))
    """What will be asked for soon, step by step, for whoever has time and no threads: it takes no lock."""

    def tell(self, told: Iterable[Message]) -> str:
        """Keep messages for the page that comes next and return their key: they may hold names, a key does not."""
        key = secrets.token_urlsafe(9)
        with self.lock:
            self._told.get(key, lambda: tuple(told))
        return key

    def told(self, key: str) -> tuple[Message, ...]:
        """Return the messages of a key, none for a key no longer known."""
        return self._told.find(key) or ()

    def forget(self, erasures: int | None = None) -> None:
        """Let go of all that may hold a name, after so many erasures where known: pictures, orders, messages, PDFs."""
        with self.lock:
            self._erasures = erasures
            self._pictures.clear()
            self._orders.clear()
            self._counts.clear()
            self._told.clear()
            self._looked_up.clear()
            self.setter.forget_texts()
            self.soon = iter(())
            forget_names()
        self.jobs.forget()

    def turn_to(self, path: Path) -> None:
        """Have another class open from now on, and let go of all that is in memory of the one before."""
        before, self.path, self._known = self.path, path, None
        self.forget()
        self.turned(before, path)

    def looked_up(self, key: Hashable, make: Callable[[], Seen]) -> Seen:
        """Return what was looked up for a key before; a key changes with what was looked at."""
        with self.lock:
            return cast(Seen, self._looked_up.get(key, make))

    def opened(self) -> Classbook:
        """Open the class’s file; one that was looked at whole and has not changed since is not looked at again."""
        now = stamp_of(self.path)
        book = Classbook.open(self.path, known=self._known)
        self._known = now
        return book

    def follow(self, erasures: int) -> None:
        """Forget where the class’s file says that another program erased somebody meanwhile."""
        if self._erasures is None:
            self._erasures = erasures
        elif self._erasures != erasures:
            self.forget(erasures)

    def counted(self, asked: Request) -> Counted | None:
        """Return how many pages a request has; None where they were not counted yet."""
        return self._counts.find(asked)

    def count(self, asked: Request, how: Callable[[Request, Typesetter], Counted]) -> Counted:
        """Return the same, counted when it is first asked for."""
        with self.lock:
            return self._counts.get(asked, lambda: how(asked, self.setter))

    def picture(self, asked: object, make: Callable[[Typesetter], Drawn]) -> Drawn:
        """Return a picture, or the pages it is of, made when first asked for. Raises what ``make`` raises."""
        key = hashlib.sha256(repr(asked).encode()).hexdigest()
        with self.lock:
            return cast(Drawn, self._pictures.get(key, lambda: make(self.setter)))

    def order(self, children: Sequence[BookChild], by: Order, support: Support, language: str,
              before: Mapping[int, int], wishes: Wishes = NO_WISHES, names_in: str | None = None,
              ) -> tuple[Placed, ...]:
        """Return the children in order with their groups, worked out once for a class that has not changed.

        ``before`` are the groups of last time by id, which are kept as far as can be.
        """
        key = (by, support, language, tuple(one.child for one in children), tuple(before.items()), wishes,
               names_in)
        labels = {one.child.label: before[one.id] for one in children if one.id in before}
        with self.lock:
            return self._orders.get(key, lambda: completed(order_class([one.child for one in children], by, support),
                                                           language, labels, wishes, support, names_in))


def desk() -> Desk:
    """Return the desk of the application that answers."""
    return cast(Desk, current_app.extensions[KEY])


def book() -> Classbook:
    """Return the class's file, opened once for a request. Raises ClassbookError where it cannot be opened."""
    if "book" not in g:
        g.book = desk().opened()
        desk().follow(g.book.erasures)
    return cast(Classbook, g.book)


def class_mark() -> str:
    """Return what tells the class that is open from every other, copies of its file included; no text where none opens.

    The path is hashed with the class's random name, so that nothing of it can be read on a page.
    """
    try:
        return hashlib.sha256(book().class_id.encode() + os.fsencode(desk().path.absolute())).hexdigest()[:32]
    except ClassbookError:
        return ""  # the page that says why cannot show a form of this class


def close_book(_: BaseException | None = None) -> None:
    """Close the class's file at the end of a request."""
    opened = g.pop("book", None)
    if opened is not None:
        opened.close()


def child_or_404(child_id: int) -> BookChild:
    """Return a child of the class who is here now; aborts with 404 for any other."""
    found = next((one for one in book().children() if one.id == child_id), None)
    if found is None:
        abort(404)
    return found


def class_settings() -> Mapping[str, str]:
    """Return what is set for the class, as text."""
    return book().class_settings


@dataclass(frozen=True, slots=True)
class Member:
    """A child in its place in the class."""

    one: BookChild
    placed: Placed

    @property
    def id(self) -> int:
        """Return the child's number in the class's file."""
        return self.one.id

    @property
    def label(self) -> str:
        """Return how an adult calls this child."""
        return self.one.child.label


def members(settings: Mapping[str, str] | None = None) -> tuple[Member, ...]:
    """Return the class in the order set for it, or in that of other settings."""
    children = book().children()
    settings = class_settings() if settings is None else settings
    by, support = Order(settings.get("order", Order.PRACTICE)), Support(settings.get("support", Support.FULL))
    ordered = desk().order(children, by, support, settings.get("language", "en"), book().groups(),
                           grouping.wishes(book(), children), settings.get("names_in"))
    on_line = {one.child.line: one for one in children}
    return tuple(Member(on_line[placed.child.line], placed) for placed in ordered)


def keep_groups() -> None:
    """Keep the groups that the screen shows for next time, so that children stay together when others join."""
    grouping.keep(book(), book().children(), [one.placed for one in members()])
