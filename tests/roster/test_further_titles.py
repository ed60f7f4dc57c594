"""Titles in further languages: over columns they say what stands below, and alone they are no child."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.further_titles import FURTHER_TITLES
from namewright.roster.header_words import HEADER_WORDS
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role, fold

PARTS = ["姓,名", "Nazwisko,Imię", "Фамилия,Имя", "Прізвище,Ім'я", "Soyadı,Adı", "Nume,Prenume", "Családnév,Keresztnév",
         "Příjmení,Jméno", "Priezvisko,Meno", "Efternamn,Förnamn", "Efternavn,Fornavn", "Sukunimi,Etunimi",
         "Επώνυμο,Όνομα", "Prezime,Ime", "العائلة,الاسم الأول", "שם משפחה,שם פרטי", "Achternaam,Voornaam"]
WHOLE = ["Naam,Groep", "Imię i nazwisko,Klasa", "ФИО,Класс", "Ad Soyad,Sınıf", "Tanuló,Osztály", "姓名,班级",
         "氏名,ふりがな", "이름,반", "Họ và tên,Lớp", "الاسم,الصف", "שם,כיתה", "Ime i prezime,Razred",
         "Ονοματεπώνυμο,Τάξη", "Namn,Klass"]


@pytest.mark.parametrize("titles", PARTS)
@pytest.mark.parametrize("names", [("Vost", "Mira"), ("Xobrel", "Vemka"), ("王", "小明"), ("Петров", "Иван")])
def test_both_parts_of_a_name(titles: str, names: tuple[str, str]) -> None:
    roster = read_roster(f"{titles}\n{','.join(names)}\nTarn,Odelo")
    assert [(child.family, child.given) for child in roster.children] == [names, ("Tarn", "Odelo")]
    assert roster.lines[0].outcome is Outcome.HEADER


@pytest.mark.parametrize("titles", WHOLE)
def test_a_whole_name_and_something_beside_it(titles: str) -> None:
    roster = read_roster(f"{titles}\nMira Vost,3\nXobrel Tarn,3")
    assert [(child.given, child.family) for child in roster.children] == [("Mira", "Vost"), ("Xobrel", "Tarn")]


@pytest.mark.parametrize("title", ["姓名", "이름", "氏名", "ФИО", "الاسم", "שם", "Imię i nazwisko", "Ad Soyad",
                                   "Förnamn"])
def test_a_title_alone_is_no_child_and_a_name_that_is_one_elsewhere_is(title: str) -> None:
    assert [child.practice for child in read_roster(f"{title}\nMira\nXobrel").children] == ["Mira", "Xobrel"]
    assert [child.practice for child in read_roster("Adi\nMira\nXobrel").children] == ["Adi", "Mira", "Xobrel"]


def test_a_word_has_one_meaning_and_none_of_ours_is_another_there() -> None:
    words = [(fold(word), role) for role, words in FURTHER_TITLES.items() for word in words]
    assert len({word for word, _ in words}) == len(set(words))
    assert all(HEADER_WORDS[word] is role for word, role in words)
    assert Role.FULL in FURTHER_TITLES


def test_the_arabic_comma_parts_names_as_ours_does() -> None:
    assert [child.given for child in read_roster("محمد، علي، ليلى").children] == ["محمد", "علي", "ليلى"]
    turned = read_roster("خرشب، رطمة\nشلبوك، دمكان\nطربزان، كلمود").children
    assert [(child.family, child.given) for child in turned] == [
        ("خرشب", "رطمة"), ("شلبوك", "دمكان"), ("طربزان", "كلمود")]
