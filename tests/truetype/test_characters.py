"""Which characters a font has, how its glyphs are called, and how wide its letters are."""

from __future__ import annotations

import pytest

from namewright.letters.alphabet import Alphabet
from namewright.lines.spacing import NATURAL_GAP
from namewright.truetype.characters import UNIT, Repertoire, glyph_name, names, repertoire_of


@pytest.fixture(scope="module")
def repertoire(alphabet: Alphabet) -> Repertoire:
    return repertoire_of(alphabet)


@pytest.mark.parametrize(("char", "name"), [
    ("A", "A"), ("é", "eacute"), ("ß", "germandbls"), ("7", "seven"), ("-", "hyphen"),  # Adobe Glyph List for New Fonts
    ("ẵ", "uni1EB5"), ("\u0327", "uni0327"),
])
def test_glyphs_are_called_as_the_list_has_it(char: str, name: str) -> None:
    """By the Adobe Glyph List, else by code point."""
    assert glyph_name(char) == name


def test_no_two_glyphs_share_a_name_or_a_cluster(repertoire: Repertoire) -> None:
    """Each is there once."""
    called = [*(letter.name for letter in repertoire.letters), *(mark.name for mark in repertoire.marks)]
    assert len(set(called)) == len(called)
    assert len({entry.cluster for entry in repertoire.letters}) == len(repertoire.letters)


def test_a_letter_is_as_wide_as_its_ink_and_the_usual_gap(repertoire: Repertoire, alphabet: Alphabet) -> None:
    """n goes from stem to stem; half of the gap stands at either side. Marks add nothing."""
    by_cluster = {entry.cluster: entry for entry in repertoire.letters}
    n, marked = by_cluster["n"], by_cluster["ñ"]
    x0, _, x1, _ = alphabet.letter("n").bounds()
    assert n.advance == round(UNIT * (x1 - x0 + NATURAL_GAP))
    assert n.shift + UNIT * x0 == pytest.approx(UNIT * NATURAL_GAP / 2, abs=0.5)
    assert (marked.advance, marked.shift, marked.base, marked.marks) == (n.advance, n.shift, "n", ("tildecomb",))


def test_letters_that_have_no_code_point_are_there(repertoire: Repertoire) -> None:
    """Yoruba's ẹ́ is two characters and one glyph; in capitals, too."""
    found = {entry.cluster: entry.name for entry in repertoire.letters}
    assert found["ẹ́"] == "uni1EB9_acutecomb"
    assert "Ẹ́" in found


def test_marks_are_told_by_where_they_hang(repertoire: Repertoire) -> None:
    """An acute hangs above, a cedilla below; a form that only some letters or marks bring has no character."""
    at = {attach: {mark.name for mark in repertoire.marks_at(attach)} for attach in repertoire.attachments()}
    assert "acutecomb" in at["top"]
    assert "uni0327" in at["bottom"]
    assert {mark.name for mark in repertoire.marks if mark.char is None} == {
        "uni030C.caronbeside", "uni0327.turnedcommaabove", "acutecomb.acutebyhat", "gravecomb.gravebyhat",
        "hookabovecomb.hookbyhat", "tildecomb.tildeoverbreve"}


def test_letters_on_one_base(repertoire: Repertoire, alphabet: Alphabet) -> None:
    """All of n, ñ, ń … stand on the n."""
    assert {"n", "ntilde", "nacute"} <= {entry.name for entry in repertoire.on(alphabet.glyphs["n"])}
    assert names(repertoire.letters[:2]) == f"[{repertoire.letters[0].name} {repertoire.letters[1].name}]"
