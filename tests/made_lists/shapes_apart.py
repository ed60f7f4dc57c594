"""Shapes written by someone who had not seen the reader, from how schools of several countries keep and send lists.

Grown-ups, places and notes are invented; what happens to be a child's name in the same list is no remark there.
"""

from __future__ import annotations

import random
from collections.abc import Iterable, Sequence
from itertools import pairwise

from made_lists.judging import Made, Wanted, fold
from made_lists.people import INVENTED, Person, people
from made_lists.registry import Registry

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
shape = _REGISTRY.shape


def made(lines: Iterable[str], children: Iterable[Wanted], remarks: str = "") -> Made:
    """Return a list whose remarks leave out every word of a child's right name."""
    wanted = tuple(children)
    names = {word for one in wanted for name in one.right for word in fold(name).split()}
    return Made("\n".join(lines), wanted, tuple(word for word in remarks.split() if fold(word) not in names))


def by_full_name(group: Iterable[Person]) -> list[Wanted]:
    """Want every given name, on a line where the family name follows it."""
    return [Wanted((one.given,), f"{one.given} {one.family}") for one in group]


def by_given(group: Iterable[Person]) -> list[Wanted]:
    """Want every given name, on whatever line it stands."""
    return [Wanted((one.given,), one.given) for one in group]


def adults(rng: random.Random, group: Sequence[Person], count: int) -> list[Person]:
    """Draw grown-ups of the place the children are from, who share no word of a name with them."""
    taken = {word for one in group for word in fold(f"{one.given} {one.family}").split()}
    drawn = people(rng, group[0].place, 3 * count + len(group))
    free = [one for one in drawn if taken.isdisjoint(fold(f"{one.given} {one.family}").split())]
    free = free or people(rng, INVENTED, count)  # of some places there are few names
    return [free[at % len(free)] for at in range(count)]


def birthday(rng: random.Random, form: str) -> str:
    """Return a day in 2020 or 2021, in a form with the fields d, m and y."""
    return form.format(d=rng.randrange(1, 29), m=rng.randrange(1, 13), y=rng.choice((2020, 2021)))


def in_parts(rng: random.Random, group: Sequence[Person], count: int) -> list[Sequence[Person]]:
    """Cut a list into so many parts, of which some may be empty."""
    cuts = [0, *sorted(rng.randrange(len(group) + 1) for _ in range(count - 1)), len(group)]
    return [group[start:end] for start, end in pairwise(cuts)]


@shape(HEADED)
def register_export(rng: random.Random, group: Sequence[Person]) -> Made:
    """A report printed by the office: lines of title, a table with family, given and an initial, lines at the foot."""
    rows = [
        f"{rng.randrange(200000, 300000)}\t{one.family}, {one.given}{rng.choice(('', '', ' R', ' J.'))}\tK"
        f"\t{rng.choice('FM')}\t{birthday(rng, '{m:02}/{d:02}/{y}')}"
        f"\t{rng.choice('PRF')}\t{rng.choice(('14', '7', 'Walk', ''))}"
        for one in group
    ]
    head = [
        "Willow Bend Elementary School",
        "Class Roster by Homeroom",
        "Homeroom: K-104\tTeacher: Alderbrook, Wilma\tTerm: 2025-26",
        "",
    ]
    foot = ["", f"Total students: {len(group)}", "Printed 08/21/2025 3:14 PM\tPage 1 of 1"]
    return made(
        [*head, "Stu ID\tStudent Name\tGr\tGen\tDOB\tLunch\tBus", *rows, *foot],
        [Wanted((one.given,), f"{one.family}, {one.given}") for one in group],
        "Willow Bend Alderbrook Wilma Homeroom Teacher Printed Page Walk Total",
    )


