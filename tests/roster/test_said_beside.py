"""What children say of themselves, like, and live with comes off beside their names, who are the children."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.said_beside import from_said_beside

NAMES = ("Mia Vost", "Tilo Berg", "Xobrel Tarn", "Ada Quill")


def read(lines: list[str]) -> list[tuple[str, str]]:
    roster = read_roster("\n".join(lines))
    assert read_roster(roster.text or "\n".join(lines)).children == roster.children
    return [(child.given, child.family) for child in roster.children]


@pytest.mark.parametrize("told", [
    "My name is {}. I like red.", "I am {} and I like tigers.", "Me llamo {}. Me gusta azul.", "Soy {}, tengo 5 años.",
    "Je m'appelle {}. J'aime violet.", "Je suis {}.", "Ich heiße {}. Ich mag Wolf.", "Ich bin {}!",
    "Mi chiamo {}. Mi piace il riso.", "Eu chamo-me {}. Eu gosto de leão.", "Meu nome é {}. Eu gosto de azul."])
def test_who_a_child_says_it_is_is_the_child(told: str) -> None:
    assert read([told.format(name) for name in NAMES]) == [tuple(name.split()) for name in NAMES]


@pytest.mark.parametrize("words", [
    ("red / tiger / rice", "blue / lion / rice"), ("azul, tigre, pasta", "rojo, león, pasta"),
    ("rot / Pferd / Reis", "blau / Pferd / Reis"), ("rosa · leone · riso", "blu · leone · riso")])
@pytest.mark.parametrize("sign", [": ", " – "])
def test_what_a_child_likes_is_nobody(words: tuple[str, str], sign: str) -> None:
    assert read([f"{name}{sign}{words[at % 2]}" for at, name in enumerate(NAMES)]) == [
        tuple(name.split()) for name in NAMES]


@pytest.mark.parametrize("told", [
    "Ana (mum) / Leo (dad)", "week A: Ana (mum), week B: Leo (dad)", "mamá / papá",
    "Semaine A: maman, Semaine B: Marc (papa)", "Woche A: Mama, Woche B: Oma",
    "Ana (mamma) / Leo (papà)", "mãe / avó", "tía / abuelo", "zia / nonna", "papi / tata"])
@pytest.mark.parametrize("sign", [": ", " – "])
def test_with_whom_a_child_lives_is_nobody(told: str, sign: str) -> None:
    assert read([name + (sign + told if at else "") for at, name in enumerate(NAMES)]) == [
        tuple(name.split()) for name in NAMES]


def test_who_a_child_lives_with_is_told_beside_it() -> None:
    lines = [Line(text, at) for at, text in enumerate(("Mia: tía / abuelo", "Xobrel: tío / mamá", "Leo: tía / papá"))]
    found = from_said_beside(lines)
    assert [line.text for line in found] == ["Mia", "Xobrel", "Leo"]
    assert all(line.notes for line in found)


@pytest.mark.parametrize("text", [
    "Red table: Mia / Leo / Ava\nBlue table: Ben / Tom / Ida\nGreen table: Uma / Max / Zoe\nPink table: Ada / Ivo / Li",
    "Monday: maths / art\nTuesday: art / music\nWednesday: maths / music\nThursday: art / maths",
    "Owls: Mia, Leo, Ava\nBears: Ben, Tom, Ida\nFoxes: Uma, Max, Zoe\nHares: Ada, Ivo, Lea",
    "Monday: mum\nTuesday: dad\nWednesday: gran", "I am Mia\nLeo\nAva\nBen\nTom"])
def test_children_behind_labels_and_days_stay(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert from_said_beside(lines) == lines
