"""A group and its children in one line: a heading and each child; a child and what is about it stays one line."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster


def made(text: str) -> list[str]:
    try:
        return [child.practice for child in read_roster(text).children]
    except RosterError:
        return []


@pytest.mark.parametrize(("first", "second", "last"), [
    ("Red table (by the window): ", "Blue table (rug): ", "&"), ("Tisch rot (am Fenster): ", "Tisch blau: ", "u."),
    ("Table rouge, côté fenêtre : ", "Table bleue, tapis : ", "et"),
    ("Mesa roja - lavabo: ", "Mesa azul - rincón: ", "y"),
    ("Tavolo rosso (finestra) - ", "Tavolo blu (tappeto) - ", "e"), ("Mesa azul (pia): ", "Mesa verde (tapete): ", "e"),
    ("Monday: ", "Tuesday: ", "and"), ("7:05 Elm & 3rd: ", "7:09 Quarry Rd: ", "+"),
])
@pytest.mark.parametrize("known", [True, False])
def test_children_behind_a_label(first: str, second: str, last: str, known: bool) -> None:
    """As many names on each line do not make columns, and no line is a header; on lists of names or on none."""
    one, two = (["Mira", "Tilo", "Anna"], ["Bruno", "Emil", "Zoé"]) if known else (
        ["Fántain", "Ámdiam", "Xairfön"], ["Quorrik", "Zandelle", "Vexil"])
    if first.startswith("7") and not known:
        one, two = [f"{name} Vostrin" for name in one], [f"{name} Tarnö" for name in two]
    text = "\n".join(f"{label}{', '.join(names[:-1])} {last} {names[-1]}"
                     for label, names in ((first, one), (second, two)))
    assert made(text) == [name.split()[0] for name in one + two]


def test_each_line_of_one_frame_is_read_so() -> None:
    """A stop with one child, too; a label that has another form heads somebody else."""
    text = "7:02 Elm & 3rd: Mira Vost\n7:05 Quarry Rd: Tilo Tarn + Anna Berg\n7:08 the mailboxes on Pine: Emil Koch"
    assert made(text) == ["Mira", "Tilo", "Anna", "Emil"]
    assert made(f"Plomvier: Ada Lund\n\n{text}\n7:11 Mill Lane: Bruno Weiss\n7:14 Mill Lane: Zoé Petit") == [
        "Mira", "Tilo", "Anna", "Emil", "Bruno", "Zoé"]


def test_groups_read_again_are_the_same() -> None:
    roster = read_roster("Owls - sink: Mira, Tilo & Anna\nBears - rug: Bruno, Emil & Zoé")
    again = read_roster(roster.text)
    assert [child.practice for child in again.children] == [child.practice for child in roster.children]
    assert [line.outcome for line in roster.lines].count(Outcome.HEADING) == 2


def test_two_family_names_are_one_child() -> None:
    assert made("Mesa 1: Ana Ruiz y Gómez, Luis Soto y Mia Paz\nMesa 2: Emil Gil, Zoé Paz y Bruno Toro") == [
        "Ana", "Luis", "Mia", "Emil", "Zoé", "Bruno"]


@pytest.mark.parametrize("text", [
    "Mira Vost: Peanuts, Dairy\nTilo Tarn: Eggs, Soy\nAnna Berg: Kiwi, Wheat",
    "Mira: Jana & Paul\nTilo: Eva & Jan\nAnna: Rosa & Otto"])
def test_what_stands_behind_a_child_is_no_group(text: str) -> None:
    assert not set(made(text)) - {"Mira", "Tilo", "Anna"}


def test_two_names_with_a_hyphen_before_a_sign_are_never_one_child() -> None:
    roster = read_roster("Mira Vost\nAnne-Sophie Parent + Tilo Tarn")
    assert [child.practice for child in roster.children] == ["Mira"]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("lines", [
    ["Lions = {}, {}, {}", "Tigers = {}, {}, {}"],
    ["Mon: chess – {}, {}", "Tue: choir – {}, {}", "Wed: judo – {} and {}"]])
def test_a_label_may_have_a_sign_of_its_own(lines: list[str]) -> None:
    names = ["Mira", "Tilo", "Anna", "Emil", "Bruno", "Zoé"]
    assert made("\n".join(lines).format(*names)) == names


@pytest.mark.parametrize("labels", [
    ["Line leader", "Door holder", "Lights", "Day off"], ["Capofila", "Apre la porta", "Luci", "Riposo"],
    ["Chef de rang", "Gardien de la porte", "Lumières", "En repos"], ["Türdienst", "Kalender", "Bücherei", "Frei"],
    ["Primero de la fila", "Abre la puerta", "Luces", "Descansan"],
    ["Ajudante da fila", "Rega as plantas", "Luzes", "Folga"]])
@pytest.mark.parametrize("sign", [":", " -"])
def test_what_children_do_is_no_child(labels: list[str], sign: str) -> None:
    """Be one behind some labels and several behind others, and names on no list."""
    behind = ["Xobrel", "Vemka, Outhna", "Tilo", "Anna, Quorrik, Zoé"]
    text = "\n".join(f"{label}{sign} {names}" for label, names in zip(labels, behind, strict=True))
    assert made(text) == ["Xobrel", "Vemka", "Outhna", "Tilo", "Anna", "Quorrik", "Zoé"]


def test_families_called_as_a_job_are_behind_their_given_names() -> None:
    assert "Eva" not in made("Lara Porta: Anna, Leo\nKai Licht: Eva, Tom\nEmil Frei: Ida, Max")


def test_a_row_of_a_photo_ends_who_stood_there() -> None:
    text = ("Back row, left to right: Mira Vost, Tilo Tarn.\nMiddle row: Anna Berg, Kashish Pai, Emil Koch, Ada Lund\n"
            "Front row: Zoé Petit, Bruno Weiss\n{}: Xobrel Quill")
    for away in ("Not pictured", "Absent", "Assente", "Fehlt"):
        assert made(text.format(away)) == ["Mira", "Tilo", "Anna", "Kashish", "Emil", "Ada", "Zoé", "Bruno", "Xobrel"]


@pytest.mark.parametrize("lines", [
    ("In alto da sinistra: Mira, Tilo", "Al centro: Anna, Ben", "Seduti: Clara", "Assente: Emil",
     "Maestre: sig.ra Tarn, sig.ra Vost"),
    ("Em cima, da esq.: Mira, Tilo", "Ao meio: Anna, Ben", "Sentados: Clara", "Faltou: Emil",
     "Educadoras: D. Liu, D. Vo"),
    ("Back row (l. to r.): Mira, Tilo", "In the middle: Anna, Ben", "Front row, sitting: Clara", "Not pictured: Emil",
     "Teachers: Mrs. Tarn, Mr. Vost"),
])
def test_the_rows_of_a_photo(lines: tuple[str, ...]) -> None:
    """Where they stand are words that open with a small one, be that a name too (Al); the adults are nobody."""
    assert made("\n".join(lines)) == ["Mira", "Tilo", "Anna", "Ben", "Clara", "Emil"]


@pytest.mark.parametrize("nobody", ["none :(", "niemand", "personne", "nadie", "nessuno", "ninguém"])
def test_a_group_of_nobody_has_no_child(nobody: str) -> None:
    assert made(f"Monday: Mira, Tilo\nTuesday: {nobody}\nThursday: Anna, Ben") == ["Mira", "Tilo", "Anna", "Ben"]


def test_days_of_the_week_cut_to_a_letter_are_no_children() -> None:
    """Where nobody's name is known, each day was made a child and the child a heading."""
    text = "Thuveis Reimfair - full day\nFyzia Trimyes - T/Th\nDleinth Sylshash - M/W/F\nTeithch Trylbrom - full day"
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Thuveis", "Teithch"]
    asked = [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT]
    assert asked == ["Fyzia Trimyes - T/Th", "Dleinth Sylshash - M/W/F"]


