"""How hard a letter and a name are: bands, borrowed figures, the own initial, and the sum."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.difficulty import (
    WORKLOAD_PER_LETTER,
    WORKLOAD_PER_SIGN,
    WORKLOAD_PER_TWINS,
    Band,
    NameDifficulty,
    band_of,
    letter_difficulty,
    name_difficulty,
    own_initial_gain,
    written_signs,
)
from namewright.practice.evidence import load_evidence

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyzÉèñÅőŁøß"
NAMES = st.text(LETTERS, min_size=1, max_size=14)


def plain_work(rating: NameDifficulty) -> float:
    extra = rating.small_signs * WORKLOAD_PER_SIGN + len(rating.twins) * WORKLOAD_PER_TWINS
    return round(rating.workload - extra, 6)


@pytest.mark.parametrize(("letter", "band"), [
    ("O", Band.EASIER), ("o", Band.EASIER), ("b", Band.EASIER),
    ("X", Band.MIDDLE),   # on the edge, which belongs to the middle
    ("N", Band.MIDDLE),   # on the other edge
    ("U", Band.HARDER), ("V", Band.HARDER),
    ("Q", Band.MIDDLE), ("Z", Band.MIDDLE), ("K", Band.MIDDLE), ("J", Band.MIDDLE),
    ("q", Band.HARDER), ("z", Band.HARDER), ("u", Band.HARDER), ("j", Band.HARDER), ("k", Band.HARDER),
    ("v", Band.MIDDLE),   # harder to name, easy to write
    ("g", Band.MIDDLE),   # hard in one writing list only
    ("é", Band.MIDDLE), ("ö", Band.EASIER), ("ü", Band.HARDER), ("ž", Band.HARDER),
    ("ł", Band.MIDDLE), ("ß", Band.MIDDLE), ("ı", Band.MIDDLE), ("ʻ", Band.MIDDLE), ("7", Band.MIDDLE),
    ("и", Band.MIDDLE),
])
def test_letter_bands(letter: str, band: Band) -> None:
    """Each kind of letter falls in the band the module header gives it."""
    assert letter_difficulty(letter).band is band


@pytest.mark.parametrize("letter", LETTERS)
def test_band_is_the_band_of_the_figure(letter: str) -> None:
    """Figure and band of a letter never contradict each other."""
    for own in (False, True):
        rated = letter_difficulty(letter, own_initial=own)
        assert rated.band is band_of(rated.figure)


@pytest.mark.parametrize("letter", LETTERS)
def test_own_initial_is_easier(letter: str) -> None:
    """A child's own initial is in the easier band and easier than the same letter inside a name."""
    own = letter_difficulty(letter, own_initial=True)
    assert own.figure < letter_difficulty(letter).figure
    assert own.band is Band.EASIER


def test_own_initial_gain_is_one_for_all() -> None:
    """The gain is the mean over the 22 letters that have a figure, 0.77, whichever the letter."""
    gains = [item.own_initial_gain for item in load_evidence().capitals.values() if item.own_initial_gain is not None]
    assert len(gains) == 22
    assert own_initial_gain() == pytest.approx(sum(gains) / 22, abs=0.005)
    assert own_initial_gain() == 0.77
    shifts = {letter: letter_difficulty(letter).figure - letter_difficulty(letter, own_initial=True).figure
              for letter in "AGHMV"}
    assert all(shift == pytest.approx(0.77) for shift in shifts.values())


