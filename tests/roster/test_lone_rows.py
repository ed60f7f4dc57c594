"""Lines of one cell in a table with titles: over a group, about a sign, at the end of a mail; or a child."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

TITLES = ["First name\tLast name\tBus", "Nombre\tApellidos\tGrupo", "Prénom\tNom\tClasse", "Vorname\tNachname\tKlasse",
          "Nome\tCognome\tMensa", "Nome próprio\tApelido\tTurma"]
ROWS = ["Mira\tVost\tA", "Xobrel\tQuix\tB", "Leo\tTarn\tA"]


def _made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("titles", TITLES)
@pytest.mark.parametrize("group", ["Ladybugs", "GS", "Tortugas", "Die Igel", "Sezione Farfalle"])
def test_a_name_right_over_titles_that_come_again_is_a_groups(titles: str, group: str) -> None:
    text = "\n".join(["Bumblebees", titles, *ROWS[:2], "", group, titles, ROWS[2], "Ida\tMoss\tB"])
    assert _made(text) == ["Mira", "Xobrel", "Leo", "Ida"]
    told = next(line for line in read_roster(text).lines if line.text.strip(" :") == group)
    assert told.outcome is Outcome.HEADING


@pytest.mark.parametrize("titles", TITLES)
@pytest.mark.parametrize("end", [("Thanks,", "Carla Mound", "Office Manager"), ("¡Un saludo!", "Rosario"),
                                 ("Bonne rentrée !", "Brigitte"), ("Viele Grüße", "Marion Teske"),
                                 ("Cari saluti,", "Ines"), ("Beijinhos,", "Graça Leitão", "Secretaria")])
def test_who_wrote_the_mail_below_a_table_is_no_child(titles: str, end: tuple[str, ...]) -> None:
    text = "\n".join([titles, *ROWS, "", *end])
    assert _made(text) == ["Mira", "Xobrel", "Leo"]
    assert all(line.notes for line in read_roster(text).lines[-len(end) :])


@pytest.mark.parametrize("note", ["† shares time with Room 6", "† comparte con otro grupo", "† part à midi"])
def test_what_a_sign_behind_a_name_means_is_no_child(note: str) -> None:
    text = "\n".join(["Name\tBus", "Vost, Mira\t4", "Quix, Xobrel†\t7", "Tarn, Leo\t4", note])
    assert _made(text) == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("added", ["Ida Moss", "Ida"])
def test_who_was_added_by_hand_is_a_child(added: str) -> None:
    assert _made("\n".join([TITLES[0], *ROWS, "", added])) == ["Mira", "Xobrel", "Leo", "Ida"]
    assert _made("\n".join([TITLES[0], ROWS[0], added, *ROWS[1:]])) == ["Mira", "Ida", "Xobrel", "Leo"]


@pytest.mark.parametrize("titles", TITLES)
@pytest.mark.parametrize("groups", [("CE1", "CE2"), ("P1", "P2"), ("3 ANNI", "4 ANNI"), ("4 ans", "5 ans"),
                                    ("3 Jahre", "4 Jahre"), ("3-4 anos", "5-6 anos"), ("K-1", "K-2")])
def test_the_code_of_a_class_or_an_age_is_a_heading(titles: str, groups: tuple[str, str]) -> None:
    text = "\n".join([titles, groups[0], *ROWS[:2], groups[1], ROWS[2], "Ida\tMoss\tB"])
    assert _made(text) == ["Mira", "Xobrel", "Leo", "Ida"]
    told = [line for line in read_roster(text).lines if line.text.strip() in groups]
    assert [line.outcome for line in told] == [Outcome.HEADING] * 2


def test_a_girl_called_as_years_are_is_a_child() -> None:
    assert _made("\n".join([TITLES[3], *ROWS, "4 Anni"])) == ["Mira", "Xobrel", "Leo", "Anni"]


def test_a_word_of_no_name_over_another_block_is_asked_about() -> None:
    text = "First,Last,Bus\nMira,Vost,4\nLeo,Tarn,7\n,,\n{},,\nIda,Moss,4"
    office, rosa = read_roster(text.format("Office")), read_roster(text.format("Rosa"))
    assert [child.practice for child in office.children] == ["Mira", "Leo", "Ida"]
    assert office.lines[4].outcome is Outcome.LEFT_OUT
    assert [child.practice for child in rosa.children] == ["Mira", "Leo", "Rosa", "Ida"]
