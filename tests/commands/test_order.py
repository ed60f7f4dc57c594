"""``namewright order``: as a table, for a spreadsheet, for another program."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

Run = Callable[..., tuple[int, str, str]]


def test_the_order_claps_in_the_language_asked_for(run: Run, tmp_path: Path) -> None:
    """Beats are those of ``--captions``, in json and in csv."""
    names = tmp_path / "names.txt"
    names.write_text("Mateo\nNoelia\n")
    for form in ("json", "csv"):
        english, spanish = (run("order", names, "--format", form, "--captions", language)[1]
                            for language in ("en", "es"))
        assert english != spanish


def test_order_as_json(run: Run, roster: Path) -> None:
    """A list, one object a child, in the order to practise."""
    status, out, _ = run("order", roster, "--format", "json")
    order = json.loads(out)
    assert status == 0
    assert {one["name"] for one in order} == {"Mira", "Tilo", "Zoë", "Jonquil"}
    assert [one["difficulty"] for one in order] == sorted(one["difficulty"] for one in order)
