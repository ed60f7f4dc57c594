"""Groups told by counts, by initials and by known names: never merged, and no label is a child, be it on no list."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.sure_groups import are_led_by_adults, are_surely_groups, is_of_adults, is_over_groups

KNOWN = [["Mira", "Tilo", "Anna"], ["Emil", "Bruno"], ["Zoé", "Ida", "Leo", "Ava"]]
UNKNOWN = [["Fántain", "Ámdiam", "Xairfön"], ["Quorrik", "Vexil"], ["Thoum", "Gaskwan", "Peldro", "Wimsu"]]
LABELS = [["Hot lunch", "Vegetarian", "Milk only"], ["Sin gluten", "Menú normal", "Come en casa"],
          ["Sans porc", "Cantine", "Panier-repas"], ["Ohne Milch", "Brotdose", "Mittagessen"],
          ["Senza glutine", "Mensa", "Pasto da casa"], ["Dieta", "Refeição normal", "Lanche de casa"]]


def made(text: str) -> list[str]:
    try:
        return [child.practice for child in read_roster(text).children]
    except RosterError:
        return []


def flat(names: list[list[str]]) -> list[str]:
    return [name for some in names for name in some]


@pytest.mark.parametrize("labels", LABELS)
@pytest.mark.parametrize("form", ["{} ({}): ", "{} ({}) – ", "{} – {} – ", "{} [{}] -> ", "{} = {}: "])
@pytest.mark.parametrize("sign", [", ", "; ", " / "])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_a_count_that_is_right_tells_a_group(names: list[list[str]], sign: str, form: str, labels: list[str]) -> None:
    text = "\n".join(form.format(label, len(some)) + sign.join(some)
                     for label, some in zip(labels, names, strict=True))
    assert made(text) == flat(names)
    assert made(f"Mensa 12/03\n{text}") == flat(names)


@pytest.mark.parametrize("labels", [*LABELS, ["Sand", "Blocks", "Art table"], ["Eau", "Sciences", "Dînette"]])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_an_initial_behind_each_name_tells_a_group(names: list[list[str]], labels: list[str]) -> None:
    text = "\n".join(f"{label} = " + ", ".join(f"{name} V." for name in some)
                     for label, some in zip(labels, names, strict=True))
    assert made(text) == flat(names)


@pytest.mark.parametrize(("labels", "join"), [
    (["Blocks", "Sand", "Play dough"], "and"), (["Arte", "Casita", "Ciencias"], "y"),
    (["Eau", "Pâte à modeler", "Graphisme"], "et"), (["Knete", "Bauecke", "Maltisch"], "und"),
    (["Pittura", "Pasta di sale", "Travasi"], "e"), (["Blocos", "Areia e água", "Escrita"], "e")])
@pytest.mark.parametrize("title", ["", "Angoli\n", "Ecken Woche 3\n", "Rincones, semana 8\n", "Center rotation\n"])
def test_known_names_behind_words_on_no_list(title: str, join: str, labels: list[str]) -> None:
    text = "\n".join(f"{label} – {', '.join(some[:-1])} {join} {some[-1]}"
                     for label, some in zip(labels, KNOWN, strict=True))
    assert made(title + text) == flat(KNOWN)
    assert not any(line.outcome is Outcome.LEFT_OUT for line in read_roster(title + text).lines)


def test_one_group_alone_and_its_title() -> None:
    assert made("Angoli settimana 23\nPittura = Apríl, Mira, Leo, Anna") == ["Apríl", "Mira", "Leo", "Anna"]


@pytest.mark.parametrize(("labels", "names"), [
    (["Mira", "Leo"], [["Jana", "Paul"], ["Eva", "Jan"]]),  # children and their grown-ups
    (["Mira", "Leo"], [["Xairfön", "Vexil", "Thoum"], ["Peldro", "Wimsu", "Quorrik"]]),
    (["Xobrel", "Tarnul"], [["Peanuts", "Dairy"], ["Eggs", "Soy"]]),
    (["Xobrel", "Tarnul"], [["Peanuts", "Dairy", "Soy"], ["Peanuts", "Dairy", "Soy"]]),
    (["Mira (2)", "Leo (3)"], [["Jana", "Paul", "Max"], ["Eva", "Jan"]]),  # ages
    (["Blocks", "Sand"], [["Mira"], ["Leo"]]), (["Blocks"], [["Mira", "Leo"]]),
])
def test_what_may_be_children_and_what_is_said_of_them_is_unsure(labels: list[str], names: list[list[str]]) -> None:
    assert not are_surely_groups(labels, names)


def test_labels_of_adults_and_titles() -> None:
    assert [is_of_adults(label) for label in ("Parents", "Frau Vost", "Hot lunch")] == [True, True, False]
    told = [is_over_groups(text) for text in ("Ecken Woche 3", "Angoli", "Mira", "Xobrel Tarn")]
    assert told == [True, True, False, False]


def test_a_stop_with_the_street_of_another_is_no_line_about_children() -> None:
    text = "Stop 1 – Elm St: Mira, Leo\nStop 2 – Oak Ave: Anna, Emil\nStop 3 – Elm St: {}"
    assert made(text.format("Zoé")) == ["Mira", "Leo", "Anna", "Emil", "Zoé"]
    assert made(text.format("Xobrel"))[-1] == "Xobrel"


def test_lines_of_one_word_in_common_leave_no_other_behind() -> None:
    text = "Hot lunch: Vexil B., Thoum C.\nPacked lunch: Peldro D., Wimsu E.\nVegetarian: Quorrik F., Gask G."
    assert made(text) == ["Vexil", "Thoum", "Peldro", "Wimsu", "Quorrik", "Gask"]


def test_a_month_that_is_a_name_has_nobody() -> None:
    assert "January" not in made("October: Mira, Leo\nNovember: Anna, Emil\nJanuary: none :(")


def test_a_driver_over_stops_is_nobody_of_them() -> None:
    text = ("Ruta 34\nConductor: Sr. Vost\nParada 1 – Plaza: Xairfön, Vexil, Thoum\n"
            "Parada 2 – Iglesia: Peldro, Wimsu, Quorrik")
    assert made(text) == ["Xairfön", "Vexil", "Thoum", "Peldro", "Wimsu", "Quorrik"]


@pytest.mark.parametrize(("adults", "room", "without"), [
    (["Mrs. Vost", "Mr. Tarn"], "4 spots", "Needs a lift"), (["Sra. Vost", "Profe Tarn"], "4 asientos", "Van en bus"),
    (["Mme Vost", "M. Tarn"], "4 sièges", "À placer"), (["Frau Vost", "Herr Tarn"], "4 freie Sitze", "Suchen noch"),
    (["Sig.ra Vost", "maestra Tarn"], "4 sedili", "Senza auto"),
    (["Sra. Vost", "Prof. Tarn"], "4 vagas", "Ainda sem carro")])
@pytest.mark.parametrize("form", ["{} ({}): ", "{} ({}) -> ", "{} ({}) – "])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_grown_ups_with_room_for_some_stand_before_children(
        names: list[list[str]], form: str, without: str, room: str, adults: list[str]) -> None:
    sign = form[form.index(")") + 1 :]
    lines = [form.format(adult, room) + " + ".join(some) for adult, some in zip(adults, names, strict=False)]
    text = "\n".join([*lines, without + sign + ", ".join(names[2])])
    assert made(text) == flat(names)
    assert made(f"Zzz Quorn\n\n{text}") == flat(names), "who stands apart over groups is asked about"


def test_several_grown_ups_before_known_names_and_what_they_teach() -> None:
    assert made("Mrs. Vost: Mira, Tilo\nMr. Tarn: Anna, Ben, Bo") == ["Mira", "Tilo", "Anna", "Ben", "Bo"]
    assert not made("Mrs. Vost: Math, Reading\nMr. Tarn: Art, Music")
    assert not are_led_by_adults(["Frau Vost", "Herr Tarn"], [["Xobrel", "Vemka"], ["Tunzo", "Quilba"]])
    assert not are_led_by_adults(["Mira (5 years)", "Leo (4 years)"], [["Peanuts", "Dairy"], ["Eggs"]])


@pytest.mark.parametrize("line", ["Mrs. Vost -> Mira, Xobrel", "Mme Vost : Xobrel, Vemka", "Frau Vost – Mira und Tilo"])
def test_names_behind_one_grown_up_are_asked_about(line: str) -> None:
    roster = read_roster(f"Anna\nEmil\nBruno\n{line}")
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT
    assert not any(note.key == "roster.adult" for note in roster.lines[-1].notes)


JOBS = [
    ["Line leader", "Caboose", "Feeds the fish", "Lights"],
    ["Lider", "Reparto de pinturas", "Luces", "Riega las plantas"],
    ["Chef de rang", "Lumières", "Calendrier", "Nourrit le lapin"], ["Türdienst", "Gießt Blumen", "Kalender", "Tafel"],
    ["Capofila", "Luci", "Cibo ai pesci", "Calendario"],
    ["Fila", "Luzes", "Comida dos peixes", "Calendário"]]


@pytest.mark.parametrize("labels", JOBS)
@pytest.mark.parametrize("sign", [": ", " = ", " – ", " -> "])
def test_one_child_behind_each_job(labels: list[str], sign: str) -> None:
    """Known ones are made, and so are others where several stand behind one; else at least no job is a child."""
    assert made("\n".join(f"{label}{sign}{name}" for label, name in zip(labels, KNOWN[2], strict=True))) == KNOWN[2]
    lines = [f"{label}{sign}{name}" for label, name in zip(labels, UNKNOWN[2], strict=True)]
    assert made("\n".join([*lines, f"Zzz{sign}Ilvor, Umbrik"])) == [*UNKNOWN[2], "Ilvor", "Umbrik"]
    assert set(made("\n".join(lines))) <= set(UNKNOWN[2])


@pytest.mark.parametrize("title", ["Helpers of the Week", "Helfer der Woche", "Encargados de la Semana",
                                   "Aiutanti della Settimana", "Ajudantes da Semana", "Métiers de la Semaine"])
def test_a_title_over_jobs_that_ends_in_a_week(title: str) -> None:
    assert made(f"{title}\nLights: Mira, Tilo\nDoor: Anna\nPlants: Emil") == ["Mira", "Tilo", "Anna", "Emil"]


@pytest.mark.parametrize("label", [
    "Stop {}", "Peg {}", "Arrêt {} – École", "Halt {} (Markt)", "Parada n.º {} – Plaza", "Fermata {}, Via Lunga"])
@pytest.mark.parametrize("title", ["", "Route 36\n", "Ligne 4\n", "Linie 12\n", "Percorso 2\n", "Linha 7\n"])
def test_labels_that_count_on_are_groups_of_whoever_stands_behind(label: str, title: str) -> None:
    """As soon as three stand behind one; by twos they may be a family’s and a given name."""
    names = (("Xobrel", "Vemka", "Tulmo"), ("Nyai", "Sathther"), ("Noth", "Ral"))
    text = title + "\n".join(f"{label.format(at)}: {', '.join(some)}" for at, some in enumerate(names, 1))
    assert made(text) == [name for some in names for name in some]


def test_two_words_behind_labels_that_count_on_stay_one_child_each() -> None:
    lines = ("Peg 1: Vost, Xobrel", "Peg 2: Tarn, Vemka", "Peg 3: Berg, Tulmo")
    assert [(child.given, child.family) for child in read_roster("\n".join(lines)).children] == [
        ("Xobrel", "Vost"), ("Vemka", "Tarn"), ("Tulmo", "Berg")]