def test_sizes_behind_names_are_no_children_where_a_line_counts_them() -> None:
    text = "Renato Matos: S\nBrian Brito: XS\nJuliana Coelho: M\n\nTallas: 3 x XS, 5 x S, 8 x M"
    assert made(text) == ["Renato", "Brian", "Juliana"]


@pytest.mark.parametrize(("first", "second"), [
    ("Pick-up 1 – 4 Elm Road – 7:15: ", "Pick-up 2 – 9 Elm Road – 7:31: "),
    ("Halt 1 - Kirche - 7.15: ", "Halt 2 - Markt - 7.31: "),
    ("Arrêt 1 – 4 rue Haute – 7:15 : ", "Arrêt 2 – 9 rue Basse – 7:31 : "),
    ("Parada A – Plaza – 7:15: ", "Parada B – Río – 7:31: "),
    ("Fermata 1 – Via Alta 4 – 7:15: ", "Fermata 2 – Via Alta 9 – 7:31: "),
    ("Ponto 1 – Rua 4 – 7:15: ", "Ponto 2 – Rua 9 – 7:31: ")])
@pytest.mark.parametrize("names", [
    ("Mira Vost", "Tilo Tarn", "Anna Lind", "Leo Rey"), ("Xobrel Vost", "Vemka Tarn", "Outhna Lind", "Quorrik Rey")])
