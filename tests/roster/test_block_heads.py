"""Heads over blocks are no children: months in order, words in capitals; a child called April stays one."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("form", ["{} 3", "3: {}", "3. {}", "{} (3)", "{} – 3"])
@pytest.mark.parametrize("months", ["APRIL MAY JUNE AUGUST", "April May June August", "SEPTIEMBRE ABRIL MAYO JUNIO",
                                    "Mars Avril Mai Juin", "AUGUST OKTOBER JANUAR MAI"])
def test_months_in_order_head_their_blocks(form: str, months: str) -> None:
    names = iter(("Mira", "Xobrel", "Anna", "Vemka"))
    blocks = "\n\n".join(f"{month}\n{form.format(next(names))}" for month in months.split())
    assert made(f"Geburtstagskalender\n\n{blocks}") == ["Mira", "Xobrel", "Anna", "Vemka"]


def test_a_month_may_be_empty_or_have_no_blank_line() -> None:
    assert made("Wall chart\n\nAPRIL\n\nMAY\n\nJUNE\n9 May\n\nAUGUST\n12 Tilo") == ["May", "Tilo"]
    assert made("April\nMira 3\nMay\nJune\nTilo 9\nAugust\nAnna 12") == ["Mira", "Tilo", "Anna"]
    assert made("MAY / JUNE\nMira 3\n\nJULY / AUGUST\nTilo 9") == ["Mira", "Tilo"]


@pytest.mark.parametrize("text", ["April\nMira\nJune\nTilo", "April\nAugust\nJune\nMay",
                                  "Mira\nTilo\nApril\nMay\nJune\nAugust",
                                  "Mira\n\nMay\nJune\n\nTilo\nAnna"])
def test_children_called_as_a_month_stay_children(text: str) -> None:
    assert made(text) == text.split()


def test_what_opens_each_block_in_capitals_names_it() -> None:
    text = ("Going home, Room 12 — Ms. Alderbrook\n\nBUS 7 (Mr. Hobbleworth)\nMira T.\nXobrel V.\n\n"
            "CAR LINE\nAnna R. #114\n\nAFTER CARE — until 5:30\n\nWALKERS\nClara V.\n\n* = booster seat")
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Anna", "Clara"]
    assert [report.outcome for report in roster.lines if report.text.isupper()] == [Outcome.HEADING] * 2
    assert roster.lines[0].outcome is Outcome.LEFT_OUT  # a title that nobody is sure of is asked about


def test_children_in_capitals_over_blocks_are_asked_about() -> None:
    roster = read_roster("MIRA MOSS\nTom Reed\nAna Vidal\n\nANNA CLARK\nLeo Marsh\nBen Cook")
    assert [report.outcome for report in roster.lines if report.text.isupper()] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("text", ["MIRA\nTOM\n\nANNA\nLEO", "MIRA\n\nTOM\n\nANNA",
                                  "MIRA\nTom\n\nAnna\nLeo\n\nBEN\nClara", "丽丽\n凤英\n\n建平\n红梅",
                                  "MIRA\nTom\nANNA\nLeo"])
def test_children_in_capitals_elsewhere_stay_children(text: str) -> None:
    assert len(made(text)) == len(text.split())


@pytest.mark.parametrize("colours", ["Red Blue", "Rot Blau", "Rojo Verde", "Rouges Bleus", "Rosso Giallo"])
def test_a_colour_over_each_block_names_it(colours: str) -> None:
    one, two = colours.split()
    for names in ("Mira Tilo Oda Anna Ben Clara", "Mira_Vost Tilo_Brae Oda_Marn Anna_Reed Ben_Pell Clara_Grell"):
        given = [name.replace("_", " ") for name in names.split()]
        text = "\n".join([one, *given[:3], "", two, *given[3:]])
        assert made(text) == ["Mira", "Tilo", "Oda", "Anna", "Ben", "Clara"]


def test_a_child_called_as_a_colour_stays_one() -> None:
    assert made("Rosa\nMira\n\nTilo\nViola") == ["Rosa", "Mira", "Tilo", "Viola"]


def test_colours_that_are_all_given_names_are_asked_about() -> None:
    """Rose and Viola may open the blocks, or be children of them."""
    outcomes = [line.outcome for line in read_roster("Rose\nAva\nLeo\n\nViola\nMay\nIris").lines if line.text]
    assert [outcomes[0], outcomes[3]] == [Outcome.LEFT_OUT, Outcome.LEFT_OUT]


def test_names_on_no_list_that_lost_their_bullets_are_asked_about() -> None:
    roster = read_roster("- Xobrel\n- Vemka\nJelbru\n- Pesku\nNiftam\n- Trumlu\n- Odelim\n- Quorlet")
    assert [report.outcome for report in roster.lines].count(Outcome.LEFT_OUT) == 2
    assert not [report for report in roster.lines if report.outcome is Outcome.HEADING]


@pytest.mark.parametrize("head", ["Stop {} – Oak Ave, 7:1{}", "Paragem {} – Igreja, 7:2{}", "Arrêt {} – Stade, 7:{}0",
                                  "Haltestelle {} – Markt, 7:3{}", "Vlimbo {}", "Fermata n° {} – Chiesa, 7.1{}"])
@pytest.mark.parametrize("title", ["", "Ruta 34\n\n", "Car 24\n"])
@pytest.mark.parametrize("names", [["Mira Vost", "Leo Tarn", "Ana Ruiz"], ["Vost, Mira", "Tarn, Leo", "Ruiz, Ana"],
                                   ["Mira", "Leo", "Ana"], ["Xobrel", "Tarnul", "Outhna"]])
def test_one_word_that_counts_heads_blocks(names: list[str], title: str, head: str) -> None:
    text = f"{title}{head.format(1, 1)}\n{names[0]}\n{names[1]}\n\n{head.format(2, 2)}\n{names[2]}"
    assert made(text) == [name.split()[-1] if "," in name else name.split()[0] for name in names]


def test_a_name_behind_a_count_is_never_lost() -> None:
    roster = read_roster("Vlimbo 1 – Tom\nMira Vost\nVlimbo 2 – Emil\nLeo Tarn")
    asked = [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT]
    named = [child.practice for child in roster.children]
    assert all(any(name in text for text in (*asked, *named)) for name in ("Tom", "Emil", "Mira", "Leo"))
    assert made("Ava 1\nMira\nAva 2\nLeo") == ["Ava", "Mira", "Ava", "Leo"]


@pytest.mark.parametrize(("word", "first", "second"), [
    ("Haltestelle", "Bahnhof", "Markt"), ("Stop", "Church", "Mill"), ("Arrêt", "Mairie", "Gare"),
    ("Parada", "Iglesia", "Mercado"), ("Fermata", "Stazione", "Chiesa"), ("Paragem", "Igreja", "Mercado")])
def test_a_place_behind_a_numbered_stop_is_nobody(word: str, first: str, second: str) -> None:
    roster = read_roster(f"{word} 1 – {first}\nMia\nTheo\n{word} 2 – {second}\nLena\nEmil")
    assert [child.practice for child in roster.children] == ["Mia", "Theo", "Lena", "Emil"]
    assert not [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT]


@pytest.mark.parametrize("heads", [("Red", "Blue"), ("Azul", "Verde"), ("Rot", "Blau"), ("Rouge", "Vert")])
@pytest.mark.parametrize("names", [("Ana Gil", "Leo Paz", "Eva Mora", "Luis Sanz"), ("Ana", "Leo", "Xobrel", "Nadu")])
def test_colours_over_names_without_an_empty_line_are_none(heads: tuple[str, str], names: tuple[str, ...]) -> None:
    text = "\n".join((heads[0], *names[:2], heads[1], *names[2:]))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


def test_children_called_as_colours_stay_in_a_plain_list() -> None:
    names = ["Rose", "Mira", "Violet", "Anna", "Viola", "Tom"]
    assert [child.practice for child in read_roster("\n".join(names)).children] == names


@pytest.mark.parametrize(("title", "months"), [
    ("Geburtstagskalender", ("September", "Oktober", "November")), ("Birthdays", ("September", "October", "November")),
    ("Cumpleaños", ("Septiembre", "Octubre", "Noviembre")), ("Anniversaires", ("Septembre", "Octobre", "Novembre")),
    ("Compleanni", ("Settembre", "Ottobre", "Novembre")), ("Aniversários", ("Setembro", "Outubro", "Novembro")),
])
def test_the_only_child_of_a_first_month_is_no_title(title: str, months: tuple[str, ...]) -> None:
    """The first month stands right below a title, so only those below it open blocks."""
    text = (f"{title}\n{months[0]}\n13 – Châu DƯƠNG\n\n{months[1]}\n16 – Ánh NGUYỄN\n\n{months[2]}\n1 – Jane VŨ\n"
            "18 – Mai HOÀNG")
    assert [child.practice for child in read_roster(text).children] == ["Châu", "Ánh", "Jane", "Mai"]


@pytest.mark.parametrize("word", ["Baan", "Bahn", "Carril", "Lane"])
def test_a_count_that_ends_once_in_a_colon_is_over_names(word: str) -> None:
    """The last one had none, and its word is somebody's name."""
    text = f"{word} 1:\nVirág\nPetra\n{word} 2 – Vass:\nMarcell\nMarianna\n{word} 3\nJolán"
    assert [child.practice for child in read_roster(text).children] == [
        "Virág", "Petra", "Marcell", "Marianna", "Jolán"]


