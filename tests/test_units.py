"""Lengths as people write them, in millimetres; an inch is 25.4 mm exactly (international inch, 1959)."""

from __future__ import annotations

import time
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.message import Problem
from namewright.units import number, parse_length_mm

LENGTHS = [
    ("12", 12.0, "a bare number is millimetres"), ("12 mm", 12.0, "with its unit"), ("12.5mm", 12.5, "close to it"),
    ("1,5 cm", 15.0, "a decimal comma"), ("1 in", 25.4, "an inch"), ("2 inches", 50.8, "two"),
    ('1"', 25.4, "by its sign"),
    ("1″", 25.4, "by the right sign"), ("5/8 in", 15.875, "a fraction"), ("1 1/8 in", 28.575, "and a whole"),
    ("1-1/8 in", 28.575, "joined by a dash"), ("½ in", 12.7, "in one sign"), ("1½ in", 38.1, "behind a whole"),
    (" 3 / 4 in ", 19.05, "with spaces"), ("0", 0.0, "nothing"),
]


@pytest.mark.parametrize(("text", "mm", "why"), LENGTHS, ids=[row[2] for row in LENGTHS])
def test_a_length_is_read(text: str, mm: float, why: str) -> None:
    assert parse_length_mm(text) == pytest.approx(mm, abs=1e-9), why


@pytest.mark.parametrize("text", ["", "mm", "tall", "-5", "1/0 in", "12 furlongs", "1 2", "nan", "inf", "1e3",
                                  "1.2.3", "5/"])
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        parse_length_mm(text)


@given(st.integers(0, 99), st.integers(0, 63), st.sampled_from([2, 4, 8, 16, 32, 64]))
def test_every_fraction_of_an_inch_is_exact(whole: int, part: int, of: int) -> None:
    """As the rational number it is, times 25.4."""
    assert parse_length_mm(f"{whole} {part}/{of} in") == pytest.approx(float((whole + Fraction(part, of)) * 254 / 10))


@pytest.mark.parametrize(("value", "digits", "text"), [
    (1.0, 3, "1"), (1.5, 3, "1.5"), (-0.0001, 3, "0"), (0.0, 3, "0"), (1234.5678, 2, "1234.57"), (-2.50, 3, "-2.5"),
    (100.0, 0, "100"), (0.1 + 0.2, 3, "0.3"), (10.0, 3, "10")])
def test_a_number_is_written_one_way(value: float, digits: int, text: str) -> None:
    """No trailing zeros, no minus before nothing, and no whole number shortened."""
    assert number(value, digits) == text


@given(st.floats(-1e6, 1e6), st.integers(0, 6))
def test_what_is_written_reads_back(value: float, digits: int) -> None:
    assert float(number(value, digits)) == pytest.approx(value, abs=0.51 * 10 ** -digits)
    assert not number(value, digits).startswith("-0") or float(number(value, digits)) < 0


def test_what_is_far_too_long_is_refused_at_once() -> None:
    """Its figures were shared between the parts of a length in every way: half a million took minutes."""
    began = time.process_time()
    with pytest.raises(Problem):
        parse_length_mm("111." + "1" * 50_000 + "!")
    assert time.process_time() - began < 1
