"""What comes next for each child behind an arrow is no child and heads nothing."""

from __future__ import annotations

import pytest

from namewright.roster.arrows import from_arrows
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


@pytest.mark.parametrize(("schools", "sign"), [
    (("Oak Hill School", "Mill Road Primary"), "→"), (("École du Parc", "École Jean Moulin"), "->"),
    (("CEIP El Prado", "Colegio Santa Clara"), "⇒"), (("Lindenschule", "Grundschule Am Berg"), "=>"),
])
@pytest.mark.parametrize("names", [
    ("Mia V.", "Leo Z.", "Ava Q.", "Noah M.", "Theo T."),
    ("Xamim V.", "Berolt Z.", "Thouga Q.", "Quorrik M.", "Zandelle T."),
])
def test_each_line_is_a_child(names: tuple[str, ...], schools: tuple[str, str], sign: str) -> None:
    text = "\n".join(f"{name} {sign} {schools[at % 2]}" for at, name in enumerate(names))
    assert [child.practice for child in read_roster(text).children] == [name[:-3] for name in names]


def test_a_title_that_stands_apart_is_no_child() -> None:
    text = "** Orientation CP **\n" + "\n".join(f"{name} → École du Parc" for name in ("Xamim", "Berolt", "Thou", "Qu"))
    roster = read_roster(text)
    assert roster.lines[0].outcome is Outcome.HEADING
    assert [child.practice for child in roster.children] == ["Xamim", "Berolt", "Thou", "Qu"]


@pytest.mark.parametrize("names", [
    ("Mia V.", "Leo Z.", "Ava Q.", "Tom"), ("Tarn, Xobrel", "Quill, Vemka", "Vost, Tulmo", "Dravis, Mel")])
@pytest.mark.parametrize("said", [
    ("witch", "pirate, costume from school", "ghost", "superhero, no face paint"),
    ("avó", "prolongamento", "Prof. Vale", "avó Noémia (024 5550160), mãe")])
def test_small_words_behind_arrows_are_no_names(names: tuple[str, ...], said: tuple[str, ...]) -> None:
    """Be they each another: no word for a school among them heads a class, and no comma parts children."""
    text = "Saída\n" + "\n".join(f"{name} -> {word}" for name, word in zip(names, said, strict=True))
    bare = read_roster("\n".join(names)).children
    assert [child.practice for child in read_roster(text).children] == [child.practice for child in bare]


@pytest.mark.parametrize("text", [
    "Mia → Leo\nLeo → Mia\nAva → Noah\nNoah → Ava",  # wishes
    "Lights → Mia\nDoor → Leo\nPlants → Mia\nBoard → Leo",  # jobs
    "Monday → Room 4\nMonday → Room 5\nMonday → Room 4\nMonday → Room 5",  # nothing there comes once
])
def test_other_arrows_stay_as_they_are(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_arrows(lines) == lines


@pytest.mark.parametrize("sign", [" -> ", " – ", " → ", ": "])
@pytest.mark.parametrize("schools", [
    ("Lakeview School", "Mill Road School", "Oak Hill Primary", "St Anne's School", "moving away"),
    ("Escuela El Pinar", "Colegio Monte", "Colegio Sur", "Escuela Nueva", "se muda"),
    ("École du Port", "École des Lilas", "École Neuve", "École Sud", "déménage"),
])
@pytest.mark.parametrize("names", [("Peildair C.", "Löntan Y.", "Saieith P.", "Xiathfia T.", "Hialá M."),
                                   ("Mia", "Leo", "Ava", "Noah", "Ida")])
def test_a_school_that_comes_once_is_no_class(sign: str, schools: tuple[str, ...], names: tuple[str, ...]) -> None:
    """Whoever went to one alone was lost behind a heading."""
    text = "\n".join(f"{name}{sign}{school}" for name, school in zip(names, schools, strict=True))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("sign", [": ", " – "])
def test_few_schools_beside_who_moves_away_are_enough(sign: str) -> None:
    said = ("Mill Road School", "not decided", "moving away", "?", "Lakeview", "Oak Hill Primary")
    names = ("გიგა გოგია", "ნანა კუპრაშვილი", "ელენა წერეთელი", "მალხაზ ცხადაძე", "ელენე სიჭინავა", "ჟანა ცაავა")
    text = "\n".join(f"{name}{sign}{what}" for name, what in zip(names, said, strict=True))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]
