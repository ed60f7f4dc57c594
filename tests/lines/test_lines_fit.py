"""Fit without lies: natural, then tighter, then turned, then two rows; where nothing fits, both widths are told."""

from __future__ import annotations

import pytest

from namewright.letters.alphabet import upright
from namewright.lines.fit import DoesNotFit, Fit, fit_name
from namewright.lines.ruling import preset
from namewright.lines.setting import RuledLetters

CASE = RuledLetters(upright(), preset("us-3/4"))
NAME = "Ottilka"
NATURAL, TIGHT = (CASE.line(NAME, tightness=tightness).width_mm for tightness in (0.0, 1.0))


def texts(fit: Fit) -> tuple[str, ...]:
    """Return what stands in each row."""
    return tuple(line.text for line in fit.lines)


def test_a_name_is_natural_where_it_fits() -> None:
    """Given its natural width a name is neither tightened nor turned nor broken; a hair less and it is tightened."""
    assert fit_name(NAME, CASE, (NATURAL,)) == Fit((CASE.line(NAME),), False)
    tighter = fit_name(NAME, CASE, (NATURAL - 0.01, 900))
    assert (texts(tighter), tighter.turned) == ((NAME,), False)
    assert TIGHT <= tighter.width_mm < NATURAL


def test_a_page_is_turned_before_a_name_is_broken() -> None:
    """Too wide even when tight, a name lies on the turned page if it fits there, and natural if there is room."""
    turned = fit_name(NAME, CASE, (TIGHT - 0.01, NATURAL))
    assert turned == Fit((CASE.line(NAME),), True)


def test_a_name_is_broken_at_a_beat() -> None:
    """With no wider page the name goes over two rows, natural if it can, in the parts that are as even as may be."""
    broken = fit_name(NAME, CASE, (TIGHT - 0.01,))
    assert "".join(texts(broken)) == NAME
    assert len(broken.lines) == 2
    assert broken.width_mm <= TIGHT - 0.01
    assert [line.width_mm for line in broken.lines] == [CASE.line(text).width_mm for text in texts(broken)]


def test_a_double_name_is_broken_at_its_space() -> None:
    """The space stands on neither row."""
    assert texts(fit_name("Mira Sol", CASE, (CASE.line("Mira").width_mm + 1,))) == ("Mira", "Sol")


def test_what_fits_nowhere_is_told_with_both_widths() -> None:
    """The width told is that of the narrowest way to break the name, and no smaller room would do."""
    with pytest.raises(DoesNotFit) as caught:
        fit_name(NAME, CASE, (20.0, 25.0))
    assert caught.value.room_mm == 25.0
    assert fit_name(NAME, CASE, (caught.value.needed_mm,)).width_mm == pytest.approx(caught.value.needed_mm)
    with pytest.raises(DoesNotFit):
        fit_name(NAME, CASE, (caught.value.needed_mm - 0.01,))
