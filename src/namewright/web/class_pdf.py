"""What several screens do with the whole class: put a request together, begin its PDF, keep what its plan says."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from flask import request

from namewright.classbook import grouping
from namewright.making.account import Account
from namewright.making.choices import read_choices
from namewright.making.from_book import members_of, roster_of
from namewright.making.make import Making
from namewright.making.planning import keep_plan
from namewright.making.request import TO_KNOW, Kind, Request
from namewright.message import Message, message
from namewright.pages.page import Page
from namewright.web import guard
from namewright.web.answers import file_name
from namewright.web.desk import Member, book, class_settings, desk
from namewright.web.jobs import Job

_NOTED = {Kind.YEAR, Kind.PLAN, Kind.ANSWERS, *TO_KNOW}  # pages that tell of what was noted


def this_monday() -> date:
    """Return the Monday of the week that a plan made now is for."""
    return grouping.monday_of(date.today())


def request_for(kinds: Sequence[Kind], those: Sequence[Member]) -> Request:
    """Return a request for children of the class, with the settings that are kept."""
    settings = class_settings()
    asked = members_of(book(), [one.one for one in those], [one.placed for one in those],
                       notes=not _NOTED.isdisjoint(kinds))
    taught = grouping.taught_before(book(), this_monday())
    return Request(tuple(kinds), asked, read_choices(settings), roster=roster_of(book()), fill=True,
                   a_week=int(settings.get("letters_per_week", "1")), taught=taught,
                   monday=this_monday())


def begin(asked: Request) -> Job:
    """Begin to make a PDF, or return the job that the same form began before; keep what its plan says.

    A plan of some children alone is not the class's, and nothing of it is kept. Raises ClassbookError.
    """
    children = book().children()
    if Kind.PLAN in asked.kinds and len(asked.members) == len(children):
        keep_plan(book(), children, asked, this_monday())

    def make(job: Job) -> Iterator[Page]:
        def step() -> None:
            job.done += 1
        account = Account(step)
        yield from Making(asked, account=account).pages()
        job.missed += missed(account)
        job.remarks += [message("web.job.missed", label=one.child.label, reason=one.told)
                        for one in account.remarks]
        job.remarks += account.notes

    nonce = request.form[guard.TOKEN_FIELD].partition(".")[0]
    job = desk().jobs.start(nonce, asked.steps, make, asked.settings.language)
    job.file_name = job.file_name or file_name(asked.kinds)
    return job


def missed(account: Account) -> list[Message]:
    """Tell of every child that was not made, each reason once."""
    return list(dict.fromkeys(message("web.job.missed", label=one.child.label, reason=one.cause.message)
                              for one in account.not_made))