@pytest.mark.parametrize("sign", ["💛", "⭐", "🌟", "❤"])
def test_a_name_with_a_heart_is_no_head_over_those_with_bullets(sign: str) -> None:
    """Two children were lost, for the heart hid that they are known."""
    text = f"Segue a lista para os cartões\n• Alveiro\n{sign} Manuela 🌟\n• Dario\n{sign} Xobrel\n• Edi 🌟"
    assert [child.practice for child in read_roster(text).children] == ["Alveiro", "Manuela", "Dario", "Xobrel", "Edi"]


@pytest.mark.parametrize(("title", "word"), [("Zwemmen", "Groep"), ("Natación", "Grupo"), ("Nuoto", "Gruppo")])
def test_a_title_over_counted_groups_is_asked_about(title: str, word: str) -> None:
    text = f"{title}\n{word} 1:\nΡόζα\nΖηναϊς\n{word} 2 – juf Vass\nΚλεόπας (bang voor water)\nΒαλέρια"
    assert [child.practice for child in read_roster(text).children] == ["Ρόζα", "Ζηναϊς", "Κλεόπας", "Βαλέρια"]
    assert "Mia" in [child.practice for child in read_roster(text.replace(title, "Mia")).children]


@pytest.mark.parametrize("months", [
    ("January", "March", "June", "July", "August"), ("enero", "marzo", "junio", "julio", "agosto"),
    ("Januar", "März", "Juni", "Juli", "August"), ("janvier", "mars", "juin", "juillet", "août")])
