"""Looks at children's name writing as CSV, for a specialist's own tools: one row a letter that was looked at.

A note that looked at no letter has one row without a letter. Nothing is added up. Out of scope: where it comes from.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator

from namewright.output.order_tables import harmless
from namewright.pages.record import Record, Trial

COLUMNS = ("name", "date", "look", "baseline", "place", "letter", "formed", "support", "support_noted",
           "line_height_mm", "rows", "step", "who", "note")


def records_csv(records: Iterable[Record]) -> str:
    """Return records as CSV (RFC 4180), a header first.

    ``look`` counts a child's looks from 0, the baseline; ``place`` the letters of the name from 1; ``formed`` and
    ``support_noted`` are 1 or 0: a level that was not noted is the one that was set for that day.
    """
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(COLUMNS)
    for record in records:
        for number, trial in record.numbered():
            writer.writerows(_rows(record, number, trial))
    return out.getvalue()


def _rows(record: Record, number: int | None, trial: Trial) -> Iterator[tuple[object, ...]]:
    held = trial.held
    look = ("", "") if number is None else (number, int(number == 0))
    said = (held.support, int(held.noted), f"{held.line_height_mm:g}", " ".join(held.rows), trial.step or "",
            harmless(trial.who), harmless(trial.note))
    letters: list[tuple[object, ...]] = [(at + 1, harmless(record.letters[at]), int(at in trial.formed))
                                         for at in sorted(trial.formed | trial.not_yet)]
    for letter in letters or [("", "", "")]:
        yield (harmless(record.label), trial.day.isoformat(), *look, *letter, *said)
