"""Days, dates and times in front of names are taken off; children called as days and months are stay."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

WEEKS = {
    "en": ("Mon", "Tue", "Wed", "NO SCHOOL"), "es": ("lun", "mar", "mié", "festivo"),
    "fr": ("lun.", "mar.", "mer.", "férié"), "de": ("Mo", "Di", "Mi", "schulfrei"),
    "it": ("lun", "mar", "mer", "festa"), "pt": ("seg", "ter", "qua", "feriado"),
}
WHOLE = {
    "en": ("Monday", "Tuesday", "Wednesday"), "es": ("lunes", "martes", "miércoles"),
    "fr": ("lundi", "mardi", "mercredi"), "de": ("Montag", "Dienstag", "Mittwoch"),
    "it": ("lunedì", "martedì", "mercoledì"), "pt": ("segunda-feira", "terça-feira", "quarta-feira"),
}


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("language", WEEKS)
@pytest.mark.parametrize("form", ["{day} 3/11 {name} (plants)", "{day} 3.11.: {name}", "{day}, 3/11/2025 – {name}"])
def test_a_day_and_a_date_before_a_name(language: str, form: str) -> None:
    *days, off = WEEKS[language]
    lines = [form.format(day=day, name=name) for day, name in zip(days, ("Xobrel", "Frida", off), strict=True)]
    read = read_roster("\n".join(lines))
    assert [child.practice for child in read.children] == ["Xobrel", "Frida"]
    assert read.lines[-1].outcome is Outcome.HEADING


@pytest.mark.parametrize("language", WHOLE)
@pytest.mark.parametrize("form", ["{day}: {name}", "{day} - {name}"])
def test_a_day_alone_with_a_sign(language: str, form: str) -> None:
    lines = [form.format(day=day, name=name) for day, name in zip(WHOLE[language], ("Xobrel", "Frida", "Bo"),
                                                                   strict=True)]
    assert practised("\n".join(lines)) == ["Xobrel", "Frida", "Bo"]


@pytest.mark.parametrize("text", [
    "3. November: Mira\n4. November: Bo", "lundi 3 novembre : Mira\nmardi 4 novembre : Bo",
    "Monday, the 3rd of November – Mira\nTuesday, the 4th of November – Bo", "Mon Mira\nTue Bo\nWed Una\nThu Jo",
    "3/11 (Mon) Mira\n4/11 (Tue) Bo", "15:00 Uhr Mira Vost\n15:15 Uhr Bo Tarn", "3:30 pm Mira Vost\n3:45 pm Bo Tarn",
    "8:30 hs Mira Vost\n9:00 hs Bo Tarn", "8.30 Uhr Mira Vost\n8.30 Uhr Bo Tarn",
    "8:00-8:15 Mira\n8:15-8:30 Bo", "2025-11-03 Mira\n2025-11-04 Bo", "Line leaders\nMon 3 Nov Mira\nTue 4 Nov Bo",
])
def test_dates_and_times_in_other_writings(text: str) -> None:
    assert practised(text)[:2] == ["Mira", "Bo"]


@pytest.mark.parametrize("text", [
    "1. April Moss\n2. June Vost\n3. May Chen", "Sam Chen\nMar Vost\nDom Tarn\nSam Ruiz\nDom Grell",
    "Mon Chen\nMira Vost\nBo Tarn", "Mai\nApril\nJune",
])
def test_children_called_as_days_and_months_are_stay(text: str) -> None:
    words = [line.split(". ")[-1].split()[0] for line in text.splitlines()]
    assert practised(text) == words


@pytest.mark.parametrize("text", [
    "7:02 Elm & 3rd: Xobrel Vost + Mira Tarn\n7:05 Quarry Rd.: Bo Grell",
    "7:02 la fuente: Xobrel Vost + Mira Tarn\n7:05 avda. de la Paz: Bo Grell",
    "7h02 place du Moulin : Xobrel Vost + Mira Tarn\n7h05 mairie : Bo Grell",
    "7:02 Uhr An der Linde – Xobrel Vost + Mira Tarn\n7:05 Uhr Bahnhofstr. – Bo Grell",
    "7.02 piazza Nuova: Xobrel Vost + Mira Tarn\n7.05 via del Mulino: Bo Grell\n7.08 chiesa: Una Fask",
    "7:02 largo da Igreja: Xobrel Vost + Mira Tarn\n7:05 rua do Moinho: Bo Grell",
])
def test_the_children_of_a_stop_stand_behind_its_time_and_place(text: str) -> None:
    assert practised(text)[:3] == ["Xobrel", "Mira", "Bo"]


def test_two_spaces_in_a_stop_with_its_time_stop_nobody() -> None:
    assert practised("7:02 mairie: Mira Vost\n7:05 mairie: Bo Tarn  -  Una Vale\n7:08 mairie: Tilo Elm")[0] == "Mira"


def test_a_place_never_takes_the_place_of_names_before_a_sign() -> None:
    assert practised("15:00 Mira Vost: Jo Vost\n15:15 Bo Tarn: Al Tarn")[0] == "Mira"


def test_what_was_read_once_is_read_again_as_it_was() -> None:
    read = read_roster("Helpers\nMon 3/11 Mira (snack)\nTue 4/11 NO SCHOOL\nWed 5/11 Bo")
    again = read_roster(read.text)
    assert [child.practice for child in again.children] == [child.practice for child in read.children] == ["Mira", "Bo"]


def test_a_name_that_is_short_for_a_day_stays_behind_a_date() -> None:
    assert practised("2020-01-10 Sam Meyer\n2020-03-17 Tatiana Betschart\n2020-09-11 Alessio Merz\n"
                     "2020-08-14 Dom Hartmann\n2020-06-12 Onur Sigrist") == ["Sam", "Tatiana", "Alessio", "Dom", "Onur"]


@pytest.mark.parametrize("child", ["סאלח אורן", "ابتهال أبا الخيل", "Mira Vost"])
def test_a_child_below_the_title_of_a_stop_is_a_child(child: str) -> None:
    """A script without capitals has names on fewer lists, and Latin words over it are the title."""
    roster = read_roster(f"Buslinie 4\n{child}\n7:21 Marktplatz – אליעזר דדון\n7:42 Marktplatz – אלמה אמארה")
    assert roster.children[0].practice == child.split()[0]
    assert len(roster.children) == 3


def test_a_date_of_figures_has_its_month() -> None:
    """Jan behind it is a child, be the figures a date or the count of a list."""
    names = ["Jan", "Mirel", "Mai", "Xobrel"]
    lines = [f"{at}/24 {name} Vost" for at, name in enumerate(names, 1)]
    assert practised("\n".join(lines)) == names


def test_behind_a_time_stands_no_month() -> None:
    """Março is one, and Marco is a child."""
    assert practised("8:30 Marco, Mirel, Bo") == ["Marco", "Mirel", "Bo"]
    assert practised("8:30 Marco Vost\n9:15 Mirel Tarn") == ["Marco", "Mirel"]


@pytest.mark.parametrize("told", ["is coming", "se apunta", "vient", "kommt mit", "viene", "vai"])
def test_a_child_told_of_in_a_chat_is_no_title_of_its_dates(told: str) -> None:
    """A message without a sender's name behind its time stands over the first one that has one."""
    said = ["Jo Vost: Who is coming to the farm? Write your child's name", f"Jo Vost: Mia {told}",
            "Ada Tarn joined", f"Ada Tarn: Leo {told}", "Una Elm joined", "Kit Lund joined", "Una Elm: Ana"]
    lines = [f"03/10/2025, 17:0{at} - {each}" for at, each in enumerate(said)]
    assert practised("\n".join(lines)) == ["Mia", "Leo", "Ana"]