_BRINGS = {
    "*Festa di fine anno* 🎉 venerdì alle 16 in giardino\nAggiungete cosa portate, copiate e incollate!": (
        "torta 🎂",
        "succhi di frutta (2 bottiglie)",
        "patatine",
        "piatti e bicchieri 🍽️",
        "pizzette",
        "ci siamo, porto la frutta 🍉",
    ),
    "🍂 Fiesta de otoño – viernes 17 h 🍂\nCopiad la lista y añadid lo que traéis 👇": (
        "tortilla",
        "zumos 🧃",
        "servilletas y vasos",
        "bizcocho sin nueces",
        "fruta cortada 🍓",
        "no podemos ir 😢",
    ),
    "Lanche partilhado sexta-feira ☀️\nCada um acrescenta o seu nome, sff": (
        "bolo de laranja 🍊",
        "sumos",
        "guardanapos",
        "pão com queijo",
        "fruta",
        "bolachas caseiras 🍪",
    ),
    "*Class picnic!!* 🧺 Friday 12:00\nCopy the list & add yours": (
        "grapes (cut up!)",
        "juice boxes 🧃",
        "paper plates",
        "veggie sticks + dip",
        "coming, nothing yet",
        "cookies, no nuts 🍪",
    ),
}


@shape()
def potluck_in_chat(rng: random.Random, group: Sequence[Person]) -> Made:
    """A numbered list that goes round in a chat: each family adds its child and what it brings; free numbers remain."""
    title, things = rng.choice(list(_BRINGS.items()))
    dash = rng.choice((" – ", " - ", ": ", " → "))
    lines = [f"{at}. {one.given}{dash}{rng.choice(things)}" for at, one in enumerate(group, 1)]
    free = [f"{len(group) + at}." for at in range(1, rng.randrange(1, 4))]
    return made(
        [*title.split("\n"), *lines, *free],
        by_given(group),
        "torta succhi patatine piatti pizzette tortilla zumos servilletas bizcocho bolo sumos guardanapos pão fruta "
        "bolachas grapes juice paper veggie coming cookies Festa Fiesta Lanche picnic "
        "Class Copy Copiad Aggiungete Cada",
    )


_MONTHS = {
    "Les anniversaires": "Janvier Février Mars Avril Mai Juin Juillet Août Septembre Octobre Novembre Décembre",
    "Happy birthday! 🎈": "January February March April May June July August September October November December",
    "Geburtstagskalender": "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    "Compleanni": "Gennaio Febbraio Marzo Aprile Maggio Giugno Luglio Agosto Settembre Ottobre Novembre Dicembre",
}


@shape()
def birthdays_by_month(rng: random.Random, group: Sequence[Person]) -> Made:
    """The chart on the wall: months as headings, under each its children with the day; a month may stay empty."""
    title, months = rng.choice(list(_MONTHS.items()))
    form = rng.choice(("{given} {day}", "{day}. {given}", "{given} ({day})", "{given} – {day}", "{day}: {given}"))
    lines = [title, ""]
    for month, part in zip(months.split(), in_parts(rng, group, 12), strict=True):
        days = sorted(rng.sample(range(1, 29), len(part)))
        lines += [
            month.upper(),
            *(form.format(given=one.given, day=day) for one, day in zip(part, days, strict=True)),
            "",
        ]
    return made(lines, by_given(group), f"{months} Les anniversaires birthday Geburtstagskalender Compleanni")


@shape(HEADED)
def pickup_table(rng: random.Random, group: Sequence[Person]) -> Made:
    """A table out of a word processor: who may fetch the child; a second person has a row without a child."""
    grown = adults(rng, group, 2 * len(group))
    rows = []
    for at, one in enumerate(group):
        first, second = grown[2 * at : 2 * at + 2]
        rows.append(
            f"{at + 1}\t{one.given} {one.family}\t{birthday(rng, '{d:02}.{m:02}.{y}')}\tMama {first.given}"
            f"{rng.choice(('', ', Papa'))}\t0171 555{rng.randrange(1000, 9999)}\t{rng.choice(('', '', 'nur Di + Do'))}"
        )
        if rng.random() < 0.4:
            rows.append(
                f"\t\t\t{rng.choice(('Oma', 'Tante', 'Frau'))} {second.given}\t0171 555{rng.randrange(1000, 9999)}\t"
            )
    head = [
        "Abholberechtigte Personen – Sonnengruppe",
        "",
        "Nr.\tName des Kindes\tgeb.\tabholberechtigt\tTelefon\tBemerkung",
    ]
    return made(
        [*head, *rows, "", "Stand: 01.09.2025"],
        by_full_name(group),
        "Oma Tante Frau Mama Papa Stand Sonnengruppe " + " ".join(one.given for one in grown),
    )


