"""Every field that a form or an address of ours may have, with values that none of ours sends: answered, always.

A fuzzer that changes bytes seldom hits a whole value, such as a number of more figures than Python reads.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product
from pathlib import Path
from urllib.parse import urlencode

import pytest
from targets import HOST, _asked_anew, paths

import namewright.web
from longer import rest_long
from namewright.classbook.keys import CHILD_KEYS
from namewright.web.settings_in_forms import PAGE_KEYS

WEB = Path(namewright.web.__file__).parent
ODD = ("9" * 5000, "zz", "9" * 19, "", "-1", "1e999", "nan", "²", "٣", "\0", "\u202e\u0301", "2026-02-30", "1", "1,1",
       "a=1&" * 500, "a" * 3000)
ALONE = 2  # of them are sent in each field alone
DRAFTS = ("draft-1", "draft-class", f"draft-{'9' * 5000}")
SEALED = ("token", "class")  # what every form of ours has


def fields() -> Iterator[str]:
    """Yield the fields that the screens send or the program reads."""
    for file in (*WEB.glob("templates/*.html"), *WEB.glob("*.py")):
        text = file.read_text(encoding="utf-8")
        yield from re.findall(r'\bname="([a-z_]+)"', text)
        yield from re.findall(r'\b(?:form|args|values)(?:\.get|\.getlist)?[\[(]"([a-z_-]+)"', text)
        yield from re.findall(r'^[A-Z]\w* = "([a-z_]+)"', text, re.MULTILINE)


FIELDS = (*sorted({*fields(), *PAGE_KEYS, *CHILD_KEYS} - {*SEALED, "key"}), *DRAFTS)
PATHS = tuple(path.decode().partition("?")[0] for path in paths())


def answer(path: str, form: dict[str, str]) -> list[int]:
    """Return what is answered to a form and to an address with these fields, 405 for one that there is not."""
    client, base = _asked_anew()
    sent = client.post(path, data={**form, **base}, headers={"Host": HOST})
    return [sent.status_code, client.get(f"{path}?{urlencode(form)}", headers={"Host": HOST}).status_code]


def test_fields_are_found() -> None:
    assert {"text", "based", "after", "letter", "open", "what", "hand"} <= {*FIELDS}


@pytest.mark.parametrize("value", rest_long(ODD, 2))
def test_an_odd_value_in_all_fields_is_answered(value: str) -> None:
    for path in PATHS:
        assert max(answer(path, dict.fromkeys(FIELDS, value))) < 500, path


@pytest.mark.long
@pytest.mark.parametrize("path", PATHS)
def test_an_odd_value_in_one_field_is_answered(path: str) -> None:
    for field, value in product(FIELDS, ODD[:ALONE]):
        assert max(answer(path, {field: value})) < 500, (field, value[:20])
