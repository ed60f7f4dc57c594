"""Titles of works in quotation marks and what these are made of are no children; names to go by in such marks stay."""

from __future__ import annotations

import pytest

from namewright.roster.captions import from_captions
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

NAMES = [["Mia Vost", "Leo Berg", "Ava Tarn", "Tom Reed"],
         ["Xobrel Vemkassen", "Tarnul Dofrinov", "Mogat Lenviberg", "Outhna Pelkowala"],
         ["Xobrel", "Tarnul", "Mogat", "Outhna"]]
WORKS = [(("Rainy day", "My cat", "Night", "My cat"), ("clay", "collage", "clay", "collage"), "age {}",
          "Our exhibition"),
         (("Día de lluvia", "Mi gato", "La noche", "Mi gato"), ("barro", "cera", "barro", "cera"), "{} años",
          "Exposición – carteles"),
         (("Das blaue Haus", "Der Wal", "Nacht", "Der Wal"), ("Ton", "Collage", "Ton", "Ton"), "{} Jahre",
          "AUSSTELLUNG – SCHILDCHEN"),
         (("La maison bleue", "Mon chat", "La nuit", "Mon chat"), ("pastel", "argile", "pastel", "argile"), "{} ans",
          "Exposition – cartels")]
MARKS = [("“", "”"), ('"', '"'), ("«", "»"), ("„", "“")]
FORMS = ["{work}\n{name}, {age}\n{made}\n", "{name} (5): {work}, {made}", "{at}. {work} – {name}, {made}",
         "{name}, {age}\n{work}\n", "{at}. {work} – {name}", "{work} ({name})", "{name} – {work}"]


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("marks", MARKS)
@pytest.mark.parametrize(("works", "made", "age", "title"), WORKS)
@pytest.mark.parametrize("names", NAMES)
def test_each_child_beside_a_work(names: list[str], works: tuple[str, ...], made: tuple[str, ...], age: str, title: str,
                                  marks: tuple[str, str], form: str) -> None:
    rows = [form.format(at=at + 1, name=name, work=f"{marks[0]}{works[at]}{marks[1]}", made=made[at], age=age.format(5))
            for at, name in enumerate(names)]
    read = read_roster("\n".join((title, *rows)))
    assert [child.practice for child in read.children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("text", [
    'Katherine "Katie" Moss\nRobert "Rob" Vost\nElizabeth "Bess" Tarn',
    'Mia Vost, "Mimi"\nLeo Berg, "Lee"\nAva Tarn, "Avie"', '"Vost, Mia"\n"Berg, Leo"\n"Tarn, Ava"',
    'Table,Children\n1,"Mia, Leo Berg"\n2,"Ava, Tom Reed"\n3,"Xobrel, Tarnul"',
    '"Mia Vost" (5)\n"Leo Berg" (6)\n"Ava Tarn" (5)'])
def test_names_in_quotation_marks_stay(text: str) -> None:
    lines = [Line(row, at) for at, row in enumerate(text.split("\n"))]
    assert from_captions(lines) == lines
