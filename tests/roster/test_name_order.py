"""Names whose family name stands first, and lists that say which part does."""

from __future__ import annotations

import random

import pytest

from made_lists.people import HELD, TUNED, people
from namewright.message import message
from namewright.roster.name_order import family_standing_first
from namewright.roster.parsing import read_roster


def read(text: str) -> list[str]:
    return [f"{child.practice}|{child.family}" for child in read_roster(text).children]


@pytest.mark.parametrize(("name", "practised", "family"), [
    ("Nguyễn Văn An", "An", "Nguyễn"), ("Nguyễn An", "An", "Nguyễn"), ("Le Van Minh", "Minh", "Le"),
    ("Trần Thị Mai", "Mai", "Trần"), ("Wang Xiaoming", "Xiaoming", "Wang"), ("Kim Min-jun", "Min-jun", "Kim"),
    ("Park Seo Yeon", "Seo Yeon", "Park"), ("An Nguyen", "An", "Nguyen"), ("Mia Chen", "Mia", "Chen"),
    ("Jun Park", "Jun", "Park"), ("Ji Woo Kim", "Ji", "Woo Kim"), ("Lee Ann", "Lee", "Ann"),
    ("Kim Smith", "Kim", "Smith")])
def test_where_the_family_name_stands(name: str, practised: str, family: str) -> None:
    assert read(f"{name}\nPia Quill") == [f"{practised}|{family}", "Pia|Quill"]


def test_a_turned_name_is_told_and_a_title_turns_it_back() -> None:
    note = message("roster.family_stands_first", given="Min-jun", family="Kim")
    assert note in read_roster("Kim Min-jun").lines[0].notes
    assert read("First name Last name\nKim Min-jun\nNagy Anna\nTóth Béla") == ["Kim|Min-jun", "Nagy|Anna", "Tóth|Béla"]


def test_a_list_that_mostly_has_family_names_first_is_read_so() -> None:
    assert read("Nagy Anna\nKovács Péter\nSzabó Bence\nTóth László") == ["Anna|Nagy", "Péter|Kovács", "Bence|Szabó",
                                                                       "László|Tóth"]


@pytest.mark.parametrize("title", ["Last name First name", "Nachname Vorname", "Cognome Nome", "Nom Prénom",
                                   "Apellidos y nombre", "Family name given name"])
def test_a_title_says_that_family_names_stand_first(title: str) -> None:
    assert read(f"{title}\nTavvy Oren\nBrask Lumi") == ["Oren|Tavvy", "Lumi|Brask"]


@pytest.mark.parametrize(("line", "practised"), [
    ("João Felipe Silva", "João Felipe"), ("Ana Clara Souza", "Ana Clara"), ("Lena Rose Moss", "Lena")])
def test_two_given_names_that_are_one(line: str, practised: str) -> None:
    assert read(line)[0].split("|")[0] == practised


@pytest.mark.parametrize("place", [*TUNED, *HELD])
def test_hardly_any_name_of_another_country_is_turned(place: str) -> None:
    """Of names as people of these places write them, given name first, at most one in fifty is read the other way."""
    some = people(random.Random(place), place, 60)
    turned = [one for one in some if family_standing_first([one.given, *one.family.split()])]
    assert 50 * len(turned) <= len(some), turned


@pytest.mark.parametrize(("cell", "tag", "practised"), [
    ("Turkish", "tr", "Sayın"), ("tr", "tr", "Sayın"), ("Türkisch", "tr", "Sayın"), ("az-Latn", "az", "Sayın"),
    ("", "", "Sayin"), ("es", "es", "Sayin"), ("français", "fr", "Sayin")])
@pytest.mark.parametrize("title", ["Language", "Idioma", "Langue", "Sprache", "Lingua"])
def test_a_column_tells_the_language_of_a_name_and_its_letter_case_follows(title: str, cell: str, tag: str,
                                                                         practised: str) -> None:
    child = read_roster(f"Name\t{title}\nSAYIN VOST\t{cell}").children[0]
    assert (child.names_in, child.practice) == (tag, practised)