def test_a_stop_with_its_time_is_a_label_and_nobody_who_writes(first: str, second: str, names: tuple[str, ...]) -> None:
    text = f"{first}{names[0]}, {names[1]}\n{second}{names[2]}, {names[3]}"
    assert made(text) == [name.split()[0] for name in names]
    assert read_roster(text).lines[0].outcome is Outcome.HEADING
    assert made(f"{first}{names[0]}\n{second}{names[2]}") == [names[at].split()[0] for at in (0, 2)], "one each"


def test_many_names_behind_a_label_are_a_group_too() -> None:
    names = [f"Xo{chr(97 + at)}brel Vost{chr(97 + at)}inger" for at in range(24)]
    assert len(made(f"Stop 1: {', '.join(names[:22])}\nStop 2: {', '.join(names[22:])}")) == len(names)


def test_a_name_that_is_a_word_too_leaves_a_stop_with_its_time_a_label() -> None:
    assert made("Stop 1 – Elm Road – 7:15: Mira Vost, Leo Tarn\nStop 2 – Mill Lane – 7:31: Lan He, Ada Bru") == [
        "Mira", "Leo", "Lan", "Ada"]


@pytest.mark.parametrize("days", [("Monday", "Tuesday", "Wednesday"), ("Mo", "Di", "Mi"), ("lundi", "mardi", "jeudi"),
                                  ("Table 1", "Table 2", "Table 3")])
def test_a_child_may_come_again_on_another_day(days: tuple[str, str, str]) -> None:
    """The last of each day was a child of the family Monday, and Mia a remark."""
    text = "\n".join(f"{day}: {names}" for day, names in zip(
        days, ("Mia, Leo, Ava", "Mia, Otis, Nora", "Leo, Nora, Emil"), strict=True))
    children = read_roster(text).children
    assert {child.practice.split()[0] for child in children} == {"Mia", "Leo", "Ava", "Otis", "Nora", "Emil"}
    assert not any(child.family for child in children)


def test_words_that_come_again_behind_days_are_no_children() -> None:
    roster = read_roster("Mia Vost\nMonday: Library, Art\nTuesday: Art, Music")
    assert [child.practice for child in roster.children] == ["Mia"]


@pytest.mark.parametrize("text", [
    "Salto: 1. Mia Vost, 2. Leo Zell, 3. Ava Quin\n30 metri: 1. Theo Marn, 2. Emma Tarn, 3. Noah Reed",
    "DÍA DEL DEPORTE\nRelevos: 1. Mia, 2. Leo, 3. Ava\nSalto: 1. Theo, 2. Emma, 3. Noah",
    "Sack race: 1) Mia, 2) Leo, 3) Ava\nRelay: 1) Theo, 2) Emma, 3) Noah",
    "Weitsprung: 1. Mia, 2. Leo, 3. Ava\n30-m-Lauf: 1. Theo, 2. Emma, 3. Noah",
])
def test_who_came_first_and_second_are_children(text: str) -> None:
    made = [child.practice for child in read_roster(text).children]
    assert made == ["Mia", "Leo", "Ava", "Theo", "Emma", "Noah"]