@shape()
def dismissal(rng: random.Random, group: Sequence[Person]) -> Made:
    """How each child goes home: ways as headings in capitals, given names with an initial, now and then a note."""
    ways = ("BUS 7 (Mr. Hobbleworth)", "CAR LINE", "AFTER CARE — until 5:30", "WALKERS")
    notes = ("", "", "", " - sits up front", " #114", " (Tues/Thurs only)", " w/ big brother", "*")
    lines = ["Dismissal, Room 12 — Ms. Alderbrook", ""]
    for way, part in zip(ways, in_parts(rng, group, len(ways)), strict=True):
        lines += [way, *(f"{one.given} {one.family[0]}.{rng.choice(notes)}" for one in part), ""]
    return made(
        [*lines, "* = booster seat"],
        [Wanted((one.given,), f"{one.given} {one.family[0]}.") for one in group],
        "BUS CAR LINE AFTER CARE WALKERS Hobbleworth Alderbrook Dismissal booster seat brother sits Room",
    )


@shape()
def pdf_column_after_column(rng: random.Random, group: Sequence[Person]) -> Made:
    """A table copied out of a PDF that gives the columns one after the other, each with its heading."""
    title, number, family, given = rng.choice(
        (
            ("École maternelle des Tilleuls\nListe de classe – MS", "N°", "Nom", "Prénom"),
            ("Kindergarten am Mühlbach\nGruppenliste Igel", "Nr.", "Nachname", "Vorname"),
            ("Escuela infantil El Olivar\nListado de alumnos 4 años", "N.º", "Apellido", "Nombre"),
        )
    )
    columns = [
        [number, *map(str, range(1, len(group) + 1))],
        [family, *(one.family for one in group)],
        [given, *(one.given for one in group)],
    ]
    lines = [line for column in columns[rng.randrange(2) :] for line in column]
    return made(
        [*title.split("\n"), *lines],
        by_given(group),
        "Tilleuls Mühlbach Igel Olivar Nom Prénom Nachname Vorname Apellido Nombre Liste Listado Gruppenliste",
    )


@shape(HEADED)
def answers_called(rng: random.Random, group: Sequence[Person]) -> Made:
    """Answers of a form, with commas: the name to use is asked; notes hold commas and sometimes a line break."""
    grown = adults(rng, group, len(group))
    notes = (
        "",
        "no",
        "loves trains, hates peas",
        "Wears glasses.\nPlease seat near the front.",
        "Peanut allergy!!",
        "Speaks Polish with Grandma",
    )
    nicks = dict(zip(rng.sample(range(len(group)), 3), ("Bibsi", "Juju", "Kiki"), strict=True))
    rows, wanted = [], []
    for at, (one, adult) in enumerate(zip(group, grown, strict=True)):
        nick = nicks.get(at, one.given)
        said = one.given if nick == one.given and rng.random() < 0.8 else "same" if nick == one.given else nick
        when = f"9/{rng.randrange(1, 5)}/2025 {rng.randrange(8, 20)}:04:31"
        who = f"{adult.given} {one.family},{rng.choice(('Mother', 'Father', 'Grandma'))}"
        rows.append(f'{when},{one.given} {one.family},{said},{who},"{rng.choice(notes)}"')
        wanted.append(Wanted((nick,), f"{one.given} {one.family},"))
    head = (
        "Timestamp,Child's first and last name,What should we call your child at school?,"
        "Your name,Relationship to child,Anything we should know?"
    )
    return made(
        [head, *rows],
        wanted,
        "Mother Father Grandma same Wears Please Speaks Polish Peanut " + " ".join(one.given for one in grown),
    )


_EVENINGS = {
    "Parents' evening – Thursday 13 November, Room 3": (
        "BREAK ☕",
        "free",
        " (mum)",
        " (mum + dad)",
        " – by phone",
        " & ",
        " (twins)",
    ),
    "Elterngespräche Do 13.11. – Raum 3": (
        "Pause",
        "frei",
        " (Mutter)",
        " (beide Eltern)",
        " – telefonisch",
        " und ",
        " (Zwillinge)",
    ),
    "Tutorías jueves 13 de noviembre": (
        "descanso",
        "libre",
        " (madre)",
        " (los dos)",
        " – por teléfono",
        " y ",
        " (gemelos)",
    ),
}


