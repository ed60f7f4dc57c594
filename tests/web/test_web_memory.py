"""Erased for good: no object of the running program holds the name any more, in whatever store it lay ready."""

from __future__ import annotations

import gc
from types import CodeType

from webhelp import Visitor, finished

_PAGES = ("/class", "/class?child=1", "/now", "/picture/1/page.svg", "/picture/1/row.svg", "/child/1/card.pdf",
          "/child/1/sizes.pdf", "/child/1/settings", "/child/1/seen", "/class/list", "/class/erase")


def name() -> str:
    """Return the child's name, made anew each time, so that no text of this test holds it."""
    return "elliuqxevaz"[::-1]


def holding(words: str) -> list[str]:
    """Return what kinds of objects of this process hold a text with these words, whatever their case."""
    gc.collect()
    waiting = gc.get_objects()
    seen, found = set(map(id, waiting)), []
    seen |= {id(seen), id(waiting), id(found), id(words)}
    while waiting:
        one = waiting.pop()
        for each in gc.get_referents(one):
            if id(each) in seen:
                continue
            seen.add(id(each))
            if isinstance(each, str | bytes):
                text = each if isinstance(each, str) else each.decode("latin-1")
                if words in text.lower():
                    found.append(type(one).__name__)
            elif not isinstance(each, int | float | CodeType):
                waiting.append(each)
    return found


def _used(visitor: Visitor) -> None:
    """Paste, change, print and look at a class with the child."""
    listed = f"{name().title()} Quorndike\nMirel Vost\nKatla Pruner\n"
    visitor.keep(listed)
    visitor.post("/class/list/read?part=lines", {"text": listed + name(), "based": visitor.based(), "practise": "both"})
    visitor.post("/child/1/lines", {"beats": f"{name()[:4].title()}-{name()[4:]}", "after": "0"})
    visitor.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a", "note": f"{name()} is proud"})
    for what in ("sheets", "cards", "plan"):
        job = finished(visitor, visitor.post("/print", {"what": what, "who": "all"}))
        visitor.get(job + "/pages.pdf")
    for page in _PAGES:
        assert visitor.get(page).status_code == 200, page


def test_no_object_of_the_program_holds_the_name(visitor: Visitor) -> None:
    """Before erasing many hold it, and after it none."""
    _used(visitor)
    assert len(holding(name())) > 5
    assert visitor.post("/class/erase/yes", {"child": "1"}).status_code == 302
    assert holding(name()) == []
