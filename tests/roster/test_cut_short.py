"""A given name that is written cut short is practised whole, or asked about; never the short form."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.cut_short import may_stand_for
from namewright.roster.parsing import read_roster

WHOLE = [
    ("Rubio, Mª José", "María José"), ("Cano, M.ª Carmen", "María Carmen"), ("Soto, Ma. Elena", "María Elena"),
    ("Vela, Fco. Javier", "Francisco Javier"), ("Gil, Fco Javier", "Francisco Javier"), ("Mª Rubio", "María"),
    ("Mª Nieves Rubio", "María Nieves"), ("Mª del Carmen Ruiz", "María del Carmen"),
    ("Rubio, Jse. Luis", "José Luis"),
    ("Leal, M. Carmen", "María Carmen"), ("M. Ángel Soto", "Miguel Ángel"), ("Durand, J.-Pierre", "Jean-Pierre"),
    ("M.-Claire Petit", "Marie-Claire"),
    ("Fco. Aya", "Francisco"), ("Mª Kowalski", "María"), ("Wm. de Vries", "William"), ("Chas. O'Neil", "Charles"),
    ("Geo. Nguyen", "George"), ("Xobrel, Robt.", "Robert"), ("Benj. Xobrel", "Benjamin"), ("Fdo. Kaya", "Fernando"),
    ("Nombre,Apellidos\nMª José,Rubio\nAna,Vela", "María José"), ("RUBIO, Mª ÁNGELES", "María Ángeles"),
]
UNSURE = ["Gil, J. Antonio", "J. Antonio Gil", "Dupont, J.-P.", "J.-P. Dupont", "Ruiz, Alej. David",
          "Petit, M.-Antoine", "K. Moss", "Moss, K.", "Max. Vost", "Joh. Kern", "Kern, Joh.", "Alex. Moss",
          "Ph. Petit", "Ant.o Vale", "G.nni Rossi", "Fr.co Silva", "J-P Durand", "J.P Durand",
          "Vorname,Nachname\nJoh.,Kern", "Nombre,Apellidos\nJ. Luis,Gil"]
AS_TYPED = [("Moss, Mira M.", "Mira"), ("A. J. Moss", "A. J."), ("Ma Li", "Ma"), ("Mira Ma", "Mira"),
            ("T.J. Moss", "T.J."), ("JP Moss", "JP"), ("Geo Moss", "Geo"), ("Mia D. Vost", "Mia")]


@pytest.mark.parametrize(("line", "name"), WHOLE)
def test_what_is_sure_is_written_out_and_told(line: str, name: str) -> None:
    roster = read_roster(line)
    assert roster.children[0].practice == name
    assert "roster.written_out" in [note.key for report in roster.lines for note in report.notes]


@pytest.mark.parametrize("line", UNSURE)
def test_what_may_be_several_names_is_asked_about(line: str) -> None:
    with pytest.raises(RosterError) as told:
        read_roster(line)
    assert [note.key for note in told.value.lines[-1].notes] == ["roster.cut_short"]


@pytest.mark.parametrize(("line", "name"), AS_TYPED)
def test_an_initial_elsewhere_and_a_name_that_is_short_stay(line: str, name: str) -> None:
    assert read_roster(line).children[0].practice == name


@pytest.mark.parametrize("other", ["João Silva", "Maria Silva", "SOTO, JOSE LUIS"])
def test_it_is_written_as_the_list_writes_its_names(other: str) -> None:
    """Portuguese has no accent on it, and neither has a list that leaves marks out."""
    assert read_roster(f"Souza, Mª Clara\n{other}").children[0].practice == "Maria Clara"
    assert read_roster("Souza, Mª Clara\nGarcía, José").children[0].practice == "María Clara"


def test_the_names_that_an_initial_may_stand_for_are_offered() -> None:
    assert may_stand_for("J.", "Gil, J. Antonio") == ("José", "Juan")
    assert may_stand_for("J.-P.", "J.-P. Dupont") == ()