def test_a_language_that_is_not_known_is_told() -> None:
    report = read_roster("Name\tLanguage\nMira Vost\tQuillish").lines[1]
    assert message("roster.no_language", cell="Quillish") in report.notes


def test_a_picture_before_a_given_name_is_no_family_name() -> None:
    assert [child.given for child in read_roster("⭐ Mira\n⭐ Katie Moss\n⭐ Leo\n⭐ Ava").children] == [
        "Mira", "Katie", "Leo", "Ava"]


def test_a_list_that_shows_its_order_decides_about_a_name_that_may_be_either() -> None:
    """Li Wen among names with the given name first is Li; where nothing shows, or the name is sure, it is turned."""
    others = "Katie Moss\nAva Reed\nLeo Marsh"
    assert read_roster(f"{others}\nLi Wen").children[-1].given == "Li"
    assert read_roster("Li Wen").children[0].given == "Wen"
    assert read_roster(f"{others}\nNguyễn Văn Bảo").children[-1].given == "Bảo"


def test_a_list_is_written_one_way_for_a_name_of_two_vietnamese_family_names() -> None:
    """Given names first as in the rest of it, unless another Vietnamese name has its family name first."""
    others = "Katie Moss\nAva Reed\nLeo Marsh"
    for name, given, turned in (("Dương Phạm", "Dương", "Phạm"), ("Lâm Đặng", "Lâm", "Đặng")):
        assert read_roster(f"{others}\n{name}").children[-1].given == given
        assert read_roster(f"Minh Nguyễn\nAnh Trần\n{name}").children[-1].given == given
        assert read_roster(f"{others}\nNguyễn Văn Bảo\n{name}").children[-1].given == turned
        assert read_roster(name).children[0].given == turned


def test_three_words_in_vietnamese_letters_have_the_family_name_first() -> None:
    """Whatever the given name is elsewhere, and with đ, which is no d with a mark."""
    assert read("Đặng Thùy Dương\nPia Quill")[0] == "Dương|Đặng"


@pytest.mark.parametrize("straight", ["Mira Vost", "Leo Tarn", "Ida Xobrel"])
@pytest.mark.parametrize("native", [("Nguyen Thi Lan (new)", "Tran Van Minh – bus", "Pham Gia Bao"),
                                    ("Nguyễn Thị Lan", "Trần Văn Minh", "Phạm Gia Bảo", "Lê Anh"),
                                    ("Kim Min-jun", "Park Ji-woo", "Lee Seo-yeon")])
def test_names_that_are_family_first_by_themselves_turn_no_others(native: tuple[str, ...], straight: str) -> None:
    read = read_roster("\n".join((*native, straight)))
    assert read.children[-1].practice == straight.split()[0]
    assert [child.family for child in read.children[:3]] == [name.split()[0] for name in native[:3]]


def test_a_list_with_its_family_names_first_stays_so_among_such_names() -> None:
    read = read_roster("Kovács Anna\nNagy Péter\nSzabó Eszter\nTóth Máté\nNguyen Thi Lan")
    assert [child.practice for child in read.children] == ["Anna", "Péter", "Eszter", "Máté", "Lan"]


def test_a_vietnamese_name_of_four_words_by_itself_is_one_child() -> None:
    assert read("Nguyễn Thị Minh Anh") == ["Anh|Nguyễn"]


def test_gian_never_stands_alone_before_another_given_name() -> None:
    assert read("Gian Luca Riva\nGian Marco Ferri\nGian Riva") == ["Gian Luca|Riva", "Gian Marco|Ferri", "Gian|Riva"]


@pytest.mark.parametrize("title", ["Lingua madre", "Muttersprache", "Herkunftssprache", "Langue maternelle",
                                   "Língua materna", "Lengua materna", "Mother tongue"])
