"""Every seat of a plan is a child; the board, the door and a free seat are none; a table stays a table."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.seats import from_seats


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize(("board", "free", "door"), [
    ("TAFEL", "frei", "Tür"), ("TABLEAU", "vide", "porte"), ("WHITEBOARD", "(empty)", "door"),
    ("Pizarra", "libre", "puerta"), ("[Lavagna]", "vuoto", "Porta"), ("QUADRO", "—", "Janela")])
def test_each_seat_is_a_child(board: str, free: str, door: str) -> None:
    names = ["Mira", "Tilo", "Anna", "Ben", "Clara", "Emil", "Uwe"]
    for given in (names, ["Xobrel", "Vemka", "Outhna", "Jelbru", "Syvan", "Tarmel", "Brouth"]):
        one, two, three, four, five, six, seven = given
        rows = f"{one}\t{two}\t\t{three}\t{four}\n{five}\t{free}\t\t{six}\n{seven}"
        roster = read_roster(f"\t\t{board}\n\n{rows}\n\n{door}")
        assert [child.practice for child in roster.children] == given
        assert made(roster.text) == given


def test_an_aisle_between_known_names_tells_a_plan_by_itself() -> None:
    assert made("Mira | Tilo | | Anna | Ben\nClara | | | Emil") == ["Mira", "Tilo", "Anna", "Ben", "Clara", "Emil"]


@pytest.mark.parametrize("text", ["Mira   Tilo        Anna   Ben\nClara  frei        Emil   Uwe\n\nTAFEL",
                                  "Row 1\tMira\tTilo\t\tAnna\tBen\nRow 2\tClara\tfrei\t\tEmil\tUwe\n\nBoard",
                                  "Mira,Tilo,,Anna,Ben\nClara,free,,Emil,Uwe\n\nDoor"])
def test_a_plan_may_be_typed_otherwise(text: str) -> None:
    assert made(text) == ["Mira", "Tilo", "Anna", "Ben", "Clara", "Emil", "Uwe"]


def test_two_seats_side_by_side_need_a_board() -> None:
    assert made("Mira\tTilo\n\nAnna\tBen\n\nTafel") == ["Mira", "Tilo", "Anna", "Ben"]


def test_a_child_called_as_a_word_for_the_room_is_a_child() -> None:
    assert made("Board\n\nGang\tMira\t\tFang\nAnna\tTilo\t\tfree\n\nDoor") == ["Gang", "Mira", "Fang", "Anna", "Tilo"]


def test_a_column_of_free_seats_beside_a_board_is_one_of_the_plan() -> None:
    assert made("Board\n\nfree\tXobrel\t\tOuthna\nfree\tVemka\t\tJelbru") == ["Xobrel", "Outhna", "Vemka", "Jelbru"]


def test_a_row_of_free_seats_is_told() -> None:
    roster = read_roster("Tafel\n\nMira\tTilo\t\tAnna\nfrei\tfrei\t\tfrei\nClara\tEmil\t\tBen")
    assert len(roster.children) == 6
    assert [note.key for note in roster.lines[5].notes][:1] == ["roster.heading_colon"]


@pytest.mark.parametrize("text", [
    "Mira\tVost\t\tLeo\nAnna\tTarn\t\tUna", "Mira Vost\t\tnew\nAnna Tarn\t\tnew",
    "Xobrel\tVemka\t\tfree\nOuthna\tTarmel\t\tfree",
    "First name\tLast name\t\tFriend\nMira\tVost\t\tTilo", "Mira\tTilo\tAnna",
    "Xobrel\tVemka\t\tOuthna", "Mira\nTilo", ""])
def test_a_table_stays(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_seats(lines) == lines


@pytest.mark.parametrize("free", ["frei", "libre", "libero", "vazio", "(empty)"])
def test_free_places_make_a_shelf_of_a_grid(free: str) -> None:
    """Few rows, the last one short; a name on no list is one where places are free in two columns."""
    known = f"Pegs\n{free}\tSuzana\t{free}\tNikolina\nVlado\tZorka\tPero\tSaša\nMateo\tDavor"
    assert made(known) == ["Suzana", "Nikolina", "Vlado", "Zorka", "Pero", "Saša", "Mateo", "Davor"]
    unknown = f"Pegs\nFántain\tÁmdiam\t{free}\tXairfön\nQuorrik\t{free}\tZandelle\tVexil\nHaimnygis"
    assert made(unknown) == ["Fántain", "Ámdiam", "Xairfön", "Quorrik", "Zandelle", "Vexil", "Haimnygis"]


def test_a_column_that_says_who_is_free_makes_no_shelf() -> None:
    assert made("Mira Vost\tbus\tfrei\nTilo Tarn\tfoot\tbezahlt\nAnna Berg\tbus\tfrei") == ["Mira", "Tilo", "Anna"]


def test_a_line_over_a_grid_is_its_title_unless_it_is_a_name() -> None:
    grid = "Mira\tTilo\tAnna\tEmil\nBruno\tZoé\tJonas\tNina\nLea\tPaul\tIda\tFinn"
    children = grid.replace("\n", "\t").split("\t")
    assert made(f"Porte-manteaux\n{grid}") == children
    assert made(f"Clara\n{grid}") == ["Clara", *children]


@pytest.mark.parametrize(("title", "board"), [
    ("Seating – November", "FRONT / BOARD"), ("Plano de mesas", "PIZARRA"), ("Sitzplan", "TAFEL"),
    ("Plan de classe", "TABLEAU"), ("Planta da sala", "QUADRO"), ("Disposizione dei posti", "LAVAGNA")])
@pytest.mark.parametrize("cell", ["\t", " | ", "    "])
@pytest.mark.parametrize("names", ["Mira Tilo Anna Ben Clara Emil Uwe",
                                   "Xobrel Vemka Outhna Jelbru Syvan Tarmel Brouth",
                                   "Anete Māris Henriks Ziedonis Edgars Sandis Roberts"])
def test_a_board_over_short_rows_makes_a_plan(title: str, board: str, cell: str, names: str) -> None:
    """Be a free seat among them, and families by chance; the title and the board are no children."""
    one, two, three, four, five, six, seven = names.split()
    free = {"\t": "", " | ": "-", "    ": "---"}[cell]
    rows = [cell.join((one, two, free, three)), cell.join((four, five, six, seven))]
    assert made("\n".join((title, board, *rows))) == names.split()


def test_a_table_with_families_below_a_board_stays_one() -> None:
    table = ("Board", "", "Mia Smith\tAnn Smith\tgreen", "Leo Fox\tJo Fox\tred")
    lines = [Line(text, at) for at, text in enumerate(table)]
    assert from_seats(lines) == lines


def test_one_free_place_makes_a_shelf_of_four_columns() -> None:
    assert made("Xobrel\tVemka\t(empty)\tJelbru\n(empty)\tPesku\t\t") == ["Xobrel", "Vemka", "Jelbru", "Pesku"]


@pytest.mark.parametrize("sign", ["\t", " | "])
def test_a_child_called_nearly_as_an_aisle_has_a_seat(sign: str) -> None:
    """Marks tell a name from what a plan shows beside the seats."""
    rows = ["Board", sign.join(("Anna", "Theo", "Lena")), sign.join(("Aislé", "Mia", "Ole"))]
    assert [child.practice for child in read_roster("\n".join(rows)).children] == [
        "Anna", "Theo", "Lena", "Aislé", "Mia", "Ole"]


@pytest.mark.parametrize("title", ["Pegs", "Percha", "Casier", "Garderobe", "Armadietto", "Cabide"])
def test_a_number_before_a_family_and_a_comma_is_no_row_of_seats(title: str) -> None:
    lines = ("2 - TARN Tilo", "19 - Vost, Mira", "7 - LIND Leo", "20 - Berg, Anna", "9 - BRAUN Ida")
    children = read_roster("\n".join((title, *lines))).children
    assert [child.practice for child in children] == ["Tilo", "Mira", "Leo", "Anna", "Ida"]


@pytest.mark.parametrize("names", ["淑英,海燕,秀云,凤兰,玉珍", "淑英,海燕,Lei,凤兰,Mia", "יובל,נגה,ליאו,אדר,תמר"])
def test_seats_of_scripts_without_capitals_under_a_board(names: str) -> None:
    one, two, three, four, five = names.split(",")
    text = f"\t\tWHITEBOARD\n\n{one}\t{two}\t\t{three}\t{four}\n(empty)\t{five}\t\n\ndoor"
    assert [child.practice for child in read_roster(text).children] == names.split(",")
