"""A timetable as JSON for another program and as CSV for a spreadsheet.

JSON: ``weeks`` (week, letters, completes), ``days`` (day, with, letters, pages, minutes), ``groups`` (number, names,
letters) and ``children`` (id, line, name, letters, formed, next, support, hand, reason). Letters of weeks, days and
groups are small and without marks, those of a child as the name has them; children are named by their labels, which no
two share. CSV: one row a child and day. Out of scope: how a plan is found (``practice.timetable``).
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable, Mapping, Sequence

from namewright.message import Message
from namewright.output.order_tables import harmless
from namewright.practice.days import MINUTES, Day
from namewright.practice.timetable import Progress, Timetable, in_page_order

DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday")
_COLUMNS = ("day", "name", "id", "line", "group", "next", "letters", "formed", "pages", "minutes", "support", "hand",
            "reason")

Numbers = Mapping[int, Sequence[int]]
Ids = Mapping[int, int]
Say = Callable[[Message], str]


def plan_json(plan: Timetable, numbers: Numbers, ids: Ids, say: Say) -> str:
    """Return the plan as one JSON object.

    ``numbers`` are the pages of each child's sheet in the class's PDF and ``ids`` the class's own numbers of children,
    both by line and perhaps empty; ``say`` words a reason.
    """
    found = {
        "weeks": [{"week": number, "letters": list(week.letters), "completes": _names(plan, week.completes)}
                  for number, week in enumerate(plan.weeks.weeks, start=1)],
        "days": [{"day": DAYS[day.day], "with": _names(plan, day.children), "letters": list(day.letters),
                  "pages": _pages(plan, day, numbers), "minutes": day.minutes} for day in in_page_order(plan, numbers)],
        "groups": [{"number": table.number, "names": _names(plan, table.children), "letters": list(table.letters)}
                   for table in plan.tables],
        "children": [_child(each, ids, say) for each in plan.children],
    }
    return json.dumps(found, ensure_ascii=False, indent=2) + "\n"


def plan_csv(plan: Timetable, numbers: Numbers, ids: Ids, say: Say) -> str:
    """Return the days as CSV (RFC 4180), one row a child below a header; see ``plan_json``."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(_COLUMNS)
    for day in in_page_order(plan, numbers):
        for each in (plan.children[at] for at in day.children):
            child = each.placed.child
            writer.writerow((DAYS[day.day], harmless(child.label), ids.get(child.line, ""), child.line,
                             each.placed.group, *(harmless(" ".join(letters)) for letters in
                                                  (each.next, each.letters, each.formed)),
                             " ".join(map(str, numbers.get(child.line, ()))), MINUTES[each.support], each.support,
                             each.hand, harmless(say(each.reason))))
    return out.getvalue()


def _names(plan: Timetable, places: Sequence[int]) -> list[str]:
    return [plan.children[at].placed.child.label for at in places]


def _pages(plan: Timetable, day: Day, numbers: Numbers) -> list[int]:
    return [page for at in day.children for page in numbers.get(plan.children[at].placed.child.line, ())]


def _child(each: Progress, ids: Ids, say: Say) -> dict[str, object]:
    child = each.placed.child
    return {"id": ids.get(child.line), "line": child.line, "name": child.label, "letters": list(each.letters),
            "formed": list(each.formed), "next": list(each.next), "support": each.support, "hand": each.hand,
            "reason": say(each.reason)}