@pytest.mark.parametrize("number", ["{}. ", "{}) ", "({}) ", "{} "])
def test_numbers_that_count_the_lines_are_no_days_of_months(number: str) -> None:
    """Marco is a month in Portuguese and Sam a day in French: two numbered lines of four lost their given names."""
    names = ["Andrina Hess", "Ronald Eich", "Marco Ziegler", "Sam Schmidt"]
    assert practised("\n".join(f"{number.format(at)}{name}" for at, name in enumerate(names, 1))) == [
        "Andrina", "Ronald", "Marco", "Sam"]
    assert practised("Klasse 1b\n" + "\n".join(f"{number.format(at)}{name}" for at, name in enumerate(names * 3, 1)))[
        :4] == ["Andrina", "Ronald", "Marco", "Sam"]


def test_dates_that_follow_each_other_are_dates() -> None:
    assert practised("3 March Mira\n4 March Xobrel\n5 March Tilo\n6 March Anna\n7 March Vemka") == [
        "Mira", "Xobrel", "Tilo", "Anna", "Vemka"]
    assert practised("3 de marzo: Mira\n4 de marzo: Xobrel\n5 de marzo: Tilo\n6 de marzo: Anna") == [
        "Mira", "Xobrel", "Tilo", "Anna"]


@pytest.mark.parametrize("line", ["Domenica (5), Leo (4), Mira (5)", "Sam (4), Leo (5), Mira (5)"])
def test_an_age_behind_a_child_called_as_a_day_is_no_date(line: str) -> None:
    assert practised(line) == [word for word in line.replace(",", "").split() if word.isalpha()]


