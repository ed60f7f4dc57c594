"""What stands over a list with signs and has none is a title, or asked about where it may be a name."""

from __future__ import annotations

import time

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

BULLETS = "• Mira V.\n• Bo T. – Badekappe\n• Una G.\n• Xobrel F."
NUMBERS = "1. Mira Vost\n2. Bo Tarn\n3. Una Grell\n4. Xobrel Fask"
COMMAS = "Vost, Mira\nTarn, Bo\nGrell, Una\nFask, Xobrel"
WIDE = "01  Mira bin Vost\n02  Bo bin Tarn\n03  Una binti Grell"
TITLES = [
    ("Seepferdchen, 2:15 Uhr, Bahn 1, Leitung: Yolima", BULLETS), ("Tortues – 2:15 – moniteur : Yolima", BULLETS),
    ("5 Years Cempaka - name list", NUMBERS), ("5 Years Cempaka - name list", WIDE), ("Klasse Vost", NUMBERS),
    ("Kinder von Frau Yılmaz", COMMAS), ("Kinder von Herrn Vost", COMMAS), ("Os do turno 2", COMMAS),
    ("Los que vienen temprano", BULLETS), ("Gli amici del giardino", NUMBERS), ("Erlenraum, 2026/27", NUMBERS),
    ("Raum Erle 2026/27", NUMBERS),
]


@pytest.mark.parametrize("gap", ["\n", "\n\n"])
@pytest.mark.parametrize(("title", "below"), TITLES)
def test_a_title_is_no_child_and_takes_none_with_it(title: str, below: str, gap: str) -> None:
    read = read_roster(title + gap + below)
    assert read.lines[0].outcome is Outcome.HEADING
    assert len(read.children) == len(below.splitlines())


@pytest.mark.parametrize("title", ["Nama murid", "Quelli del mercoledì", "Tortues – 2:15 – ligne 1 : Yolima"])
@pytest.mark.parametrize("below", [NUMBERS, WIDE, BULLETS])
def test_a_title_of_words_on_no_list_is_asked_about(title: str, below: str) -> None:
    assert read_roster(f"{title}\n\n{below}").lines[0].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("below", [BULLETS, NUMBERS, COMMAS])
def test_what_may_be_a_rare_name_is_asked_about(below: str) -> None:
    read = read_roster(f"Qwembel Zorf\n{below}")
    assert [note.key for note in read.lines[0].notes] == ["roster.unlike"]
    assert len(read_roster(f"Name: Qwembel Zorf\n{below}").children) == len(read.children) + 1


COLUMNS = "lun 1/12\tMax – fruits\nmer 3/12\tIda – pain\nven 5/12\tAva – fruits\nlun 8/12\tLeo – pain"


@pytest.mark.parametrize("gap", ["\n", "\n\n"])
def test_what_stands_over_columns_is_a_title_or_asked_about(gap: str) -> None:
    for title, outcome in (("Liste du goûter", Outcome.HEADING), ("Goûters de décembre", Outcome.LEFT_OUT),
                           ("Snack rota – thank you!", Outcome.LEFT_OUT)):
        read = read_roster(title + gap + COLUMNS)
        assert read.lines[0].outcome is outcome
        assert [child.practice for child in read.children] == ["Max", "Ida", "Ava", "Leo"]
    assert read_roster(f"Mia Chen{gap}{COLUMNS}").children[0].practice == "Mia"


