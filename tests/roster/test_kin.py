"""A child who is named by a grown-up, as in a chain of calls: the child is made once, and the grown-up never."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.kin import are_grown_ups_behind
from namewright.roster.parsing import read_roster

CHAINS = [
    "Mia's mum Jo -> Leo's dad\nLeo's dad Sam -> Ava's nanny\nAva's nanny Ruth -> Mia's mum",
    "1. Mia’s mother (555-0134) → Leo’s father\n2. Leo’s father (555-0135) → Ava’s mother\n3. Ava’s mother (555-0136)",
    "La maman de Mia (Jo) -> le papa de Leo\nLe papa de Leo (Sam) -> la mamie d'Ava\nLa mamie d'Ava -> la maman de Mia",
    "La mamá de Mia (Jo) -> el papá de Leo\nEl papá de Leo -> la abuela de Ava\nLa abuela de Ava -> la mamá de Mia",
    "La mamma di Mia -> il papà di Leo\nIl papà di Leo -> la nonna di Ava\nLa nonna di Ava -> la mamma di Mia",
    "A mãe da Mia -> o pai do Leo\nO pai do Leo (Sam) -> a mãe da Ava\nA mãe da Ava -> a mãe da Mia",
]


@pytest.mark.parametrize("chain", CHAINS)
def test_a_chain_of_calls_makes_each_child_once(chain: str) -> None:
    roster = read_roster(chain)
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava"]
    assert all(report.notes for report in roster.lines)


def test_a_german_genitive() -> None:
    """One that may be a name with an s of its own is asked about."""
    roster = read_roster("Tilos Mama Jo -> Emmas Papa\nEmmas Papa Sam -> Lukas Oma\nLukas Oma Ruth -> Tilos Mama")
    assert [child.practice for child in roster.children] == ["Tilo", "Emma"]
    assert roster.lines[2].outcome is Outcome.LEFT_OUT


def test_a_row_for_each_grown_up_makes_nobody_twice() -> None:
    roster = read_roster("Mia's mum Jo 555-0134\nMia's dad Sam 555-0135\nLeo's mum Ruth 555-0136")
    assert [child.practice for child in roster.children] == ["Mia", "Leo"]
    assert roster.lines[1].outcome is Outcome.HEADING


def test_below_the_class_such_lines_are_about_it() -> None:
    chain = "Mia's mum Jo -> Leo's dad\nLeo's dad Sam -> Noah's mum"
    roster = read_roster(f"Mia Vost\nLeo Tarn\nAva Rey\nNoah Quill\n{chain}")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]


@pytest.mark.parametrize("text", ["Jonas Vater\nMia Vost\nLeo Tarn", "Mia de Leo\nAva di Marco\nNoah do Vale"])
def test_a_name_that_looks_so_is_one(text: str) -> None:
    assert len(read_roster(text).children) == 3


@pytest.mark.parametrize("behind", ["maman et papa", "papi et tata", "avô e mãe", "mãe e tia", "Mom and Nanny",
                                    "Oma & Opa", "mamá y abuela", "mamma e zia", "Grandpa, Aunt",
                                    "mum, and dad", "Mutti und Vati", "Mommy & Daddy", "nana and mum"])
@pytest.mark.parametrize("form", ["{} – {}", "{} - {}", "{}: {}", "{} -> {}"])
def test_who_comes_with_a_child_is_no_other_child(form: str, behind: str) -> None:
    names = ["Mira Vost", "Xobrel Quix", "Leo Tarn"]
    roster = read_roster("\n".join(form.format(name, behind) for name in names))
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo"]


def test_children_who_are_called_so_are_not_taken_for_kin() -> None:
    assert not are_grown_ups_behind("Anna – Tia and Zia")
    assert not are_grown_ups_behind("Anna – mom, Leo")
    assert are_grown_ups_behind("Anna – mom, Tia")
    assert are_grown_ups_behind("Anna – mommy, and Nana")
    assert are_grown_ups_behind("Anna – Mutti und Vati")


def test_a_school_is_no_grown_up_of_a_child() -> None:
    text = "Escuela del Sol\nMira Vost\nTilo Tarn\nEscuela del Sol\nAna Moss"
    assert [one.practice for one in read_roster(text).children] == ["Mira", "Tilo", "Ana"]


def test_who_drives_leaves_no_passenger_out_in_silence() -> None:
    roster = read_roster("Mia's mom (3 seats): Leo, Anna\nBen's dad (2 seats) -> Bo & Eva\nTom\nZoe")
    assert [child.practice for child in roster.children] == ["Tom", "Zoe"]
    assert [line.outcome for line in roster.lines[:2]] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("form", [
    "{} (mum of {})", "{} – {}'s dad", "{}, mom of {}", "{} (mamá de la {})", "{} mamá de {}", "{} (papá de {})",
    "{} maman de {}", "{} (papa de {})", "{} – Mama von {}", "{} (la nonna di {})", "{} mamma di {}", "{} mãe de {}",
    "{} (o pai de {})",
])
def test_who_belongs_to_a_child_is_nobody_of_the_class(form: str) -> None:
    pairs = [("Frostrós", "Xobrel"), ("Jo Tarn", "Mia"), ("Ruth", "Luka"), ("Sam", "Vemka")]
    roster = read_roster("\n".join(form.format(*pair) for pair in pairs))
    assert [child.practice for child in roster.children] == ["Xobrel", "Mia", "Luka", "Vemka"]
    assert all(report.notes for report in roster.lines)


@pytest.mark.parametrize(("own", "rest"), [
    ("You", "At work"), ("Tú", "Ocupada"), ("Vous", "Au travail"), ("Du", "Bei der Arbeit"), ("Tu", "Al lavoro"),
    ("Você", "No trabalho"), ("Tu", "~Adelind"), ("You", "Quixel Vorn"),
])
def test_among_the_members_of_a_group_other_lines_are_asked_about(own: str, rest: str) -> None:
    roster = read_roster(f"{own}\nJo (mamá de Xobrel)\n{rest}\nSam (papá de Mia)\nRuth (mamá de Leo)\nBo (papá de Ava)")
    assert [child.practice for child in roster.children] == ["Xobrel", "Mia", "Leo", "Ava"]
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [own, rest]


@pytest.mark.parametrize("kin", ["Mom", "Papá", "Maman", "Mama", "Mamma", "Mãe"])
def test_a_child_stands_behind_what_a_parent_is_called(kin: str) -> None:
    roster = read_roster("\n".join(f"{kin} {name}" for name in ("Xobrel", "Mia", "Leo", "Vemka")))
    assert [child.practice for child in roster.children] == ["Xobrel", "Mia", "Leo", "Vemka"]


def test_a_child_beside_others_of_the_family_stays() -> None:
    text = "Ana Moss (sister of Leo)\nIda Tarn – Leo's cousin\nLeo Moss\nMia Vost"
    assert [child.practice for child in read_roster(text).children][-2:] == ["Leo", "Mia"]
    assert not {"Leo's"} & {child.practice for child in read_roster(text).children}


def test_a_few_parents_among_what_a_screen_says_are_enough() -> None:
    text = "Tu\nJo (mamma di Xobrel)\nAl lavoro\nSam (papà di Mia)\nOccupata\n~Adelind\nRuth (mamma di Leo)\nLibera"
    assert [child.practice for child in read_roster(text).children] == ["Xobrel", "Mia", "Leo"]


@pytest.mark.parametrize("form", ["{} (Papa von {})", "{} Mama von {}", "{} - papá de {}", "{} (mum of {})"])
def test_who_belongs_to_a_child_in_letters_without_capitals_is_nobody_either(form: str) -> None:
    """Small and capital letters are one in Georgian, Arabic and Hebrew."""
    pairs = (("ნათელა", "ნუკრი"), ("حامد", "همام"), ("אפרים", "עופרי"), ("მირანდა", "ტარიელ"))
    roster = read_roster("\n".join(form.format(*pair) for pair in pairs))
    assert [child.practice for child in roster.children] == [child for _, child in pairs]


@pytest.mark.parametrize("names", ["მარიამ,სერგო,ლიკა,დალი", "冬梅,秀梅,桂荣,玉珍", "יששכר,אליס,זיו,הלל",
                                   "ليلى,سعود,كاشف,ربى"])
@pytest.mark.parametrize(("form", "own", "rest"), [
    ("Jo (mamá de {})", "Tú", "Ocupado"), ("Papa von {}", "Du", "Beschäftigt"), ("Mãe de {}", "Tu", "Disponível"),
    ("Jo ({}'s mum)", "You", "Available"), ("Jo (mamma di {})", "Tu", "Occupato"), ("Papa de {}", "Vous", "Disponible"),
])
def test_a_child_of_a_script_without_capitals_is_told_by_its_parent(names: str, form: str, own: str, rest: str) -> None:
    """The grown-up was made a child, and so were the words of the screen."""
    children = names.split(",")
    roster = read_roster("\n".join((own, *(form.format(child) for child in children), rest)))
    assert [child.practice for child in roster.children] == children
    assert [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT] == [own, rest]
