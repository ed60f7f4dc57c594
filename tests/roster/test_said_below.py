"""Lines below each name that tell of the child are left out and said, by coming again and by no list of words."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

KNOWN, UNKNOWN = ["Mira Vost", "Leo Tarn", "Ana Ruiz"], ["Dlunyil Kwapson", "Xairfön Gaskwom", "Tarnul Brevin"]
LABELS = [
    ("Allergy", "Reaction", "peanuts", "hives"), ("Alergia", "Qué hacer", "huevo", "llamar a la madre"),
    ("Allergie", "Conduite à tenir", "œufs", "appeler le 15"), ("Allergie", "Maßnahme", "Erdnüsse", "Notfallset"),
    ("Allergia", "Cosa fare", "uova", "sciroppo"), ("Alergia", "O que fazer", "leite", "xarope"),
    ("Vlimbo", "Krast", "ompel", "dru"),
]


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


def told(text: str) -> list[str]:
    return [report.text.strip() for report in read_roster(text).lines
            if any(note.key == "roster.said_below" for note in report.notes)]


@pytest.mark.parametrize("form", ["{}: {}", "  {}: {}", "\t{}: {}", "- {}: {}", "{} – {}"])
@pytest.mark.parametrize(("first", "second", "one", "two"), LABELS)
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_labels_that_come_again_below_names_are_said(
    names: list[str], first: str, second: str, one: str, two: str, form: str
) -> None:
    below = [form.format(first, one), form.format(second, two)]
    text = "\n".join(line for name in names for line in (name, *below))
    assert made(text) == [name.split()[0] for name in names]
    assert told(text) == [line.strip() for line in below] * len(names)
    assert not any(report.outcome is Outcome.LEFT_OUT for report in read_roster(text).lines)
    assert made("\n\n".join((text, "Zoé Park"))) == [*(name.split()[0] for name in names), "Zoé"]


@pytest.mark.parametrize("names", [KNOWN, UNKNOWN, ["Mira", "Xairfön", "Leo"]])
@pytest.mark.parametrize("mark", ["- ", "  ", "   • ", "\t"])
def test_small_words_set_in_below_names_are_said(names: list[str], mark: str) -> None:
    text = f"{names[0]}\n{mark}wears glasses\n{mark}new in May\n{names[1]}\n{mark}none\n{names[2]}"
    assert made(text) == [name.split()[0] for name in names]
    assert len(told(text)) == 3


def test_a_remark_behind_the_name_stays_its_own() -> None:
    assert made("Mira Vost: allergy\nReaction: hives\nLeo Tarn: allergy\nReaction: cough") == ["Mira", "Leo"]


def test_a_friend_who_has_no_line_is_asked_about() -> None:
    roster = read_roster("Mira Vost\nFriend: Leo\nLikes: cars\nLeo Tarn\nFriend: Tom\nLikes: birds")
    assert [child.practice for child in roster.children] == ["Mira", "Leo"]
    assert [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT] == ["Friend: Tom"]


@pytest.mark.parametrize("text", [
    "Group 1\nLeader: Mira\nHelper: Leo\nGroup 2\nLeader: Ana\nHelper: Tom",
    "Rot\n- Erste: Mira\n- Zweite: Leo\nBlau\n- Erste: Ana\n- Zweite: Tom",
    "Mira Vost\nNEU: Leo Brevin\nAna Ruiz\nNEU: Tom Xairfön",
    "Mira Vost\nneulich: Leo Brevin\nAna Ruiz\nneulich: Tom Gask",
    "Car 2\nMira Vost\n7:29 Place du Four – Leo Tarn\nAna Ruiz\n7:30 Place du Four – Tom Berg",
])
def test_children_behind_a_label_are_never_said(text: str) -> None:
    assert told(text) == []


@pytest.mark.parametrize("text", [
    "Dlunyil Kwapson\nNeulich: Xairfön Gaskwom\nTarnul Brevin\nNeulich: Vexil Zandel\nQuorrik Ampel",
    "Mira\nNeu: Xairfön\nLeo\nNeu: Vexil\nAna",
    "Adler\n- Kapitän: Xairfön\n- Helfer: Vexil\nBären\n- Kapitän: Tarnul\n- Helfer: Quorrik"])
def test_names_on_no_list_behind_a_label_are_never_said(text: str) -> None:
    """They are written as the others are, or nothing but one label tells of them."""
    assert told(text) == []


def test_a_form_keeps_its_answers() -> None:
    roster = read_roster("Name: Mira Vost\nHand: left\nAge: 5\nName: Leo Tarn\nHand: right\nAge: 6")
    assert [child.hand for child in roster.children] == ["left", "right"]


def test_with_name_before_it_such_a_line_is_a_child() -> None:
    text = "Mira Vost\n- nuts\nLeo Tarn\n- eggs\nAna Ruiz\n- {}milk"
    assert made(text.format("")) == ["Mira", "Leo", "Ana"]
    assert made(text.format("Name: ")) == ["Mira", "Leo", "Ana", "Milk"]


@pytest.mark.parametrize("note", ["", "\n   a) bring folders", "\n  chairs for all"])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_children_with_letters_below_groups_with_numbers_are_not_said(names: list[str], note: str) -> None:
    """The letter before a name is as small as that before a remark."""
    text = "\n".join(f"1. {group}\n   a) {names[at]}\n   a) {names[at + 1]}{note}" for at, group in enumerate(
        ("Bears", "Owls")))
    assert not any(name in line for line in told(text) for name in names)


@pytest.mark.parametrize("below", [
    "27.12.19\nHome phone: 555-01{}", "geb. am: 27.12.19\nKontakt 1: {adult}\nAnschrift: {} Bachgasse",
    "DOB: 12/14/2019\nContact 1: {adult}\nContact 2: {other}"])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_records_with_a_day_or_a_contact_with_a_number_are_one_child(names: list[str], below: str) -> None:
    adults = [("Ismail Tielemans", "Rony Lievens"), ("Ine Breugel", "Rudi Kerkhof"), ("Johan Mees", "Bas Meyer")]
    text = "\n\n".join(f"{name}\n" + below.format(10 + at, adult=adult, other=other)
                       for at, (name, (adult, other)) in enumerate(zip(names, adults, strict=True)))
    assert made(text) == [name.split()[0] for name in names]


@pytest.mark.parametrize("word", ["bee stings", "rosa Saft", "mila"])
def test_words_below_names_that_open_like_a_name_are_asked_about_and_hide_no_others(word: str) -> None:
    below = ["peanuts, tree nuts", "none known", word, "dairy", "eggs"]
    owners = ["Tamsin Orrelly", "Bexley Cane", "Iwo Marczuk", "Pip Harrowgate", "Desta Wolde"]
    text = "\n".join(f"{owner}\n  {words}" for owner, words in zip(owners, below, strict=True))
    assert made(text) == [owner.split()[0] for owner in owners]
    assert told(text) == [words for words in below if words != word]
    asked = [report.text.strip() for report in read_roster(text).lines if report.outcome is Outcome.LEFT_OUT]
    assert asked == [word]


def test_children_in_small_letters_set_in_below_groups_are_never_said() -> None:
    assert told("Otters\n  mia\n  leo\nFoxes\n  ana\n  xobrel\nHares\n  tom\n  vemka") == []


SHOUTED = [
    ("LEAVES EARLY MONDAYS", "ALLERGIC TO NUTS", "BUS 7 ONLY"),
    ("SE VA ANTES LOS LUNES", "SIN NUECES", "NUEVA EN OCTUBRE"),
    ("PART PLUS TÔT LE LUNDI", "PAS DE NOIX", "NOUVELLE EN OCTOBRE"),
    ("GEHT MONTAGS FRÜHER", "KEINE NÜSSE", "NEU IM OKTOBER"),
    ("SALE PRIMA IL VENERDÌ", "NIENTE NOCI", "NUOVA DA OTTOBRE"),
    ("FICA ATÉ TARDE NA SEGUNDA", "SEM NOZES", "NOVO EM OUTUBRO"),
]


@pytest.mark.parametrize("words", SHOUTED)
def test_what_is_shouted_below_each_name_is_told_once_for_all(words: tuple[str, str, str]) -> None:
    """Nobody is called LEAVES, and nothing is asked."""
    names = ("Mira Vost", "Theo Tarn", "Lena Brask")
    roster = read_roster("\n".join(line for pair in zip(names, words, strict=True) for line in pair))
    assert [child.practice for child in roster.children] == ["Mira", "Theo", "Lena"]
    assert not [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT]


def test_one_shouted_line_is_asked_about() -> None:
    roster = read_roster("Mira Vost\nTheo Tarn\nLena Brask\nGOES HOME WITH GRANDMA\nEmma Stone\nIda Moss")
    assert [child.practice for child in roster.children] == ["Mira", "Theo", "Lena", "Emma", "Ida"]
    assert [report.text for report in roster.lines if report.outcome is Outcome.LEFT_OUT] == ["GOES HOME WITH GRANDMA"]


def test_names_in_capitals_below_others_are_children() -> None:
    roster = read_roster("Mira Vost\nANNA VOST\nTheo Brandt\nLUZ DE LA CRUZ\nLena Weiss\nEMMA STONE")
    assert len(roster.children) == 6


def test_a_new_child_between_stars_is_nothing_said_of_the_one_above() -> None:
    """Two children were left out: a star opens a line about a child, too."""
    roster = read_roster("Ada Gin\nMia Tarn MOVED\n*new* Agnes Brae\nOtis Duff (starts Monday)\n*neu* Katja Quorne")
    assert [child.practice for child in roster.children] == ["Ada", "Mia", "Agnes", "Otis", "Katja"]


@pytest.mark.parametrize(("text", "names"), [
    ("MIRA VOST\nPeanut allergy\nLEO TARN\nWears glasses\nANNA KELL", ["Mira", "Leo", "Anna"]),
    ("CLARA FUCHS\nNussallergie\nJONAS BERG\nTrägt eine Brille\nEMIL KRAUSE\nSitzt vorne", ["Clara", "Jonas", "Emil"]),
    ("LUCÍA GIL\nAlergia a frutos secos\nHUGO RUIZ\nUsa gafas\nVERA SOLER", ["Lucía", "Hugo", "Vera"]),
    ("MIRA XOBREL\nReads well\nLEO DRAVO\nNew in May\nANNA PELGUN\nLikes trucks", ["Mira", "Leo", "Anna"]),
    ("LÉA ROUX\nPorte des lunettes\nHUGO PETIT\nMange à la cantine", ["Léa", "Hugo"]),
])
def test_what_is_said_below_names_in_capitals_is_told_and_no_child(text: str, names: list[str]) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == names
    assert {note.key for report in roster.lines if not report.child for note in report.notes} == {"roster.said_below"}


@pytest.mark.parametrize("text", [
    "MIRA VOST\nLeo Tarn\nANNA KELL\nZOE BRANDT", "MIRA VOST\nleo tarn\nANNA KELL\nzoe brandt",
    "MIRA\nvost\nLEO\ntarn",
])
def test_a_name_written_otherwise_below_capitals_is_a_child(text: str) -> None:
    assert len(read_roster(text).children) == 4


@pytest.mark.parametrize("names", [["הלוי, ארד", "סואעד, דב", "בר, נפתלי", "זינגר, רננה"],
                                   ["王, 秀梅", "李, 海燕", "张, 玉珍", "陈, 凤兰"]])
def test_a_few_capitals_behind_names_without_any_are_not_loud(names: list[str]) -> None:
    """A class that names no capitals stood in capitals by that, and every other child was told of the one above."""
    chosen = ["IRC", "IRC", "alternativa", "IRC"]
    roster = read_roster("\n".join(f"{name}    {one}" for name, one in zip(names, chosen, strict=True)))
    assert [child.practice for child in roster.children] == [name.split(", ")[1] for name in names]


@pytest.mark.parametrize(("title", "user", "word"), [
    ("Tablet passwords", "Username", "Password"), ("Claves de la tableta", "Usuario", "Contraseña"),
    ("Zugangsdaten Lese-App", "Benutzername", "Passwort"), ("Credenziali", "Nome utente", "Password"),
    ("Acessos", "Utilizador", "Palavra-passe"), ("Identifiants", "Identifiant", "Mot de passe"),
])
@pytest.mark.parametrize("names", ["Xobrel Vost,Vemka Tarn,Tulmo Berg", "אמי,זוהר,לירן"])
def test_a_first_line_apart_from_names_with_lines_below_is_asked_about(
        title: str, user: str, word: str, names: str) -> None:
    blocks = "\n\n".join(f"{name}\n{user}: k{at}21\n{word}: sun {at}4" for at, name in enumerate(names.split(",")))
    roster = read_roster(f"{title}\n\n{blocks}")
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names.split(",")]
    assert roster.lines[0].outcome is not Outcome.CHILD


def test_a_known_child_apart_from_others_with_lines_below_stays() -> None:
    blocks = "Ava\nAllergy: nuts\n\nLeo\nAllergy: none\n\nIda\nAllergy: eggs"
    assert [child.practice for child in read_roster(f"Mia\n\n{blocks}").children] == ["Mia", "Ava", "Leo", "Ida"]