def test_a_known_name_over_number_one_is_asked_about() -> None:
    """Most often it is the teacher; where number two follows, it is the first child."""
    assert read_roster(f"Laura Martin\n{NUMBERS}").lines[0].outcome is Outcome.LEFT_OUT
    assert read_roster("Laura Martin\n2. Bo Tarn\n3. Una Grell\n4. Ida Fask").lines[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("text", [
    f"Mia\n{BULLETS}", f"Mia Chen\n{COMMAS}", f"Mia Chen – bus at 2:15\n{BULLETS}", f"Mia, Room 4\n\n{BULLETS}",
    f"{BULLETS}\nMia Chen", "- Mira Vost\n- Bo Tarn\nMia Chen\n- Una Grell\n- Ida Fask",
    "Mia\n- Peanuts\n- Milk\n- Eggs",
])
def test_a_known_name_over_bullets_and_commas_stays_a_child(text: str) -> None:
    assert "Mia" in [child.practice for child in read_roster(text).children]


_BESIDE = ("", " (new)", ", Room 4", " – bus 7", " 4 yrs", " (Gruppe 2)", ", Frau Vost", " – Frau Vost", " needs help",
           ": absent", " 2:15", " class B", " AM", ", 2026/27", " – Teacher Vost", ", Fasksen, grade K", " [a]")


@pytest.mark.parametrize("beside", _BESIDE)
@pytest.mark.parametrize("name", ["Vemka", "Vemka Tarnsen", "Tarnsen, Vemka", "TARNSEN Vemka", "Vemka T.", "Mia",
                                  "Hansen, Lene", "PINTO Heloísa", "Mia Sala"])
def test_a_name_without_the_sign_of_the_others_is_never_a_heading(name: str, beside: str) -> None:
    for below in (BULLETS, NUMBERS, COMMAS, WIDE):
        for gap in ("\n", "\n\n"):
            assert read_roster(name + beside + gap + below).lines[0].outcome is not Outcome.HEADING
        first, *others = below.split("\n")
        assert read_roster("\n".join((first, name + beside, *others))).lines[1].outcome is not Outcome.HEADING


@pytest.mark.parametrize("below", [
    "Mira Vost\nBo Tarn\nUna Grell", "2. Mira Vost\n3. Bo Tarn\n4. Una Grell", "1. needs help\n2. no photos\n3. naps"])
def test_without_such_a_list_nothing_is_a_title(below: str) -> None:
    assert read_roster(f"Xobrel Tarn\n{below}").lines[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("line", [
    "Driver: Eleanor Vale", "Bus driver: Eleanor Vale", "Fahrer: Tom Vale", "Leitung: Tom Vale",
    "Sorgeberechtigt: Tom Vale", "Chauffeur du car : Luc Vale", "Monitrice : Luce Vale", "Conductora: Ana Vale",
    "Motorista: Rita Vale",
])
def test_an_adult_with_a_word_for_what_they_do_is_no_child(line: str) -> None:
    read = read_roster(f"{line}\nMira Vost\nBo Tarn\nUna Grell\nIda Fask")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Una", "Ida"]
    assert read.lines[0].outcome is Outcome.HEADING


def test_a_job_of_a_child_and_a_family_name_are_no_adult() -> None:
    text = "Line leader: Mia\nMira Vost\nAdam Driver\nDriver, Una\nHelper: Leo"
    assert {"Mira", "Adam", "Una"} <= {child.practice for child in read_roster(text).children}
    assert Outcome.HEADING not in {line.outcome for line in read_roster(text).lines}


@pytest.mark.parametrize("line", ["• Haithdlam R. – no dunking please", "- Qwembel Z: no photos please"])
def test_an_initial_makes_a_name_of_what_stands_before_a_request(line: str) -> None:
    assert read_roster(f"{line}\n{BULLETS}").lines[0].outcome is Outcome.CHILD


@pytest.mark.parametrize("title", ["Allergien / Essen", "Allergies / food", "ALLERGIE – riservato", "Alergias – 3.º A"])
@pytest.mark.parametrize("sign", [" =", ":", " –"])
def test_a_title_that_opens_with_a_word_of_care_is_made_by_nobody(title: str, sign: str) -> None:
    names = ["Xobrel Vost", "Vemka Tarn", "Outhna Quill", "Kwil Elm"]
    read = read_roster("\n".join((title, *(f"{name}{sign} milk" for name in names))))
    assert [child.practice for child in read.children] == ["Xobrel", "Vemka", "Outhna", "Kwil"]
    assert read.lines[0].outcome in {Outcome.LEFT_OUT, Outcome.HEADING}


def test_who_writes_a_letter_over_numbers_is_asked_about() -> None:
    """Behind other lines, too, where a child of the list would have a number."""
    read = read_roster(f"Siehe unten, liebe Grüße\nIda\nVon unterwegs gesendet\n\nvon Jo Berg:\n\n{NUMBERS}")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Una", "Xobrel"]


def test_boxes_to_tick_are_signs_of_a_list() -> None:
    read = read_roster("Carpetas\n\n□ Xobrel\n✓ Vemka\n□ Outhna\n☒ Jelbru\n✗ Syvan")
    assert [child.practice for child in read.children] == ["Xobrel", "Vemka", "Outhna", "Jelbru", "Syvan"]


@pytest.mark.parametrize("behind", [" 28", ": Lunes 1/12", " (K)", " – bus"])
def test_a_first_line_without_what_all_others_have_is_asked_about(behind: str) -> None:
    names = ("Xobrel", "Vemka", "Jelbru", "Pesku", "Niftam", "Trumlu")
    roster = read_roster("\n".join(("Büchertaschen", *(f"{name}{behind}" for name in names))))
    assert [child.practice for child in roster.children] == list(names)
    assert read_roster("\n".join(("Mira", *(f"{name}{behind}" for name in names)))).children[0].practice == "Mira"


def test_a_title_in_small_letters_over_columns_is_asked_about() -> None:
    rows = [f"{day}\t{name}" for day, name in zip(("Lunes 1/12", "Martes 2/12", "Jueves 3/12", "Lunes 4/12"),
                                                  ("Xobrel", "Vemka", "Jelbru", "Pesku"), strict=True)]
    roster = read_roster("\n".join(("Día del protagonista", *rows)))
    assert [child.practice for child in roster.children] == ["Xobrel", "Vemka", "Jelbru", "Pesku"]


def test_empty_lines_cost_next_to_nothing() -> None:
    """As a sheet has them whose rows begin far down: forty thousand took the reader over half a minute."""
    start = time.process_time()
    assert len(read_roster("\n" * 40_000 + "Mia\nLeo").children) == 2
    assert time.process_time() - start < 12


@pytest.mark.parametrize("title", ["Targhette", "Garderobenschilder", "Vlimbo krast"])
def test_unknown_words_over_one_line_of_names_are_asked_about(title: str) -> None:
    for names in ("Mira, Leo, Ana, Tom, Eva", "Mira Vost, Leo Tarn, Ana Ruiz, Tom Berg"):
        roster = read_roster(f"{title}\n\n{names}")
        assert len(roster.children) == names.count(",") + 1
        assert roster.lines[0].outcome is not Outcome.CHILD


def test_a_given_name_over_one_line_of_names_is_a_child() -> None:
    assert len(read_roster("Emil\n\nMira, Leo, Ana, Tom, Eva").children) == 6


@pytest.mark.parametrize("title", ["Hora da novidade", "Día del protagonista", "Büchertaschen", "Sacs de lecture"])
@pytest.mark.parametrize("form", ["{0} #{1}", "#{1} {0}", "{1} = {0}", "{0} – Mon {1}/12", "{0} ({1})"])
def test_a_first_line_without_the_figure_of_all_others_is_no_child(title: str, form: str) -> None:
    names = ["Mira", "Xobrel", "Anna", "Vemka"]
    lines = [form.format(name, at) for at, name in zip((7, 3, 12, 9), names, strict=True)]
    assert [child.practice for child in read_roster("\n".join((title, *lines))).children] == names


def test_a_known_child_without_a_number_stays() -> None:
    assert len(read_roster("Ida\nMira #4\nTilo #7\nAnna #2\nBen #9").children) == 5
    assert len(read_roster("1. Mira Vost (starts Monday)\n2. Tilo Tarn\n3. Anna Berg\n4. Ben Koch").children) == 4


@pytest.mark.parametrize("title", ["MEDICATION AND GRACE PERIODS", "ALERGIAS Y SALUD", "ALLERGIES ET SANTÉ",
                                   "Allergien und Salud", "Allergie e Salute", "Alergias e Salud"])
def test_words_of_care_joined_to_what_may_be_a_name_are_no_child(title: str) -> None:
    roster = read_roster(f"{title} – 2026\n\nMira Vost: nuts\nTilo Brae: none\nAnna Reed: none\nBen Pell: milk")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna", "Ben"]


@pytest.mark.parametrize("title", ["Photo sale – March", "Venta de fotos – mayo", "Vente de gâteaux - juin 2026",
                                   "Kuchenverkauf – April", "Vendita torte – marzo", "Venda de bolos – maio"])
def test_a_first_line_with_a_month_aside_over_other_asides_is_no_child(title: str) -> None:
    names = ("Mira Vost", "Tilo Brae", "Anna Reed", "Ben Pell", "Ida Thal")
    rows = "\n".join(f"{name} / {at + 2} / paid" for at, name in enumerate(names))
    roster = read_roster(f"{title}\n{rows}\nTotal: 20")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna", "Ben", "Ida"]


def test_a_child_with_a_month_aside_among_such_stays() -> None:
    names = ("Xobrel Vost", "Tilo Brae", "Anna Reed", "Ben Pell", "Ida Thal", "Mira Menk")
    months = ("March", "May", "June", "March", "July", "April")
    roster = read_roster("\n".join(f"{name} – {month}" for name, month in zip(names, months, strict=True)))
    assert roster.children[0].given == "Xobrel"


@pytest.mark.parametrize("title", [
    "Hello and welcome to our group!", "¡Hola, familias!", "Bonjour à tous !", "Hallo, liebe Eltern!",
    "Buongiorno a tutti!", "Olá, famílias!", "Class 1b", "Klasse 1b", "Turma 1b"])
@pytest.mark.parametrize("sign", ["•", "–", "o", "\t▪"])
def test_a_known_name_between_a_title_and_the_first_bullet_is_asked_about(title: str, sign: str) -> None:
    below = "\n".join(f"{sign} {name}" for name in ("Mira", "Bo", "Una", "Tilo"))
    read = read_roster(f"{title}\nAnna Lind\n\n{below}")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Una", "Tilo"]
    assert read.lines[1].outcome is Outcome.LEFT_OUT, "it may be a child"


def test_lines_of_one_word_that_count_among_bullets_are_told() -> None:
    read = read_roster("• Mira\n• Bo\nKalvo 1\n\n• Una\n• Tilo\nKalvo 2")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Una", "Tilo"]
    assert [read.lines[at].outcome for at in (2, 6)] == [Outcome.HEADING] * 2


def test_one_that_counts_among_bullets_may_be_a_child() -> None:
    assert read_roster("• Mira\n• Bo\n• Una\n• Tilo\nKalvo 2").lines[4].outcome is Outcome.LEFT_OUT
    assert "Mia" in [child.practice for child in read_roster("Mia 1\nMia 2\nBo\nUna").children]


@pytest.mark.parametrize("word", [
    "Slide 3", "Folie 3", "Diapositiva 3", "Diapositive 3", "Diapo 3", "Foglio 2", "Folha 2"])
def test_the_number_of_a_slide_is_no_child(word: str) -> None:
    assert read_roster(f"Mira Vost\nBo Tarn\n{word}\nUna Grell").lines[2].outcome is Outcome.HEADING


@pytest.mark.parametrize("title", ["Gita al mare", "Rosa de papel", "Olga en concierto"])
@pytest.mark.parametrize("sign", [" – ", " ...... ", ": ", " = "])
def test_a_phrase_that_opens_as_a_name_and_stands_apart_is_asked_about(title: str, sign: str) -> None:
    names = ["Mira Vost", "Tilo Tarn", "Anna Rey", "Emil Koch"]
    rows = "\n".join(f"{name}{sign}{said}" for name, said in zip(names, ["ok", "no", "ok", "da pagare"], strict=True))
    roster = read_roster(f"{title}\n\n{rows}")
    assert roster.lines[0].outcome is Outcome.LEFT_OUT
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna", "Emil"]
    assert read_roster(f"Gita Fen\n\n{rows}").children[0].practice == "Gita"


@pytest.mark.parametrize("title", ["SIGN-IN SHEET", "READING LOG", "AMIGO INVISIBLE", "JOURNAL DE BORD",
                                   "UNSERE KLEINEN", "QUADRO DELLE PRESENZE", "MAPA DE FALTAS"])
@pytest.mark.parametrize("between", ["\n", "\n\n"])
def test_words_in_capitals_over_names_that_are_not_make_no_child(title: str, between: str) -> None:
    text = f"{title}{between}Mira Vost\nXobrel Quix\nLeo Tarn\nIda Moss"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel", "Leo", "Ida"]


@pytest.mark.parametrize("text", ["MIRA ROSE\nLeo Tarn\nIda Moss\nNoah Bell",
                                  "XOBREL QUIX\nLEO TARN\nIda Moss\nNoah Bell",
                                  "XOBREL QUIX\nTARN Leo\nMOSS Ida\nBELL Noah"])
def test_the_first_child_in_capitals_stays_one(text: str) -> None:
    assert len(read_roster(text).children) == 4


@pytest.mark.parametrize("title", ["Ami secret", "Amico segreto", "Kindred spirits", "Mia club"])
def test_a_title_that_ends_small_over_arrows_is_asked_about(title: str) -> None:
    names = ["Mira", "Leo", "Ida", "Bo", "Ava"]
    rows = [f"{one} → {two}" for one, two in zip(names, [*names[1:], names[0]], strict=True)]
    read = read_roster("\n".join([title, *rows]))
    assert [child.practice for child in read.children] == ["Mira", "Leo", "Ida", "Bo", "Ava"]


def test_unknown_words_over_the_few_bullets_of_each_group_are_no_children() -> None:
    names = ("Демид Шило", "Федір Слюсар", "Орхип Жаліло", "Лада Бабенко", "Лада Жаліло")
    title = "Willkommen in unserer Klasse!\nElternabend, Демид Лада\n\n"
    groups = "Roter Tisch\no {}\nFolie 1\n\nBlauer Tisch\no {}\no {}\no {}\n2\n\nGrüner Tisch\no {}\nFolie 3"
    read = read_roster(title + groups.format(*names))
    assert [child.practice for child in read.children] == [name.split()[0] for name in names]


@pytest.mark.parametrize("title", ["Piscine", "Schwimmen", "Nuoto"])
def test_a_word_nobody_knows_apart_over_groups_that_adults_lead_is_asked_about(title: str) -> None:
    """Piscine was a child, for one group was told without a colon."""
    roster = read_roster(f"{title}\n\nGroupe 1 – M. Dörk\nRaimdla\nMeithter\nNyunva\nGroupe 2 – Mme Xial\nZeth\nRouryu")
    assert roster.lines[0].outcome is Outcome.LEFT_OUT
    assert [child.practice for child in roster.children] == ["Raimdla", "Meithter", "Nyunva", "Zeth", "Rouryu"]


def test_a_word_right_over_groups_is_asked_about() -> None:
    roster = read_roster("Quorrina\nGrupo 1\nMia\nLuis\nGrupo 2\nAna\nEva")
    assert roster.lines[0].outcome is Outcome.LEFT_OUT
    assert [child.practice for child in roster.children] == ["Mia", "Luis", "Ana", "Eva"]


def test_a_known_name_right_over_groups_is_a_child() -> None:
    assert len(read_roster("Hugo\nGrupo 1\nMia\nLuis\nGrupo 2\nAna\nEva").children) == 5


def test_a_title_over_tallies_is_asked_about_though_one_has_none() -> None:
    """It was a child of a known family, for behind one dash nothing stood."""
    text = "Gelesene Bücher\nSadao – ll\nAijuka –\nHodari – lllll ll\nMwezi – lllll\nKimya – l\nMavuno – llll\nMado – l"
    assert [child.practice for child in read_roster(text).children] == [
        "Sadao", "Aijuka", "Hodari", "Mwezi", "Kimya", "Mavuno", "Mado"]


@pytest.mark.parametrize(("title", "said"), [
    ("Carnevale", "farfalla, niente trucco|strega|???|tigre, porta le frittelle|pirata"),
    ("Fasching", "Schmetterling|Pirat, bringt Muffins|Löwe|Hexe|Hexe, keine Schminke"),
])
@pytest.mark.parametrize("sign", [": ", " = "])
def test_a_title_that_a_family_is_called_after_is_asked_about_over_costumes(title: str, said: str, sign: str) -> None:
    """What stood behind the names was taken off before anybody looked at the title."""
    names = ("Ánh", "Hoàng", "An", "Hải", "Nhật")
    text = "\n".join((title, *(f"{name}{sign}{what}" for name, what in zip(names, said.split("|"), strict=True))))
    assert [child.practice for child in read_roster(text).children] == [*names]


def test_a_title_over_the_only_group_is_asked_about() -> None:
    with pytest.raises(RosterError) as raised:
        read_roster("Angoli\nPittura: Kwailes, Kwourvain, Xismyr e Tothdlirfár")
    assert all(report.outcome is Outcome.LEFT_OUT for report in raised.value.lines)


@pytest.mark.parametrize("stroke", ["🦷", "★", "✓"])
def test_a_title_apart_over_names_with_pictures_is_asked_about(stroke: str) -> None:
    names = ("Ndumiso Mlotsh", "Owethu Juqula", "Mcebisi Mlanga", "Nozizwe Menzi")
    text = "Gelesene Bücher\n\n" + "\n".join(f"{name} {stroke * at}" for at, name in enumerate(names, 1))
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]


@pytest.mark.parametrize(("title", "new"), [("Gruppenwechsel", "neu"), ("Moves", "new"), ("Cambios", "nuevo")])
def test_a_title_over_four_children_who_move_is_asked_about(title: str, new: str) -> None:
    text = (f"{title}\nAneta Nistor: Bären -> Füchse\nTitus Tudor: {new} -> Bären\nEmilia Dobre: {new} -> Füchse\n"
            "Jan Toma: neu")
    assert [child.practice for child in read_roster(text).children] == ["Aneta", "Titus", "Emilia", "Jan"]


def test_a_first_line_that_is_all_aside_has_no_last_word() -> None:
    """An opened bracket with nothing before it, over lines of the same make, ended in an error."""
    text = " (:  - Monday\n (:  - ½ – \n (:  - ½D'Ora\n (:  (½D'Ora\n (: ½Ana-Lu"
    assert len(read_roster(text).lines) == 5