@shape()
def evening_slots(rng: random.Random, group: Sequence[Person]) -> Made:
    """A sign-up sheet for talks: a time on every line, then a child, two twins, a break or nothing yet."""
    title, (pause, free, *notes, and_, twins) = rng.choice(list(_EVENINGS.items()))
    slots = [f"{one.given}{rng.choice(('', '', *notes))}" for one in group[2:]]
    slots.insert(rng.randrange(len(slots) + 1), f"{group[0].given}{and_}{group[1].given}{twins}")
    for other in (pause, free, "", "---"):
        slots.insert(rng.randrange(len(slots) + 1), other)
    lines = [f"{14 + at // 6}:{at % 6}0 {slot}".rstrip() for at, slot in enumerate(slots)]
    return made(
        [title, "", *lines],
        by_given(group),
        "BREAK free mum dad phone twins Pause frei Mutter beide Eltern telefonisch Zwillinge "
        "descanso libre madre dos teléfono gemelos Raum Room Tutorías Elterngespräche",
    )


@shape()
def seats_in_rows(rng: random.Random, group: Sequence[Person]) -> Made:
    """A plan of seats, typed with tabs: the board above, an aisle in the middle, some seats free."""
    board, free, door = rng.choice(
        (
            ("TAFEL", "frei", "Tür"),
            ("TABLEAU", "vide", "porte"),
            ("WHITEBOARD", "(empty)", "door"),
            ("PIZARRA", "libre", "puerta"),
        )
    )
    seats = [one.given for one in group]
    for _ in range(rng.randrange(3)):
        seats.insert(rng.randrange(len(seats)), free)
    rows = ["\t".join((*seats[at : at + 2], "", *seats[at + 2 : at + 4])) for at in range(0, len(seats), 4)]
    return made(
        [f"\t\t{board}", "", *rows, "", f"{door}"],
        by_given(group),
        "TAFEL TABLEAU WHITEBOARD PIZARRA frei vide empty libre Tür porte door puerta",
    )


