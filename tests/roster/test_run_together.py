"""Two children of a line are never one in silence, be their names on a list or on none."""

from __future__ import annotations

import random

import pytest

from made_lists.people import INVENTED, TUNED, people
from namewright.roster import parsing
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.store import forget_names

SINGLE = ("Kwamou", "Dilthe", "Zuthe", "Mia", "Rintov", "Lysaro", "Ava")
WHOLE = ("Kwamou Orm", "Dilthe Pask", "Mia Vost", "Rintov Sal", "Lysaro Gund", "Ava Tarn")
SIGNS = (" ~ ", "~", " * ", " > ", " < ", " 🌟 ", " ♥ ", " \\ ", " ■ ", " ▸ ", " ✓ ", " ^ ", " ◆ ", " @ ", " _ ", " ★ ")
WORDS = (" with ", " mit ", " avec ", " con ", " com ", " x ", " vs ")


def asked(text: str) -> list[str]:
    """Return the lines that are left out until somebody answers."""
    try:
        lines = read_roster(text).lines
    except RosterError as error:
        lines = error.lines
    return [report.text for report in lines if report.outcome is Outcome.LEFT_OUT]


@pytest.mark.parametrize("sign", [*SIGNS, *WORDS])
def test_a_sign_or_a_word_that_no_name_has_parts_two(sign: str) -> None:
    single, whole = f"Xobrel{sign}Vemka", f"Xobrel Vank{sign}Vemka Torl"
    assert single in asked("\n".join((*SINGLE[:3], single, *SINGLE[3:])))
    assert whole in asked("\n".join((*WHOLE[:3], whole, *WHOLE[3:])))
    every = [f"{one}{sign}{two}" for one, two in zip(SINGLE[::2], SINGLE[1::2], strict=False)]
    assert asked("\n".join(every)) == every or sign == " avec "  # which is told as a remark


def test_so_are_three_parted() -> None:
    assert asked("\n".join((*SINGLE, "Xobrel ~ Vemka ~ Tovian"))) == ["Xobrel ~ Vemka ~ Tovian"]


def test_a_word_of_a_family_name_may_stand_in_one_and_parts_two_whole_ones() -> None:
    both = "Xobrel Vank y Vemka Torl"
    assert asked("\n".join((*WHOLE, both))) == [both]
    assert not asked("\n".join((*WHOLE, "Ana Ruiz y Gómez")))


@pytest.mark.parametrize("gap", ["  ", "     ", "\t"])
def test_a_gap_parts_two(gap: str) -> None:
    both = f"Xobrel Vank{gap}Vemka Torl"
    assert asked("\n".join((*WHOLE, both))) == [both]
    assert asked("\n".join((*SINGLE, "Xobrel  Vemka"))) == ["Xobrel  Vemka"]
    assert not asked("\n".join((*WHOLE, "Xobrel  Vemka")))  # typed in haste


def test_more_words_than_the_others_have_are_asked_about() -> None:
    assert asked("\n".join((*SINGLE, "Xobrel Vemka"))) == ["Xobrel Vemka"]
    assert asked("\n".join((*SINGLE, "Ida Emil"))) == ["Ida Emil"]
    assert asked("\n".join((*WHOLE, "Xobrel Vank Vemka Torl"))) == ["Xobrel Vank Vemka Torl"]


@pytest.mark.parametrize("line", [
    "Ida Berger", "Xobrel Vankowski", "Mary Kate", "Xobrel de Vank", "Xobrel V.", "Mia Torl"])
def test_a_whole_or_a_double_name_among_single_ones_is_one_child(line: str) -> None:
    assert not asked("\n".join((*SINGLE, line)))


@pytest.mark.parametrize("line", [
    "María José Ruiz Gómez", "Xobrel van de Vank", "Xobrel Vemka Tor Vank", "Jan Van de Velde"])
def test_a_long_name_among_whole_ones_is_one_child(line: str) -> None:
    assert not asked("\n".join((*WHOLE, line, "Xobrel Anna Vank", "Zuthe Ruiz Vemka")))


def test_a_group_with_a_row_of_words_holds_several() -> None:
    for label in ("Table", "Tisch", "Mesa", "Tavolo", "Groupe", "Equipa"):
        lines = [f"{label} 1: Kwamou Dilthe Lysaro", f"{label} 2: Xobrel Vemka Zuthe", f"{label} 3: Mia Leo Ava"]
        assert len(asked("\n".join(lines))) == len(lines)
    assert not asked("Table 1: Mia Vost\nTable 2: Xobrel Vemka\nTable 3: Ava Berger")


def test_two_given_names_behind_a_day_are_two_children() -> None:
    days = ["Monday: Mia Leo", "Tuesday: Xobrel Vemka", "Wednesday: Ava Noah"]
    assert len(asked("\n".join(days))) == len(days)
    assert not asked("Monday: Mia Vost\nTuesday: Xobrel Vemka\nWednesday: Ava Berger")


def test_a_word_in_bold_an_initial_and_a_teacher_are_no_second_child() -> None:
    assert not asked("- **Mia** Vost\n- **Xobrel** Vank\n- **Ava** Tarn")
    assert not asked("Mia_V\nXobrel_T\nAva_R")
    assert not asked("Xobrel Vank ► Ms Vale\nMia Vost ► Ms Vale\nAva Tarn ► Ms Vale")


def clean_list(rng: random.Random) -> tuple[str, int]:
    """Return a list of one child a line, a quarter of them on no list of names, and how many they are."""
    count = rng.randrange(8, 22)
    kept = [rng.choice(pair) if rng.random() < 0.5 else pair[0] for pair in zip(
        people(rng, rng.choice(TUNED), count), people(rng, INVENTED, count), strict=False)]
    form = rng.choice(("{0} {1}", "{0}", "{1}, {0}", "{0} {2}.", "{0}\t{1}", "{0}  {1}"))
    lines = [form.format(one.given, one.family, one.family[0]) for one in kept]
    if form == "{0} {1}":
        lines = [f"{line} {rng.choice(kept).family}" if rng.random() < 0.3 else line for line in lines]
    return "\n".join(lines), len(lines)


def test_one_child_a_line_is_hardly_ever_asked_about(monkeypatch: pytest.MonkeyPatch) -> None:
    lists = [clean_list(random.Random(f"clean {at}")) for at in range(150)]
    found = sum(len(asked(text)) for text, _ in lists)
    forget_names()
    monkeypatch.setattr(parsing, "asked_together", lambda drafts, found, typed: drafts)
    before = sum(len(asked(text)) for text, _ in lists)
    forget_names()
    assert found - before <= 0.005 * sum(count for _, count in lists)