def test_the_only_child_of_a_first_month_right_below_the_title_is_a_child(months: tuple[str, ...]) -> None:
    names = ("Xobrel Vostin", "Ilvar Brunek", "Sorwen Talvo", "Quenda Marlik", "Tilvo Harnet")
    text = "Wall\n" + "\n\n".join(f"{month}\n{at + 3} {name}" for at, (month, name) in enumerate(
        zip(months, names, strict=True)))
    assert [f"{child.given} {child.family}" for child in read_roster(text).children][-5:] == list(names)


@pytest.mark.parametrize(("nobody", "months"), [
    ("nessuno", ("gennaio", "febbraio", "marzo", "aprile", "maggio", "giugno")),
    ("none", ("January", "February", "March", "April", "May", "June"))])
def test_a_month_without_a_birthday_hides_no_child_of_the_first(nobody: str, months: tuple[str, ...]) -> None:
    names = ("Gorhá", nobody, "Yeitrais", "Thuska", nobody, "Belguin")
    text = "Wall\n" + "\n\n".join(f"{month}\n{name if name == nobody else f'{at + 3} {name}'}" for at, (month, name)
                                   in enumerate(zip(months, names, strict=True)))
    assert [child.practice for child in read_roster(text).children] == [name for name in names if name != nobody]
