"""What is sent by hand is answered: numbers that nothing here has, words that there are not. All names are invented."""

from __future__ import annotations

from urllib.parse import urlencode

import pytest
from webhelp import Visitor

from namewright.web.sent_number import sent_number

HUGE = "9" * 5000  # Python makes no number of so many figures


@pytest.mark.parametrize(("text", "number"), [
    ("0", 0), ("7", 7), ("007", 7), ("9" * 18, 10**18 - 1), ("9" * 19, None), (HUGE, None), ("", None), ("-1", None),
    ("1.5", None), ("²", None), ("٣", None), ("1e9", None)])
def test_only_what_can_be_kept_is_a_number(text: str, number: int | None) -> None:
    assert sent_number(text) == number


@pytest.mark.parametrize("path", [
    f"/seen?open={HUGE}", f"/picture/1/row.svg?draft-{HUGE}=x",
    "/picture/1/pages?" + urlencode({"draft-1": "a=1&" * 500})])
def test_an_address_with_too_much_is_answered(settled: Visitor, path: str) -> None:
    assert settled.get(path).status_code < 500


@pytest.mark.parametrize(("path", "form"), [
    ("/class/choices/undo", {"after": HUGE}), ("/child/1/lines", {"after": HUGE}),
    ("/class/week/seats", {"one": HUGE, "other": "1", "wish": "apart"}),
    ("/class/week/seats", {"one": "9" * 19, "other": "1", "wish": "apart"}),
    ("/child/1/seen", {"letter": HUGE, "day": "2026-01-05"}), ("/child/1/seen", {"of": "9" * 19, "letter": "0"}),
    ("/class/choices", {"hand": "1,1"}), ("/class/choices", {"paper": "zz"}), ("/print", {"what": "zz"})])
def test_a_form_with_what_no_form_of_ours_sends_is_answered(settled: Visitor, path: str, form: dict[str, str]) -> None:
    assert settled.post(path, form).status_code < 500
