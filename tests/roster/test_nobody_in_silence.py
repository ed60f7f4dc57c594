"""Lists in which somebody was lost, merged or misnamed without a word: found by reading very many made ones."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, Roster
from namewright.roster.parsing import read_roster


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


def said(roster: Roster) -> list[str]:
    return [note.key for note in roster.notes]


READ = [
    ("Mira,Vost,2021-08-12\nMartin,Kind,2021-04-12\nTilo,Hoop,2021-07-12\nAnna,Tarn,2021-05-12",
     "Mira Martin Tilo Anna",
     "a family called as a column is, beside a given name that is a family name too"),
    ("1,Vost,Mira,F,2021-10-18\n2,Hoop,Xobrel,M,2021-09-21\n3,Schuler,Quemda,M,2021-08-09", "Mira Xobrel Quemda",
     "such a family beside a birthday"),
    ("24\tMarcin\tSchuler\n23\tMira\tRey\n25\tTilo\tTarn", "Marcin Mira Tilo", "in a numbered table"),
    ("10\tXobrel\tGunpf\t\tbees\n8\tIvo\tVost\t\n18\tMira\tHenck\t\twalker\n12\tTilo\tKeller\t", "Xobrel Ivo Mira Tilo",
     "a name on no list in the first row, beside a number as all have one"),
    ("Abaan Ihsaan | Mum Ibn\nEijaz Tahir | Mum Kaiser\nYesoob Maalik | Mum Madyan\nOmeir Madiyan | Mum Baha",
     "Abaan Eijaz Yesoob Omeir",
     "a first row whose cell opens as those below do"),
    ("Xobrel Vank\tvegetarian\nZuthe Menk\tMenu 1\nRin Tovel\tMenu 1\nKwamou Dil\tMenu 1", "Xobrel Zuthe Rin Kwamou",
     "words over words with a figure"),
    ("l)  Xobrel Vank |\n2)  Zuthe Menk\n3 .  Rin Tovel\n4 .  Kwamou Dil _", "Xobrel Zuthe Rin Kwamou",
     "numbers read from a photo, with wide spaces behind"),
    ("I. Mira Vost\nII. Tilo Tarn\nIV. Anna Rey\nV. Ben Quill", "Mira Tilo Anna Ben", "a number is missing"),
    ("Ola Berntsen, no pork\nSara Knudsen\nVegard Lien, half days\nNina Vik", "Ola Sara Vegard Nina",
     "a given name that is a greeting elsewhere"),
    ("- Team Blue\n  - Mira\n  - Rut\n- Team Red\n  - Åge\n  - Tilo", "Mira Rut Åge Tilo",
     "names that are words of columns elsewhere"),
    ("Åge (5), Mira (4), Anna (4), Tilo (5)", "Åge Mira Anna Tilo", "in one line with ages"),
    ("- name: Mira Vost\n- name: Tess Room\n- name: Tilo Tarn", "Mira Tess Tilo", "a family called Room"),
    ("⭐ Juliette Room\n⭐ Nick\n⭐ Mira Vost", "Juliette Nick Mira", "behind a picture"),
    ("Vost, Sylvie – no photos please\nTarn, Alex\nRey, Anna\nQuill, Ben – bitte kein Ei", "Sylvie Alex Anna Ben",
     "a request behind a name"),
    ("Xobrel Vank, Berries\nZuthe Menk, Walker\nRin Tovel\nKwamou Dil, fragole\nLysa Orm, Reflux",
     "Xobrel Zuthe Rin Kwamou Lysa", "remarks behind whole names that are on no list"),
    ("Xobrel Vank, Mo-Mi\nZuthe Menk, VM\nRin Tovel, ganztags\nKwamou Dil, VM", "Xobrel Zuthe Rin Kwamou",
     "days behind such names"),
    ("xobrel vanksa - ask mom\nzuthe menka - sai cedo\nrin tovela\nkwamou dila - ask mom", "Xobrel Zuthe Rin Kwamou",
     "small names are no labels of small remarks"),
    ("Ndung'u.K\nMira.V\nTilo.T\nAnna.R", "Ndung'u Mira Tilo Anna", "an initial by a dot behind a short word"),
    ("25\tXobrel\tZoltaisen\t\t\n4\tOpén\tMenkov\t\n23\tZuthe\tVankov\t\t\n4\tRin\tTovian\t\ta avó busca",
     "Xobrel Opén Zuthe Rin", "numbers that do not count are no rows of seats, and Opén no free one"),
    ("אופיר רם\nחורי קרן (morangos)\nכחלון עבד (Bienen)\nזכריה קורל", "רם קרן עבד קורל",
     "remarks in brackets keep nobody from seeing that family names stand first"),
    ("آل معيض تقي\nالمهنا نزار\nالجابر طه\nالراشد هلالي", "تقي نزار طه هلالي", "a family name of two words first"),
    ("Mira\tTilo\tAnna\tBen\nHolds pencil\tx\t\tx\t\nZips coat\t\tx\tx\t", "Mira Tilo Anna Ben",
     "a table of skills with no cell in the corner"),
    ("Xobrel\tVemka\tZuthe\tBen\nHolds pencil\tx\t\tx\t\nZips coat\t\tx\tx\t", "Xobrel Vemka Zuthe Ben",
     "whose names are on no list"),
    ("Skill | Mira | Tilo | Anna\nCuts | x | | x", "Mira Tilo Anna", "a table of one skill"),
    ("[Mira] [Tilo]\n[Anna] [Ben] [Leo]\n[Noah] [ ]\n[BOARD]", "Mira Tilo Anna Ben Leo Noah", "seats in brackets"),
    ("Mira Tarn\nSt. John Vost\nTilo Quill", "Mira,St. John,Tilo", "St. opens a name"),
    ("\tMorning\t\t\tAfternoon\n1\tMira\t\t1\tTilo\n2\tNino\t\t2\tAnna\n3\tLeo\t\t\t", "Mira Nino Leo Tilo Anna",
     "numbered lists side by side, with a name that is a word for a boy"),
    ("Vormittag\nMira Vost   Mo–Mi\nTilo Tarn   Mo–Fr\n\nNachmittag\nAnna Rey   Di/Do\nLeo Moss   Mo–Mi",
     "Mira Tilo Anna Leo",
     "halves of the day over names"),
    ("Cognome - Surname\tNome - Name\tClasse - Class\nგაბრიჭიძე\tვიქტორ\t4\n"
     "ინასარიძე\tრატი\t5\nლომაძე\tკობა\t\nჯოჯუა\tმარია\t5",
     "ვიქტორ რატი კობა მარია", "Georgian names, which begin with no capital, are no words in small letters"),
]


@pytest.mark.parametrize(("text", "names", "why"), READ, ids=[row[2] for row in READ])
def test_everybody_is_read(text: str, names: str, why: str) -> None:
    assert practised(text) == (names.split(",") if "," in names else names.split()), why


def test_a_first_row_of_unknown_names_that_may_be_titles_is_asked_about() -> None:
    roster = read_roster("Xobrel;Vanktel\nAnna;Kowalska\nJan;Nowak\nPiotr;Wiśniewski")
    assert [child.practice for child in roster.children] == ["Anna", "Jan", "Piotr"]
    assert roster.lines[0].outcome is Outcome.LEFT_OUT
    assert [note.key for note in roster.lines[0].notes] == ["roster.perhaps_titles"]
    titled = read_roster("Given name;Family name\nXobrel;Vanktel\nAnna;Kowalska\nJan;Nowak\nPiotr;Kaminski")
    assert [child.practice for child in titled.children] == ["Xobrel", "Anna", "Jan", "Piotr"]


def test_a_comma_between_names_on_no_list_is_told_once() -> None:
    guessed = read_roster("Pinxavy, Nyelchus\nZesrathlem, Dithdlam")
    assert [child.practice for child in guessed.children] == ["Nyelchus", "Dithdlam"]
    assert said(guessed) == ["roster.comma_guessed"]
    assert not said(read_roster("Vost, Mira\nZesrathlem, Dithdlam"))


def test_names_on_both_sides_of_a_dash_are_no_labels() -> None:
    left = [report for report in read_roster("Gallego - Tilo\nMira\nJaime - Leo\nGiovanni - Anna\nBen").lines
            if report.outcome is Outcome.LEFT_OUT]
    assert [note.key for report in left for note in report.notes] == ["roster.two_children"]


def test_what_a_remark_in_its_own_line_tells_does_not_hang_on_others() -> None:
    text = "Mira Vost\nPEG\nTilo Tarn\n  * Splint\nAnna Rey\nBen Quill\nHazelnuts"
    assert practised(text) == ["Mira", "Tilo", "Anna", "Ben"]


KEPT = [
    "Mira Vost - home lang.: habla rumano\nTilo Tarn\nAnna Rey - home lang.: habla rumano\nLeo Moss\n"
    "Ben Quill - home lang.:: habla rumano\nIda Elm - home lang.: arabe",
    "Pat 8:10: Pat 8:10: Pat 8:10: Mira Vost\nPat 8:11: Tilo Tarn",
]


@pytest.mark.parametrize("text", KEPT)
def test_what_is_kept_of_a_list_is_read_as_the_list_was(text: str) -> None:
    roster = read_roster(text)
    assert practised(roster.text or text) == [child.practice for child in roster.children]
    assert len(roster.children) == len(text.splitlines())


def test_an_initial_is_no_name_to_practise() -> None:
    roster = read_roster("K. Moss\nMira Vost")
    assert [child.practice for child in roster.children] == ["Mira"]
    assert [note.key for note in roster.lines[0].notes] == ["roster.cut_short"]


def test_days_of_the_week_behind_names_on_no_list_are_practised_by_nobody() -> None:
    text = "Vormittag\nNachmittag\nZuthe Menk, Mo–Fr\nRin Tovel, Mo–Mi\nKwamou Dil, Mo–Fr"
    assert practised(text) == ["Zuthe", "Rin", "Kwamou"]