@shape()
def two_levels_one_page(rng: random.Random, group: Sequence[Person]) -> Made:
    """A French class of two levels on one page, family names in capitals and first, as a line says; staff above."""
    small, big = group[: len(group) // 2], group[len(group) // 2 :]
    lines = ["Classe de Mme Perdrizel – PS/MS – année 2025-2026", "ATSEM : Ghislaine", "(NOM Prénom)", ""]
    for level, part in (("PS", small), ("MS", big)):
        lines += [f"{level} ({len(part)} élèves)", *(f"{one.family.upper()} {one.given}" for one in part), ""]
    return made(
        [*lines, f"Total : {len(group)} élèves"],
        [Wanted((one.given,), f"{one.family.upper()} {one.given}") for one in group],
        "Perdrizel Ghislaine ATSEM élèves Total Classe NOM Prénom PS MS",
    )


@shape()
def notes_on_neighbours(rng: random.Random, group: Sequence[Person]) -> Made:
    """A teacher's own notes behind dashes, some of which speak of another child of the list by name."""
    dash = rng.choice((" - ", " – ", " — ", ": "))
    lines = []
    for at, one in enumerate(group):
        other = group[at - 1].given
        note = rng.choice(
            (
                "",
                "",
                f"NOT next to {other}!",
                f"plays a lot with {other}",
                "new this week, speaks Arabic at home",
                "left-handed",
                "speech on Mondays with Mrs. Hobbleworth",
                "knows all letters",
                f"{other}'s cousin",
                "glasses",
            )
        )
        lines.append(f"{one.given}{dash if note else ''}{note}")
    return made(
        lines,
        by_given(group),
        "NOT next plays Arabic speech Mondays Hobbleworth knows letters cousin glasses left-handed",
    )


@shape()
def short_given(rng: random.Random, group: Sequence[Person]) -> Made:
    """Spanish offices shorten a first given name. What the child writes is open to doubt there: to ask is right too."""
    lines, wanted = [], []
    for at, one in enumerate(group, 1):
        short = rng.choice(("", "", "Mª ", "M.ª ", "Fco. ", "J. ", "Mª "))
        lines.append(f"{at:02} {one.family}, {short}{one.given}")
        wanted.append(
            Wanted((one.given, f"{short}{one.given}", f"María {one.given}", f"Francisco {one.given}"),
                   f"{one.family}, {short}{one.given}")
        )
    return made(
        ["RELACIÓN DE ALUMNOS – 2º CICLO ED. INFANTIL – 5 AÑOS A", "Tutora: D.ª Remedios Valdecillo", "", *lines],
        wanted,
        "RELACIÓN ALUMNOS Tutora Remedios Valdecillo INFANTIL",
    )


@shape(HEADED)
def cognome_e_nome(rng: random.Random, group: Sequence[Person]) -> Made:
    """An Italian form, all in capitals, family name first in one column with the given name, as its heading says."""
    rows = [
        f"{at}\t{one.family.upper()} {one.given.upper()}"
        f"\t{rng.choice(('ASTI', 'CUNEO'))}\t{birthday(rng, '{d:02}/{m:02}/{y}')}"
        f"\t{rng.choice(('SI', 'NO', ''))}"
        for at, one in enumerate(group, 1)
    ]
    head = ["SCUOLA DELL'INFANZIA STATALE – ELENCO ALUNNI SEZ. A", "", "N.\tCOGNOME E NOME\tNATO/A A\tIL\tMENSA"]
    return made(
        [*head, *rows, "", f"TOTALE ALUNNI N. {len(group)}", "L'INSEGNANTE ____________________"],
        [Wanted((one.given,), f"{one.family.upper()} {one.given.upper()}") for one in group],
        "CUNEO ASTI TOTALE ALUNNI INSEGNANTE SCUOLA ELENCO COGNOME NOME MENSA",
    )


@shape()
def names_across(rng: random.Random, group: Sequence[Person]) -> Made:
    """A check of skills with the children across the top and one skill a row."""
    skills = ("Holds pencil", "Cuts on a line", "First letter", "Whole name", "Zips coat")
    rows = [f"{skill}\t" + "\t".join(rng.choice(("✓", "✓", "", "–", "almost")) for _ in group) for skill in skills]
    return made(
        ["Fine motor check – October", "", "\t" + "\t".join(one.given for one in group), *rows],
        by_given(group),
        "Holds pencil Cuts line First letter Whole name Zips coat almost Fine motor check October",
    )


_RECORDS = (
    (
        "Vorname",
        "Nachname",
        "Geburtsdatum",
        "{d}.{m}.{y}",
        "Familiensprachen",
        ("Türkisch, Deutsch", "Deutsch", "Arabisch"),
        "Eltern",
        "und",
    ),
    (
        "Nombre",
        "Apellidos",
        "Fecha de nacimiento",
        "{d} de mayo de {y}",
        "Idiomas en casa",
        ("español", "rumano y español"),
        "Padres",
        "y",
    ),
    ("Nome", "Apelido", "Data de nascimento", "{d:02}-{m:02}-{y}", "Línguas", ("português", "crioulo"), "Pais", "e"),
    (
        "First name",
        "Last name",
        "Born",
        "{d} May {y}",
        "Home languages",
        ("English", "Somali, English"),
        "Parents",
        "and",
    ),
)


@shape()
def record_blocks(rng: random.Random, group: Sequence[Person]) -> Made:
    """One record under another, a field a line: given and family name, birthday, languages, parents."""
    given, family, born, day, languages, spoken, parents, and_ = rng.choice(_RECORDS)
    grown = adults(rng, group, 2 * len(group))
    lines = []
    for at, one in enumerate(group):
        lines += [
            f"{given}: {one.given}",
            f"{family}: {one.family}",
            f"{born}: {birthday(rng, day)}",
            f"{languages}: {rng.choice(spoken)}",
            f"{parents}: {grown[2 * at].given} {and_} {grown[2 * at + 1].given} {one.family}",
            "",
        ]
    return made(
        lines,
        by_given(group),
        " ".join(one.given for one in grown) + " Türkisch Deutsch Arabisch español rumano português crioulo Somali",
    )