def test_letters_of_a_band_count_alike() -> None:
    """The page tells three bands, and nothing finer than a band decides."""
    assert len({letter_difficulty(letter).figure for letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ"}) == 3


@pytest.mark.parametrize(("letter", "words"), [
    ("z", "second-hand"), ("v", "second-hand"), ("e", "capital"), ("é", "mark has no figure"),
    ("ø", "no published figure"), ("E", "naming figure"),
])
def test_a_borrowed_figure_says_so(letter: str, words: str) -> None:
    """A letter's note names what its figure rests on."""
    assert words in letter_difficulty(letter).note


def test_a_name_worked_by_hand() -> None:
    """Mira: M as own initial, i and r from the middle band, a from the easier one, and four letters of work.

    The middle band's mean is −0.4675, the easier one's −0.995; the own initial gains 0.77.
    """
    mira = name_difficulty("Mira")
    assert [each.letter for each in mira.letters] == ["M", "i", "r", "a"]
    assert mira.letter_part == pytest.approx((-0.4675 - 0.77 - 0.4675 - 0.4675 - 0.995) / 4, abs=0.0051)
    assert mira.workload == pytest.approx(4 * 0.05)
    assert mira.difficulty == pytest.approx(mira.letter_part + mira.workload)


def test_seven_letters_weigh_as_much_as_the_middle_band_is_wide() -> None:
    """The workload of a long name takes a letter from the middle band's lower edge to its upper one."""
    assert pytest.approx(0.35 / 7) == WORKLOAD_PER_LETTER


@given(NAMES, st.data())
def test_a_repeated_letter_is_work_but_no_new_letter(name: str, data: st.DataObject) -> None:
    """Adding a letter the name has already leaves the letter part as it is and adds one letter of work."""
    again = data.draw(st.sampled_from(written_signs(name)))
    before, after = name_difficulty(name), name_difficulty(name + again)
    assert after.letter_part == before.letter_part
    marks = after.small_signs - before.small_signs
    assert after.workload == pytest.approx(before.workload + WORKLOAD_PER_LETTER + marks * WORKLOAD_PER_SIGN)
    assert after.difficulty > before.difficulty


@given(NAMES, NAMES)
def test_a_longer_name_never_has_less_workload(one: str, other: str) -> None:
    """Marks and twins aside, workload grows with length and with nothing else."""
    first, second = name_difficulty(one), name_difficulty(other)
    assert (plain_work(first) < plain_work(second)) == (first.length < second.length)


@given(NAMES)
def test_a_harder_new_letter_makes_a_name_harder(name: str) -> None:
    """Adding V, harder than every other letter, never makes a name easier; nor does its band fall."""
    before, after = name_difficulty(name), name_difficulty(name + "V")
    assert after.difficulty > before.difficulty
    assert list(Band).index(after.band) >= list(Band).index(before.band)


@pytest.mark.parametrize(("name", "length"), [
    ("Jean-Luc", 7), ("Ada Bo", 5), ("D’Orla", 5), ("Keʻalo", 6), ("Zoë", 3), ("Q\u0302ara", 4),
    ("", 0), ("– –", 0),
])
def test_length_counts_letters_only(name: str, length: int) -> None:
    """Spaces, hyphens and apostrophes are not letters; a letter with its mark is one; the ʻokina is one."""
    assert name_difficulty(name).length == length


def test_a_name_with_nothing_to_write_is_no_error() -> None:
    """No letters: the middle band, no work."""
    empty = name_difficulty("- -")
    assert (empty.letters, empty.workload, empty.band) == ((), 0.0, Band.MIDDLE)


@pytest.mark.parametrize(("name", "small", "twins"), [
    ("Mira", 0, ()), ("Zoë", 1, ()), ("Jean-Luc", 1, (("n", "u"),)), ("Ana María", 2, ()), ("D’Orla", 1, ()),
    ("Bobda", 0, (("b", "d"),)), ("Bd", 0, ()), ("- -", 0, ()), ("Ẹ̀b", 2, ()),
])
def test_marks_gaps_and_mirror_twins_are_work(name: str, small: int, twins: tuple[tuple[str, str], ...]) -> None:
    """Marks, spaces, hyphens and apostrophes are counted, and twins of one case that meet in the name."""
    rating = name_difficulty(name)
    assert (rating.small_signs, rating.twins) == (small, twins)
    assert rating.workload == pytest.approx(0.05 * rating.length + 0.02 * small + 0.05 * len(twins))
