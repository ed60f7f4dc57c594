"""Who is said to have left is told and not made, in six languages; names, titles and lists of leavers stay."""

from __future__ import annotations

import time

import pytest

from namewright.roster.children import Outcome
from namewright.roster.leavers import without_leavers
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

GONE = ["left us", "moved away", "se ha mudado", "baja", "a déménagé", "weggezogen", "ausgetreten",
        "trasferito", "mudou de cidade", "left us in May", "weggezogen im März", "moved away 3/4"]
FORMS = ["{}: Owls → {}", "{} – Owls -> {}", "{} > {}", "{} => {}", "{}\tOwls\t{}", "{};Owls;{}", "{} | {} | 3"]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("gone", GONE)
def test_who_has_left_is_told(gone: str, form: str) -> None:
    names = [("Mira Vost", "Owls"), ("Xobrel Quix", gone), ("Leo Tarn", "Bears"), ("Ida Moss", "Bears")]
    roster = read_roster("\n".join(form.format(name, what) for name, what in names))
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
    assert [(line.outcome, line.notes[0].key) for line in roster.lines if "Xobrel" in line.text] == [
        (Outcome.HEADING, "roster.has_left")]


@pytest.mark.parametrize("text", ["Mira;Parti\nLeo;Tarn\nIda;Moss", "Mira Vost\nLeo Parti\nIda Moss",
                                  "Parti, Mira\nTarn, Leo\nMoss, Ida", "Name;Left us\nMira Vost;\nLeo Tarn;\nIda Moss;",
                                  "Mira Vost (new)\nLeo Tarn – moves in May\nIda Moss (moved here)",
                                  "Mira Vost → left us\nLeo Tarn → left us\nIda Moss → left us"])
def test_names_titles_and_a_list_of_leavers_stay(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ida"]


def test_where_two_may_stand_it_is_asked() -> None:
    roster = read_roster("Mira Vost, Ida Moss → moved away\nLeo Tarn\nXobrel Quix")
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [
        "Mira Vost, Ida Moss → moved away"]


@pytest.mark.parametrize("gone", ["gone", "parti", "abgemeldet", "saiu", "se fue"])
def test_what_may_be_of_the_day_is_asked(gone: str) -> None:
    roster = read_roster(f"Mira Vost\tbus 2\nXobrel Quix\t{gone}\nLeo Tarn\twalks")
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [f"Xobrel Quix\t{gone}"]


BESIDE = ["Xobrel Quix ({})", "Xobrel Quix - {}", "Xobrel Quix – {}", "Xobrel Quix, {}", "2. Xobrel Quix [{}]",
          "Quix, Xobrel ({})"]
GONE_BESIDE = ["moved away Sept", "left us", "moved away to Texas", "moved", "withdrawn", "moved to Elmham",
               "a déménagé", "weggezogen", "umgezogen", "se ha mudado", "baja", "mudou-se", "transferida", "trasferito",
               "ha cambiato scuola", "nicht mehr da"]


@pytest.mark.parametrize("form", BESIDE)
@pytest.mark.parametrize("gone", GONE_BESIDE)
def test_beside_a_name_it_is_asked_about(gone: str, form: str) -> None:
    """The child was made, and nothing was asked."""
    line = form.format(gone)
    roster = read_roster(f"Mira Vost\n{line}\nLeo Tarn\nIda Moss")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
    assert [(report.text, report.notes[0].key) for report in roster.lines if report.outcome is Outcome.LEFT_OUT] == [
        (line, "roster.has_left")]


@pytest.mark.parametrize("end", ["moved away", "left us in May", "ha cambiato scuola", "nicht mehr da"])
def test_in_small_letters_at_the_end_of_a_line_it_is_asked_about(end: str) -> None:
    roster = read_roster(f"Mira Vost {end}\nLeo Tarn\nIda Moss")
    assert [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT] == [f"Mira Vost {end}"]


def test_a_line_as_long_as_a_text_is_not_searched_from_each_of_its_dashes() -> None:
    """It took seconds: each dash might have parted a name from such words."""
    lines = [Line("a - " * 15_000 + "moved,(", 0), Line("Mira Vost", 1), Line("Leo Tarn", 2)]
    began = time.perf_counter()
    assert without_leavers(lines) == (lines, [])
    assert time.perf_counter() - began < 1
