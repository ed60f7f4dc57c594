"""What several screens do with the whole class: put a request together, begin its PDF, keep what its plan says."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping, Sequence
from datetime import date

from flask import current_app, request

from namewright.classbook import grouping
from namewright.letters.alphabet import MissingLetters
from namewright.making.account import Account
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of, roster_of
from namewright.making.make import Making
from namewright.making.planning import keep_plan
from namewright.making.request import TO_KNOW, Kind, Request, all_listed
from namewright.message import message
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.children import Child
from namewright.web import guard
from namewright.web.answers import file_name
from namewright.web.desk import Member, book, class_settings, desk
from namewright.web.jobs import Job, Missed
from namewright.web.requests import FOR_ADULT

_NOTED = {Kind.YEAR, Kind.PLAN, Kind.ANSWERS, *TO_KNOW}  # pages that tell of what was noted


def this_monday() -> date:
    """Return the Monday of the week that a plan made now is for."""
    return grouping.monday_of(date.today())


def request_for(kinds: Sequence[Kind], those: Sequence[Member], settings: Mapping[str, str] | None = None) -> Request:
    """Return a request for children of the class, with the settings that are kept, or with others."""
    settings = class_settings() if settings is None else settings
    asked = members_of(book(), [one.one for one in those], [one.placed for one in those],
                       notes=not _NOTED.isdisjoint(kinds))
    taught = grouping.taught_before(book(), this_monday())
    return Request(tuple(kinds), asked, read_choices(settings), roster=roster_of(book()), fill=True,
                   a_week=int(settings.get("letters_per_week", "1")), taught=taught,
                   monday=this_monday())


def parted(asked: Request) -> list[tuple[Request, tuple[Kind, ...]]]:
    """Part a request into what children get and what is for the adult alone: never in one PDF.

    With each come the kinds that are made only to be told of: answers are to the pages that the children get, and name
    the numbers that these have in the children's PDF.
    """
    children = tuple(kind for kind in asked.kinds if kind not in FOR_ADULT)
    adult = tuple(kind for kind in asked.kinds if kind in FOR_ADULT)
    told = children if Kind.ANSWERS in adult and not set(TO_KNOW).isdisjoint(children) else ()
    return [(asked._replace(kinds=kinds), silent) for kinds, silent in ((children, ()), (adult, told)) if kinds]


def begin(asked: Request, silent: Sequence[Kind] = ()) -> Job:
    """Begin to make a PDF, or return the job that the same form began before; keep what its plan says.

    ``silent`` kinds are made without being in it. A plan of some children alone is not the class's, and nothing of it
    is kept. Raises ClassbookError.
    """
    children = book().children()
    if Kind.PLAN in asked.kinds and len(asked.members) == len(children):
        keep_plan(book(), children, asked, this_monday())
    ids = {one.child.line: one.id for one in children}
    whole = asked._replace(kinds=(*silent, *asked.kinds))
    setter = _setter()

    def make(job: Job) -> Iterator[Page]:
        def step() -> None:
            job.done += 1
        account = Account(step)
        yield from made_aloud(Making(whole, setter, account), asked.kinds, silent)
        job.missed += missed(account, ids, asked.kinds)
        job.remarks += [message("web.job.missed", label=one.child.label, reason=one.told)
                        for one in account.remarks]
        job.remarks += account.notes

    nonce = request.form[guard.TOKEN_FIELD].partition(".")[0]
    key = hashlib.sha256(f"{nonce} {whole!r} {asked.kinds}".encode()).hexdigest()[:32]
    job = desk().jobs.start(key, whole.steps, make, asked.settings.language)
    job.file_name = job.file_name or file_name(asked.kinds)
    return job


def sheets_ahead(children: Sequence[Child], settings: Mapping[str, str], setter: Typesetter) -> Iterator[Page]:
    """Yield the sheets of a class that is not saved yet, for its first PDF to find them laid out."""
    asked = Request((Kind.SHEETS,), all_listed(order_class(children)), read_choices(settings))
    yield from Making(asked, setter).pages()


def _setter() -> Typesetter:
    """Return a job's letters: those of counts and pictures where no thread makes it, so that nothing disturbs them."""
    return desk().setter if current_app.config["IN_BROWSER"] else Typesetter()


def made_aloud(making: Making, kinds: Sequence[Kind], silent: Sequence[Kind]) -> Iterator[Page]:
    """Yield the pages of ``kinds``, with those of ``silent`` made before them and let go."""
    if silent:
        for _ in making.pages(*silent):
            pass
    yield from making.pages(*kinds)


def missed(account: Account, ids: Mapping[int, int], kinds: Sequence[Kind]) -> list[Missed]:
    """Tell of every child that was not made, each reason once; ``ids`` are those of the children on each line."""
    return list(dict.fromkeys(
        Missed(one.child.label, one.child.line, ids.get(one.child.line), one.cause.message,
               isinstance(one.cause, MissingLetters))
        for one in account.not_made if one.kind in kinds))
