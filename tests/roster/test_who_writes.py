"""Mails and payments about children: who writes or pays is none of them, and where nothing tells, it is asked once."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster

CHILDREN = ["Leo", "Mia", "Theo", "Ada", "Nora"]
MAILS = {
    "gaps": "Inbox\n7:13  Ana Vost  Leo Vost absent today\n7:20  Tom Tarn  Absence: Mia Tarn\n"
            "7:31  Kitchen  Menu for next week\n7:40  Ruth Berg  Theo Berg will be late\n8:02  Olga Zell  Ada – fever\n"
            "8:10  Ivo Quin  Absence: Nora",
    "blocks": "Ana Vost\nLeo fehlt heute\n8:25\n\nTom Tarn\nKrankmeldung: Mia\n8:40\n\nRuth Berg\nTheo kommt später\n"
              "8:42\n\nOlga Zell\nAda fehlt heute\n8:51\n\nIvo Quin\nNora hat Husten\n9:01",
    "subject first": "Leo Vost absent·e aujourd'hui\tAna Vost\t7:05\nAbsence de Mia\tTom Tarn\t7:10\n"
                     "Absence de Theo\tRuth Berg\t7:30\nAda malade\tOlga Zell\t7:31\n"
                     "Mot d'excuse pour Nora\tIvo Quin\t8:00",
    "labels": "\n\n".join(f"Von: {who}\nBetreff: {what}\nDatum: 7:1{at}" for at, (who, what) in enumerate((
        ("Ana Vost", "Leo Vost hat Fieber"), ("Tom Tarn", "Abmeldung Mia Tarn"), ("Ruth Berg",
                     "Theo Berg kommt später"),
        ("Olga Zell", "Abmeldung Ada Zell"), ("Ivo Quin", "Nora Quin hat Fieber")))),
    "dashes": "7:13 – Ana Vost – Leo assente oggi\n7:15 – Tom Tarn – Assenza: Mia\n"
              "7:20 – Ruth Berg – Theo arriva tardi\n"
              "7:21 – Olga Zell – Ada assente oggi\n7:30 – Ivo Quin – Assenza: Nora",
    "table": "Date;Payer;Reference;Amount\n" + "\n".join(
        f"0{at}/03/2025;{who};{what};12.50" for at, (who, what) in enumerate((
            ("Ana Vost", "farm trip Leo"), ("Tom Tarn", "Mia farm trip"), ("Ruth Berg", "trip for Theo"),
            ("Olga Zell", "Ada farm trip"), ("Ivo Quin", "farm trip Nora")))),
    "sums": "12.05.25  Ana Vost  Gruppenkasse Leo Vost  +12,50 €\n13.05.25  Tom Tarn  Mia Tarn Bauernhof  +12,50 €\n"
            "13.05.25  Ruth Berg  Gruppenkasse Theo Berg  +24,50 €\n14.05.25  Olga Zell  Ausflug Ada Zell  +12,50 €\n"
            "15.05.25  Ivo Quin  Nora Quin Bauernhof  +12,50 €",
    "sums below": "2025-05-12 ANA VOST  15,00 €\nConcepto: comedor Leo\n\n2025-05-12 TOM TARN  15,00 €\n"
                  "Concepto: excursión Mia\n\n2025-05-13 RUTH BERG  15,00 €\nConcepto: Theo comedor\n\n"
                  "2025-05-13 OLGA ZELL  15,00 €\nConcepto: comedor Ada\n\n2025-05-13 IVO QUIN  15,00 €\n"
                  "Concepto: comedor Nora",
}
UNKNOWN = ("7:13  Ana Vost  Leo Vost är sjuk idag\n7:20  Tom Tarn  Frånvaro Mia Tarn\n"
           "7:31  Ruth Berg  Frånvaro Theo Berg\n"
           "7:40  Olga Zell  Ada Zell är sjuk idag\n7:50  Ivo Quin  Frånvaro Nora Quin")
OTHERS = (
    "15:30  Mia Vost  picked up by Ana Vost\n15:40  Leo Tarn  picked up by Tom Tarn\n"
    "15:45  Ada Zell  picked up by Olga Zell\n15:50  Theo Berg  picked up by Ruth Berg",
    "9:00  Mia Vost  reads with Leo Oak\n9:10  Ada Zell  reads with Tim Moor\n9:20  Theo Berg  sits with Kai Marn\n"
    "9:30  Nora Quin  reads with Bo Park",
    "Child;Note;Date\nMia Vost;dentist with Ana;3.5.\nLeo Tarn;trip Tom;4.5.\nAda Zell;dentist with Olga;5.5.",
)


@pytest.mark.parametrize("form", MAILS)
def test_the_child_stands_within_what_is_said(form: str) -> None:
    read = read_roster(MAILS[form])
    assert [child.practice for child in read.children] == CHILDREN


def test_who_writes_is_told_beside_the_child() -> None:
    read = read_roster(MAILS["gaps"])
    said = [str(note) for line in read.lines if line.child for note in line.notes]
    assert all(who in " ".join(said) for who in ("Ana Vost", "Tom Tarn", "Ruth Berg", "Olga Zell", "Ivo Quin"))
    assert [line.text for line in read.lines if "Kitchen" in line.text and not line.child and line.notes]


def test_two_of_one_mail_are_two_and_a_comma_may_turn_a_name() -> None:
    text = MAILS["gaps"].replace("Absence: Mia Tarn", "Absence: Tarn, Mia")
    text = text.replace("Leo Vost absent", "Leo and Ida absent")
    read = read_roster(text)
    assert [child.practice for child in read.children] == ["Leo", "Ida", *CHILDREN[1:]]


def test_a_name_within_words_that_nobody_knows_is_asked_about() -> None:
    with pytest.raises(RosterError) as asked:
        read_roster(UNKNOWN)
    assert asked.value.message.key == "roster.two_wholes"
    assert [child.practice for child in read_roster(UNKNOWN, columns="other,name").children] == CHILDREN
    assert [child.practice for child in read_roster(UNKNOWN, columns="name,other").children] == [
        "Ana", "Tom", "Ruth", "Olga", "Ivo"]


def test_a_word_that_nobody_knows_before_a_name_is_not_practised() -> None:
    text = MAILS["sums"].replace("Ausflug Ada Zell", "Xobrel Ada Zell")
    read = read_roster(text)
    assert [child.practice for child in read.children] == ["Leo", "Mia", "Theo", "Nora"]
    assert [line.outcome.name for line in read.lines if "Ada" in line.text] == ["LEFT_OUT"]


@pytest.mark.parametrize("text", OTHERS)
def test_who_stands_behind_with_or_by_is_no_child(text: str) -> None:
    made = [child.practice for child in read_roster(text).children]
    assert made == [name for name in ("Mia", "Leo", "Ada", "Theo", "Nora") if name in made]
    assert "Mia" in made


def test_a_chat_in_which_families_answer_stays_one() -> None:
    text = ("Frau Sand\n8:06\nLiebe Eltern, schreibt bitte hier den Namen eures Kindes.\n\nAna\n8:08\nLeo, danke!\n\n"
            "Tom\n8:10\nMia Tarn, danke!\n\nRuth\n8:12\nTheo, danke!")
    assert [child.practice for child in read_roster(text).children] == ["Leo", "Mia", "Theo"]