def test_what_a_child_wants_first_and_second_is_no_child_in_silence() -> None:
    text = ("Xamim Vost: 1. Schach, 2. Malen, 3. Chor\nThouga Zell: 1. Turnen, 2. Geige, 3. Laufen\n"
            "Berol Quin: 1. Singen, 2. Kochen, 3. Hockey")
    with pytest.raises(RosterError, match="Malen"):
        read_roster(text)


@pytest.mark.parametrize("text", [
    "Mia: 1. Leo, 2. Ava, 3. Bo\nLeo: 1. Mia, 2. Bo\nAva: 1. Leo, 2. Mia",
    "Mia Vost: 1. Chess, 2. Art, 3. Choir\nLeo Zell: 1. Swimming, 2. Dance, 3. Drums\nAva Quin: 1. Art, 2. Chess",
])
def test_what_a_known_child_wants_is_beside_it(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mia", "Leo", "Ava"]


def test_two_of_names_on_no_list_are_parted_behind_what_is_no_child() -> None:
    text = "Long jump: 1. Irbril, 2. Gaithomne\n30 m run: 1. Shouron, 2. Tanron\nRelay: 1. Thyl"
    assert made(text) == ["Irbril", "Gaithomne", "Shouron", "Tanron", "Thyl"]


def test_one_alone_behind_each_place_is_a_child() -> None:
    text = "FESTA DELLO SPORT – RISULTATI\nSalto: 1. Mia Vost\n30 metri: 1. Leo Zell\nCorsa nei sacchi: 1. Ava Quin"
    assert made(text) == ["Mia", "Leo", "Ava"]


@pytest.mark.parametrize(("text", "names"), [
    ("Rose: 1. Mia, 2. Leo\nBleu: 1. Anna, 2. Theo", ["Mia", "Leo", "Anna", "Theo"]),
    ("Rot: 1. Mia, 2. Leo\nViola: 1. Anna, 2. Theo", ["Mia", "Leo", "Anna", "Theo"]),
    ("Rose : 1) Zoé, 2) Léo\nVert : 1) Anna, 2) Hugo, 3) Jade", ["Zoé", "Léo", "Anna", "Hugo", "Jade"]),
])
def test_counted_names_behind_a_colour_that_is_a_name_too_are_children(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


@pytest.mark.parametrize("text", [
    "Rose: 1. Mia, 2. Leo\nViolet: 1. Anna, 2. Theo", "Rose: 1. Xobrel, 2. Quorra\nBleu: 1. Dravo, 2. Pelgun",
    "Rose: 1. Mia, 2. Leo",
])
def test_counted_names_are_never_merged(text: str) -> None:
    with pytest.raises(RosterError) as found:
        read_roster(text)
    assert {report.outcome for report in found.value.lines} == {Outcome.LEFT_OUT}


@pytest.mark.parametrize("title", ["", "Bus stops\n", "Paradas del autobús\n"])
@pytest.mark.parametrize("last", ["A pie: {}", "Walkers: {}", "Elm Street 8:10: {}, Otis", "School Road: {}"])
@pytest.mark.parametrize("names", [("Vera", "Iker", "Noa", "Leo", "Amaia", "Bruno"),
                                   ("Xobrel", "Vemka", "Tulmo", "Nyai", "Noth", "Ral")])
def test_children_behind_stops_with_their_times(title: str, last: str, names: tuple[str, ...]) -> None:
    """A place with a time before several names is no sender of a message: two of a stop were made one child."""
    one, two, three, four, five, six = names
    lines = [f"Plaza Mayor 8:05: {one}, {two}", f"Calle Larga 8:12: {three}, {four} y {five}", last.format(six)]
    roster = read_roster(title + "\n".join(lines))
    made = [child.practice for child in roster.children if child.practice != "Otis"]
    asked = [line.text for line in roster.lines if line.outcome is Outcome.LEFT_OUT]
    assert made == list(names) or (made == list(names[:5]) and any(six in text for text in asked))