@pytest.mark.parametrize("times", [("ore 15:30", "15.30-16.30"), ("um 15:30 Uhr", "ab 16:00"), ("a las 15:30", "16:30"),
                                   ("4 y media", "16:30-17:30"), ("half past 3", "3:15-4"), ("3.15-4", "3:15 pm"),
                                   ("halb 4", "15:30"), ("16h30", "4 et demie")])
def test_words_of_a_time_are_no_name(times: tuple[str, str]) -> None:
    names = ("Xobrel Vemka", "Jelbru Tarn", "Pesku Odel", "Nift Trum")
    lines = [f"{times[at % 2]} {name}, 3 anni, papà Ulmo 555-{at}000" for at, name in enumerate(names)]
    assert practised("\n".join(lines)) == ["Xobrel", "Jelbru", "Pesku", "Nift"]


def test_a_title_with_commas_over_times_is_no_row() -> None:
    lines = ["After-school clay, $4 a day, sign below!", "3:15 Xobrel Vemka, K, mom Ulmo",
             "3:15 Jelbru Tarn, K, dad Ino", "3:30 Pesku Odel, K-2, mom Ada"]
    assert practised("\n".join(lines)) == ["Xobrel", "Jelbru", "Pesku"]
    known = ["3:15 Mira Vost, K, mom Jo 555-1234", "3.15-4 Xobrel Tarn, K-2, dad Uwe 555-1235",
             "3:15-4:00 Anna Berg, PreK, mom Ida 555-1236"]
    assert practised("\n".join(("After-school clay club, $4 a day, sign below!", *known))) == ["Mira", "Xobrel", "Anna"]
    head = "Timestamp,Child's first and last name,Your name"
    rows = ["9/2/2025 10:04:31,Xobrel Vemka,Ulmo Vemka", "9/2/2025 11:04:31,Jelbru Tarn,Ino Tarn"]
    assert practised("\n".join((head, *rows))) == ["Xobrel", "Jelbru"]


