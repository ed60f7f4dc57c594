"""The draft of a list beside the list that is saved, and what keeping it would do to the class.

What was looked up or tried once in a request is not looked up again in it.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import cast

from flask import abort, g, request

from namewright.classbook import RosterUpdate
from namewright.classbook.drafts import Draft
from namewright.classbook.enrol import Recognised
from namewright.classbook.going_on import is_other_script, whole_name
from namewright.classbook.rosters import Answers
from namewright.roster.children import Child
from namewright.web.desk import book
from namewright.web.list_reading import MAX_CHARACTERS, Reading
from namewright.web.list_same import answered, answers, is_meant_anew, same_children, stood, with_answer
from namewright.web.list_ways import mark
from namewright.web.sent_number import sent_number


def kept_list() -> Draft:
    """Return the list that is saved, as a draft that changes nothing, looked up once in a request."""
    if "kept_list" not in g:
        g.kept_list = book().saved_list()
    return cast(Draft, g.kept_list)


def draft() -> Draft:
    """Return the list that is being worked on, else the one that is saved."""
    return book().draft() or kept_list()


def based_on() -> int:
    """Return the number of the list that a form began from; aborts with 400 for what no list has."""
    said = sent_number(request.form.get("based", "0"))
    if said is None:
        abort(400)
    return said


def is_unsaved(now: Draft) -> bool:
    """Say whether keeping a draft would change something."""
    kept = kept_list()
    return (now.text.strip(), now.part, now.whole) != (kept.text.strip(), kept.part, kept.whole) or is_meant_anew(
        now.settled)


def changed_elsewhere(now: Draft) -> bool:
    """Say whether the list was changed in another window since this draft was begun."""
    return now.roster != book().roster_id() and bool(now.text) and is_unsaved(now)


def keep_draft(now: Draft, *, typed: bool) -> None:
    """Keep a draft; one that changes nothing of what is saved is given up, and one too long to be read is not kept."""
    if not is_unsaved(now) and not now.settled and not now.steps:
        book().discard_draft()
    elif len(now.text) <= MAX_CHARACTERS:
        if not typed and book().draft() is None:
            book().keep_draft(kept_list())  # the step to go back to
        book().keep_draft(now, typed=typed)


# --- what keeping it would do --------------------------------------------------------------------------


def tried(now: Draft, reading: Reading) -> tuple[RosterUpdate | None, dict[int, str]]:
    """Return what saving a list would do to the class, and what everyone would be called; None where nothing."""
    if reading.problem or not is_unsaved(now) or not book().children(left=True):
        return None, {}
    return trial(now, reading)


def trial(now: Draft, reading: Reading) -> tuple[RosterUpdate, dict[int, str]]:
    """Try what saving a list would do, once in a request."""
    trials: dict[Draft, tuple[RosterUpdate, dict[int, str]]] = g.setdefault("tried", {})
    if now not in trials:
        trials[now] = book().trial(reading.text, now.part, same=same_on_lines(now, reading),
                                   answers=answers_on_lines(now, reading))
    return trials[now]


def replaces_most(now: Draft, reading: Reading) -> bool:
    """Say whether more than half of the class would leave."""
    update, _ = tried(now, reading)
    return update is not None and 2 * len(update.left) > len(book().on_lines())


def known(update: RosterUpdate | None) -> Mapping[int, Recognised]:
    """Return the children, by line, whom the class has, or may have, under another name."""
    return {one.line: one for one in update.recognised} if update else {}


def known_more(update: RosterUpdate | None, reading: Reading) -> Mapping[int, Child]:
    """Return the children, by line, of whom the class knows more than the list says."""
    if update:
        return update.more
    there = {one.child.line: one.child for one in book().children()}
    return {line.line: there[line.line] for line in reading.lines if line.child and line.line in there
            and not is_other_script(there[line.line].practice)
            and (is_other_script(line.child.practice) or line.child.given != there[line.line].given)}


def same_on_lines(now: Draft, reading: Reading) -> Mapping[int, int]:
    """Return who of the class stands on which line of a list, by what was answered and by lines as they were."""
    lines = [line.text for line in reading.lines]
    return same_children(kept_list().text.splitlines(), book().on_lines(), lines) | answered(now.settled, lines, mark)


def answers_on_lines(now: Draft, reading: Reading) -> Answers:
    """Return what was said of the names on lines of a list."""
    return answers(now.settled, [line.text for line in reading.lines], mark)


def stays_settled(now: Draft, reading: Reading, at: int, text: str) -> frozenset[str]:
    """Return what is settled when a line of a list was written anew: its child is who it was."""
    update, _ = tried(now, reading)
    lines, child = text.split("\n"), reading.lines[at].child
    child_id = (update.ids if update else book().on_lines()).get(reading.lines[at].line)
    if len(lines) != len(reading.lines):
        return now.settled
    which, settled = mark(lines[at]), now.settled
    if child and is_other_script(whole_name(child)):
        settled |= {stood(which, whole_name(child))}
    return settled if child_id is None else with_answer(settled, which, child_id)
