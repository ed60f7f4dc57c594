"""Things to buy and to do below a word for them are nobody; names there and behind the next empty line are children."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster


@pytest.mark.parametrize(("over", "things"), [
    ("To buy:", ("paint", "new scissors")), ("Shopping list", ("crayons", "felt")), ("Pendiente:", ("tijeras", "tiza")),
    ("À faire :", ("craie", "photocopies du mot")), ("Einkaufen", ("Buntpapier", "Kreide")),
    ("Da fare:", ("gesso", "fotocopie")), ("Lembretes", ("giz", "tintas")),
    ("Don’t forget:", ("glue sticks", "paint")), ("Don't forget", ("glue sticks", "paint"))])
@pytest.mark.parametrize("box", ["☐ ", "- [ ] ", "• ", "", "○ "])
@pytest.mark.parametrize("first", [True, False])
def test_things_are_no_children(over: str, things: tuple[str, str], box: str, *, first: bool) -> None:
    jobs = "\n".join([over, *(box + thing for thing in things)])
    names = "\n".join(box + name for name in ("Mira Vost", "Xobrel Quix", "Leo Tarn"))
    roster = read_roster(f"{jobs}\n\n{names}" if first else f"{names}\n\n{jobs}")
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo"]
    told = [report for report in roster.lines if report.outcome in (Outcome.HEADING, Outcome.LEFT_OUT)]
    assert len(told) == len(things) + 1
    for report in told:
        assert {note.key for note in report.notes} in ({"roster.sentence", "roster.if_child"}, {"roster.unlike"})


def test_who_stands_there_is_a_child_or_asked_about() -> None:
    roster = read_roster("Mira Vost\nLeo Tarn\n\nTo do:\nIda Moss\nXobrel Quix\nmia\n\nZoe Fenn")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida", "Zoe"]
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == ["Xobrel Quix", "mia"]


def test_who_does_what_for_the_class_is_a_child() -> None:
    for names in (("Mia V.", "Leo T.", "Ana K."), ("Mia", "Leo", "Ana")):
        jobs = zip(("Quadro", "Plantas", "Livros"), names, strict=True)
        roster = read_roster("\n".join(("Tarefas", *(f"{job}: {name}" for job, name in jobs))))
        assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ana"]


def test_what_is_to_do_with_somebody_stays_asked_about() -> None:
    roster = read_roster("To do\nCall: Anna’s mum\nBuy: glue sticks\n\nMia\nLeo")
    assert [child.practice for child in roster.children] == ["Mia", "Leo"]