def test_a_mother_tongue_is_no_mother(title: str) -> None:
    """The column tells the language of the names, which letter case follows."""
    assert read_roster(f"Name,{title}\nSAYIN KAYA,tr\nMIRA VOST,de").children[0].given == "Sayın"


def test_a_line_written_the_other_way_round_is_read_by_its_names_and_told() -> None:
    """In a list with its family names first, in capitals or not."""
    for others in ("ROUSSET Capucine\nFAURE Eliott\nGARNIER Inès\nMOREL Jules",
                   "Rousset Capucine\nMorel Jules\nGirard Manon\nFaure Eliott\nGarnier Inès"):
        roster = read_roster(f"{others}\nChloé Dubois")
        assert roster.children[-1].practice == "Chloé"
        assert roster.lines[-1].notes


@pytest.mark.parametrize("behind", ["", " née le 3/4/2021", ", née le 3/4", " geb. 3.4.2021", " nata il 3/4",
                                    ", nacida el 3/4", " (nut allergy)", " – bus 4"])
def test_two_known_given_names_tell_that_rare_families_stand_first(behind: str) -> None:
    """Of three: the third is on no list. What stands beside the names in small letters tells nothing."""
    lines = [f"{name}{behind}" for name in ("Vost Mia", "Tarn Emma", "Menk Xobrel")]
    assert [child.given for child in read_roster("\n".join(lines)).children] == ["Mia", "Emma", "Xobrel"]


def test_names_that_tell_nothing_stay_as_they_are_written() -> None:
    lines = ["Xobrel Vost", "Anik Tarnul", "Mia Menk"]
    assert [child.given for child in read_roster("\n".join(lines)).children] == ["Xobrel", "Anik", "Mia"]


def test_how_families_end_tells_the_order_of_names_on_no_list() -> None:
    lines = ["Vemkaski Xobrel", "Tarnulescu Jelbru", "Odelovic Pesku", "Trum Nift"]
    assert [child.given for child in read_roster("\n".join(lines)).children] == ["Xobrel", "Jelbru", "Pesku", "Nift"]


def test_a_few_vietnamese_names_turn_no_others() -> None:
    lines = ["Nguyễn Thị Lan", "Xobrel Vemka", "Jelbru Odel", "Huỳnh Kim Ngân", "Pesku Tarnul", "Trumlu Nift"]
    given = [child.given for child in read_roster("\n".join(lines)).children]
    assert given == ["Lan", "Xobrel", "Jelbru", "Ngân", "Pesku", "Trumlu"]


@pytest.mark.parametrize("name", ["أبو داوود سعد", "آل علي سعد", "بن داوود سعد"])
def test_words_before_a_family_in_arabic_letters_are_a_part_of_it(name: str) -> None:
    read = read_roster(f"Liste d'appel (NOM Prénom)\n{name}\nTARN Mira\nVOST Leo\nBERG Anna")
    assert [child.practice for child in read.children] == ["سعد", "Mira", "Leo", "Anna"]


@pytest.mark.parametrize("title", ["Nom et prénom", "Nom et prénom de l'élève", "Cognome e nome:", "Sobrenome e nome",
                                   "Apellidos y nombre del alumno", "Last name and first name", "Nachname und Vorname"])
def test_a_title_over_names_on_no_list_says_which_part_stands_first(title: str) -> None:
    """Over a column beside others it did; over names alone the family was practised."""
    assert [(child.given, child.family) for child in read_roster(f"{title}\nXobrel Vemka\nTarnul Dofri").children] == [
        ("Vemka", "Xobrel"), ("Dofri", "Tarnul")]


def test_names_that_tell_are_read_as_they_are_written_whatever_the_title_says() -> None:
    read = read_roster("Nom et prénom\nEmma Roux\nLouis Petit")
    assert [child.given for child in read.children] == ["Emma", "Louis"]
