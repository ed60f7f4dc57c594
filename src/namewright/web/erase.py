"""Erasing for good: choose, be told what goes, say yes. For a family that asks for it, and for the end of a year.

Nothing is erased by the first form, and the second carries numbers and no names. Places where a name only may be the
child's are shown, each ticked. What the running program keeps in
memory of a class (pictures, finished PDFs, sentences to be said) goes too. Where a class is shared on a network, it is
erased only at the computer that keeps it.
"""

from __future__ import annotations

from collections.abc import Sequence

from flask import Blueprint, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, Erased
from namewright.classbook.records import called
from namewright.message import Message, message
from namewright.web.desk import book, desk
from namewright.web.finding import label_key

pages = Blueprint("erase", __name__)
EVERYTHING = "everything"
LOOPBACK = ("127.0.0.1", "::1")


@pages.before_request
def only_here() -> tuple[str, int] | None:
    """Refuse everyone at another computer. This one may also ask by its own address in the network.

    Inside a browser there is no network, and so no address that asks.
    """
    asker = request.remote_addr or ""
    if current_app.config["IN_BROWSER"] or asker == request.host.rpartition(":")[0] or asker in LOOPBACK:
        return None
    return render_template("problem.html", problem=message("web.erase.only_here")), 403


@pages.get("/class/erase")
def show() -> str:
    """Let children be chosen, those who left too, or the whole class."""
    return _page()


def _page(problem: Message | None = None) -> str:
    everyone = sorted(book().children(left=True), key=lambda one: label_key(one.child.label))
    here, gone = [one for one in everyone if one.left is None], [one for one in everyone if one.left]
    return render_template("erase.html", names=called(everyone), here=here, gone=gone, problem=problem,
                           file=desk().path.name)


def _chosen() -> tuple[bool, list[BookChild]]:
    """Return whether everything is meant, and the children that are, as the form says."""
    everything, asked = EVERYTHING in request.form, set(request.form.getlist("child"))
    return everything, [one for one in book().children(left=True) if everything or str(one.id) in asked]


@pages.post("/class/erase")
def ask() -> str | tuple[str, int]:
    """Say what would be erased, and ask."""
    everything, chosen = _chosen()
    if not chosen and not everything:
        return _page(message("web.erase.nobody")), 422
    notes = sum(len(book().observations(one.id)) for one in chosen)
    traces = () if everything else book().traces([one.id for one in chosen])
    names = called(book().children(left=True))
    return render_template("sure.html", names=names, everything=everything, chosen=chosen, notes=notes, traces=traces,
                           draft=book().draft(), file=desk().path.name)


@pages.post("/class/erase/yes")
def erase() -> BaseResponse:
    """Erase for good; a form sent twice finds nobody left and says no more."""
    everything, chosen = _chosen()
    told: Sequence[Message] = ()
    if everything:
        book().erase_all()
        told = (message("web.erase.all_done"), message("web.erase.copies"))
    elif chosen:
        told = _told(book().erase([one.id for one in chosen], also=request.form.getlist("also")))
    desk().forget(book().erasures)
    return redirect(url_for("home.first", told=desk().tell(told)))


def _told(erased: Erased) -> tuple[Message, ...]:
    standing = (message("web.erase.stands", where=trace.told) for trace in erased.standing)
    return (message("web.erase.done", count=erased.children), *standing, message("web.erase.copies"))