BIRTHDAYS = [  # lines with the day and the month of a birthday, and children called as months are
    ("3 mars Noé\n5 juin Mai", ["Noé", "Mai"]),
    ("3 mars Noé\n5 juin Mai\n12 avril Léa\n7 mai Zoé\n9 août Avril", ["Noé", "Mai", "Léa", "Zoé", "Avril"]),
    ("3 mars: Noé\n5 juin: Mai\n6 mai: Léa\n7 août: Zoé", ["Noé", "Mai", "Léa", "Zoé"]),
    ("May 3 June\nApril 4 Mia\nJune 9 April\nMarch 1 Leo", ["June", "Mia", "April", "Leo"]),
    ("3. Mai Mai\n12. Juni Juni\n4. März Anna\n7. August Ben", ["Mai", "Juni", "Anna", "Ben"]),
    ("3 Abril Abril\n5 Agosto Augusto\n6 Maio Ana", ["Abril", "Augusto", "Ana"]),
    ("3 de abril Ana\n5 de agosto Abril\n6 de mayo Hugo", ["Ana", "Abril", "Hugo"]),
    ("3 marzo Aprile\n5 maggio Luca\n7 giugno Sara\n8 giugno Ugo", ["Aprile", "Luca", "Sara", "Ugo"]),
    ("Noé 3 mars\nMai 5 juin\nAvril 12 avril", ["Noé", "Mai", "Avril"]),
    ("Mia 3 June\nMay 4 June\nLeo 5 March\nZoe 6 April", ["Mia", "May", "Leo", "Zoe"]),
    ("Anna, 3. März\nMai, 5. Juni\nBen, 7. August", ["Anna", "Mai", "Ben"]),
    ("June May 3\nApril April 4\nMay June 9", ["June", "April", "May"]),
    ("1. Mai Tran\n2. April Vost\n3. June Kern", ["Mai", "April", "June"]),
    ("1 Mai Tran\n2 April Vost\n3 June Kern", ["Mai", "April", "June"]),
    ("Abril\nAugusto\nJuni\nMia\nLeo\nAna", ["Abril", "Augusto", "Juni", "Mia", "Leo", "Ana"]),
    ("Smith, April\nJones, August\nBrown, June\nDiaz, Abril", ["April", "August", "June", "Abril"]),
]


@pytest.mark.parametrize(("text", "names"), BIRTHDAYS, ids=[text for text, _ in BIRTHDAYS])
def test_a_child_called_as_a_month_has_a_birthday(text: str, names: list[str]) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == names
    assert [child.practice for child in read_roster(roster.text or text).children] == names


@pytest.mark.parametrize("time", [
    "ore 15:30", "4 y media", "4 e mezza", "4 et demie", "4 e meia", "halb 4", "half past 3", "um 15:30", "à 15h30",
    "a las 15:30", "às 15h30", "3.15-4", "4 y cuarto", "alle 15.30"])
def test_times_as_they_are_said_before_names(time: str) -> None:
    lines = [f"{time} Mira Vost", "15:30 Xobrel Tarn", f"{time} Anna Berg", f"{time} Ben Koch"]
    assert practised("\n".join(lines)) == ["Mira", "Xobrel", "Anna", "Ben"]


def test_a_child_called_media_or_um_stays() -> None:
    assert practised("Um Kwang\nMedia Vost\nMira Tarn\nHalb Berg") == ["Um", "Media", "Mira", "Halb"]


def test_short_days_of_dutch_before_a_date_are_nobody() -> None:
    lines = ["wo 2024-11-24 08:00 Mira Vost", "ma 2024-07-15 13:20 Tilo Tarn", "vr 2025-05-18 11:40 Luca Moss",
             "donderdag 19/12/2025 Anna Berg"]
    assert practised("\n".join(lines)) == ["Mira", "Tilo", "Luca", "Anna"]
    assert practised("Ma Vost\nDo Tarn\nWo Berg") == ["Ma", "Do", "Wo"]


@pytest.mark.parametrize("said", ["fell off the slide. Plaster.", "genou écorché. Glace.",
                                  "astilla en el dedo. Tirita."])
def test_what_happened_behind_a_name_is_no_place(said: str) -> None:
    """Children on no list are not taken for places, nor the words behind them for names."""
    names = ["Xobrel Q.", "Zendar P.", "Quimbel T.", "Vosprin A."]
    text = "\n".join(f"{day}.05.2024: {name} – {said}" for day, name in enumerate(names, 11))
    assert [child.practice for child in read_roster(text).children] == ["Xobrel", "Zendar", "Quimbel", "Vosprin"]
