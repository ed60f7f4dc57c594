"""Shapes of list as kept from January to June, thought of by another hand; this half was mended on.

Twenty-eight were written before any was tried; ``random.Random("spring and summer")`` shuffled them, and these are the
first fourteen. The others are ``shapes_summer``.
"""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
MONTHS = (
    ("January", "February", "March", "April", "May", "June"),
    ("Enero", "Febrero", "Marzo", "Abril", "Mayo", "Junio"),
    ("Janvier", "Février", "Mars", "Avril", "Mai", "Juin"),
    ("Januar", "Februar", "März", "April", "Mai", "Juni"),
    ("Gennaio", "Febbraio", "Marzo", "Aprile", "Maggio", "Giugno"),
    ("Janeiro", "Fevereiro", "Março", "Abril", "Maio", "Junho"))
BIRTHDAYS = ("Birthdays!", "Cumpleaños", "Anniversaires", "Geburtstage", "Compleanni", "Aniversários")
TURNS = ("turns 6", "cumple 6", "6 ans", "wird 6", "compie 6 anni", "faz 6 anos")


@shape()
def birthdays_by_month(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a birthday wall: the month, and under it the day and the child."""
    at = rng.randrange(6)
    by: dict[int, list[tuple[int, str]]] = {}
    turns = f" ({TURNS[at]})" if rng.random() < 0.4 else ""
    join = rng.choice((" - ", " ", ": "))
    for one in some:
        day = rng.randrange(1, 29)
        by.setdefault(rng.randrange(6), []).append((day, f"{day}{join}{full(one)}{turns}"))
    blocks = ["\n".join((MONTHS[at][month], *(line for _, line in sorted(by[month])))) for month in sorted(by)]
    return Made("\n".join((BIRTHDAYS[at], *blocks)), wanted(some), (*MONTHS[at], BIRTHDAYS[at], TURNS[at]))


TREATED = (
    (("artic", "language", "fluency", "fine motor"), "Room 4", "2x30 min"),
    (("articulación", "lenguaje", "fluidez", "motricidad fina"), "Aula 4", "2x30 min"),
    (("articulation", "langage", "bégaiement", "motricité fine"), "Salle 4", "2x30 min"),
    (("Artikulation", "Sprache", "Redefluss", "Feinmotorik"), "Raum 4", "2x30 Min."),
    (("articolazione", "linguaggio", "fluenza", "motricità fine"), "Aula 4", "2x30 min"),
    (("articulação", "linguagem", "fluência", "motricidade fina"), "Sala 4", "2x30 min"))


@shape(HEADLESS)
def caseload(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a therapist's rows: the child, the room, what is worked on, how often, and when the plan is due."""
    goals, room, often = TREATED[rng.randrange(6)]
    rows = [(full(one), room, rng.choice(goals), often, f"{rng.randrange(1, 7)}/{rng.randrange(1, 29)}/26")
            for one in some]
    return Made("\n".join("\t".join(row) for row in rows), wanted(some), (*goals, room, often))


TABLES = (
    ("Red table", "Blue table", "Green table", "Yellow table", " and "),
    ("Mesa roja", "Mesa azul", "Mesa verde", "Mesa amarilla", " y "),
    ("Table rouge", "Table bleue", "Table verte", "Table jaune", " et "),
    ("Roter Tisch", "Blauer Tisch", "Grüner Tisch", "Gelber Tisch", " und "),
    ("Tavolo rosso", "Tavolo blu", "Tavolo verde", "Tavolo giallo", " e "),
    ("Mesa vermelha", "Mesa azul", "Mesa verde", "Mesa amarela", " e "))


@shape()
def tables_by_colour(rng: random.Random, some: Sequence[Person]) -> Made:
    """Name who sits at which table, all of a table in one line, the last after an "and"."""
    *tables, last = TABLES[rng.randrange(6)]
    parts = [group for group in (some[at::4] for at in range(4)) if group]
    join = rng.choice((": ", " - ", " – ")) if rng.random() < 0.5 else ": "
    lines = [table + join + ", ".join(one.given for one in group[:-1]) + (last if len(group) > 1 else "")
             + group[-1].given for table, group in zip(tables, parts, strict=False)]
    return Made("\n".join(lines), wanted(some), tuple(tables))


PARENTS = ("parents", "padres", "parents", "Eltern", "genitori", "pais")
AND = ("and", "y", "et", "und", "e", "e")


@shape()
def families_on_a_line(rng: random.Random, some: Sequence[Person]) -> Made:
    """Keep each family on a line: the child, the parents' first names, and a phone."""
    at = rng.randrange(6)
    of_class = some[:max(2, len(some) // 2)]
    others = some[len(of_class):] or some[:1]
    join = rng.choice((" – ", " - ", "; "))
    lines = []
    for number, one in enumerate(of_class):
        pair = (others[number % len(others)].given, others[number - 1].given) if len(others) > 1 else (others[0].given,)
        lines.append(join.join((full(one), f"{PARENTS[at]}: {f' {AND[at]} '.join(pair)}",
                                f"555-01{rng.randrange(10, 99)}")))
    return Made("\n".join(lines), wanted(of_class), (PARENTS[at], *(one.given for one in others)))


SPOKEN = (
    ("okay so in my class I have", "then", "and", "and that's everybody"),
    ("a ver en mi grupo tengo a", "luego", "y", "y ya son todos"),
    ("alors dans ma classe j'ai", "ensuite", "et", "et c'est tout"),
    ("also in meiner Klasse habe ich", "dann", "und", "und das sind alle"),
    ("allora nella mia classe ho", "poi", "e", "e sono tutti"),
    ("então na minha turma eu tenho", "depois", "e", "e são todos"))
SPOKEN_WORDS = tuple(word for words in SPOKEN for text in words for word in text.split() if len(word) > 2)


@shape()
def dictated(rng: random.Random, some: Sequence[Person]) -> Made:
    """Dictate the class in one breath: names with "then" and "and" between them, and words before and after."""
    before, then, last, after = SPOKEN[rng.randrange(6)]
    comma = rng.random() < 0.7
    names = [full(one) if comma else one.given for one in some]
    text = names[0]
    for name in names[1:]:
        text += (rng.choice((", ", ", ", f", {then} ", f" {last} ")) if comma
                 else rng.choice((f" {then} ", f" {last} "))) + name
    return Made(f"{before} {text}{',' if comma else ''} {after}", wanted(some), SPOKEN_WORDS)


PINNED = (("CLASS LIST", "Room 4", "Page 1 of 1"), ("LISTA DE CLASE", "Aula 4", "Página 1 de 1"),
          ("LISTE DE CLASSE", "Salle 4", "Page 1 sur 1"), ("KLASSENLISTE", "Raum 4", "Seite 1 von 1"),
          ("ELENCO CLASSE", "Aula 4", "Pagina 1 di 1"), ("LISTA DA TURMA", "Sala 4", "Página 1 de 1"))


@shape()
def photo_to_text(rng: random.Random, some: Sequence[Person]) -> Made:
    """Read a photo of a pinned list: numbers whose stop is lost or wrong, stray strokes, an empty row at the end."""
    title, room, page = PINNED[rng.randrange(6)]
    lines = [f"{number}{rng.choice(('.', '.', '.', ',', ' ', ')', ' .'))} {full(one)}"
             + rng.choice(("", "", "", "", " .", " |", " _", " ~")) for number, one in enumerate(some, 1)]
    return Made("\n".join((title, room, *lines, f"{len(some) + 1}. ________", page)), wanted(some), (title, room, page))


CHANGED = (
    ("new 1/12", "starts Monday", "moved 2/3", "withdrawn"),
    ("nuevo 12/1", "empieza el lunes", "se mudó", "dado de baja"),
    ("nouveau le 12/1", "arrive lundi", "a déménagé", "radié"),
    ("neu seit 12.1.", "kommt ab Montag", "weggezogen", "abgemeldet"),
    ("nuovo dal 12/1", "inizia lunedì", "trasferito", "ritirato"),
    ("novo 12/1", "começa segunda", "mudou-se", "saiu da escola"))


@shape()
def changes_since_january(rng: random.Random, some: Sequence[Person]) -> Made:
    """Keep the autumn's list and write behind who is new and who has left."""
    new, starts, moved, left = CHANGED[rng.randrange(6)]
    way = rng.choice((" ({})", " - {}", " – {}", " *{}*"))
    lines, gone = [], []
    for number, one in enumerate(some, 1):
        said = rng.choice(("", "", "", "", "", "", new, starts, moved, left))
        if said in (moved, left):
            gone.append(one)
        lines.append(f"{number}. {full(one)}" + (way.format(said) if said else ""))
    stay = [one for one in some if one not in gone]
    return Made("\n".join(lines), wanted(stay), (new, starts, moved, left), wanted(gone))


CALLED = (("Legal First Name", "Last Name", "Preferred Name"), ("Nombre", "Apellidos", "Le decimos"),
          ("Prénom", "Nom", "Prénom d'usage"), ("Vorname", "Nachname", "Rufname"),
          ("Nome", "Cognome", "Si fa chiamare"), ("Nome", "Sobrenome", "Como é chamado"))


@shape(HEADED)
def preferred_name_column(rng: random.Random, some: Sequence[Person]) -> Made:
    """Export a table with a column for the name that a child goes by, filled for some."""
    head = CALLED[rng.randrange(6)]
    of_class = some[:max(2, 2 * len(some) // 3)]
    names = [one.given for one in some[len(of_class):]]
    rows, right = [], []
    for one in of_class:
        goes_by = names.pop() if names and rng.random() < 0.4 else ""
        rows.append((one.given, one.family, goes_by))
        right.append(Wanted((goes_by or one.given,), one.family))
    join = rng.choice((",", ";", "\t"))
    return Made("\n".join(join.join(row) for row in (head, *rows)), tuple(right), head)


GOES_BY = ("goes by", "le decimos", "dit", "genannt", "detto", "chamado de")


@shape()
def nickname_between(rng: random.Random, some: Sequence[Person]) -> Made:
    """Write the name a child is called by in quotes between the two, or behind a "goes by"."""
    at = rng.randrange(6)
    of_class = some[:max(2, 2 * len(some) // 3)]
    nicks = [one.given for one in some[len(of_class):]]
    quoted = rng.choice(('"{}"', "“{}”", "'{}'", "«{}»"))
    between = rng.random() < 0.5
    lines, right = [], []
    for one in of_class:
        nick = nicks.pop() if nicks and rng.random() < 0.5 else ""
        told = f"{one.given} {quoted.format(nick)} {one.family}" if between else f"{full(one)} ({GOES_BY[at]} {nick})"
        lines.append(told if nick else full(one))
        right.append(Wanted((nick or one.given,), one.family))
    return Made("\n".join(lines), tuple(right), (GOES_BY[at],))


FETCHED = (
    (("Child", "May be picked up by", "Phone"), ("Grandma", "Mom", "Dad", "Aunt", "neighbor")),
    (("Niño/a", "Quién lo recoge", "Teléfono"), ("abuela", "mamá", "papá", "tía", "vecina")),
    (("Enfant", "Personnes autorisées", "Téléphone"), ("mamie", "maman", "papa", "tante", "voisine")),
    (("Kind", "Abholberechtigt", "Telefon"), ("Oma", "Mama", "Papa", "Tante", "Nachbarin")),
    (("Bambino", "Chi lo ritira", "Telefono"), ("nonna", "mamma", "papà", "zia", "vicina")),
    (("Criança", "Quem busca", "Telefone"), ("avó", "mãe", "pai", "tia", "vizinha")))


@shape(HEADED)
def pick_up_table(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a table of who may pick up whom: the child, kin with a name, and a phone."""
    head, kin = FETCHED[rng.randrange(6)]
    of_class = some[:max(2, len(some) // 2)]
    others = some[len(of_class):] or some[:1]
    rows = [(full(one), f"{rng.choice(kin)} {others[at % len(others)].given}", f"555-01{rng.randrange(10, 99)}")
            for at, one in enumerate(of_class)]
    return Made("\n".join("\t".join(row) for row in (head, *rows)), wanted(of_class),
                (*head, *kin, *(one.given for one in others)))


ASKED = (
    ("Timestamp", "Email Address", "Child's first and last name", "Parent/guardian name", "Any allergies?"),
    ("Marca temporal", "Correo electrónico", "Nombre y apellido del niño", "Nombre del padre o madre", "¿Alergias?"),
    ("Horodateur", "Adresse e-mail", "Prénom et nom de l'enfant", "Nom du parent", "Allergies ?"),
    ("Zeitstempel", "E-Mail-Adresse", "Vor- und Nachname des Kindes", "Name der Eltern", "Allergien?"),
    ("Informazioni cronologiche", "Indirizzo email", "Nome e cognome del bambino", "Nome del genitore", "Allergie?"),
    ("Carimbo de data/hora", "Endereço de e-mail", "Nome e sobrenome da criança", "Nome do responsável", "Alergias?"))


@shape(HEADED)
def answers_to_a_form(rng: random.Random, some: Sequence[Person]) -> Made:
    """Download what families answered to a form, quoted, with the parent's whole name in a column of its own."""
    head = ASKED[rng.randrange(6)]
    of_class = some[:max(2, len(some) // 2)]
    others = some[len(of_class):] or some[:1]
    rows = [(f"1/{rng.randrange(10, 28)}/2026 {rng.randrange(8, 20)}:{rng.randrange(10, 59)}:07", f"p{at}@mail.example",
             full(one), f"{others[at % len(others)].given} {one.family}", rng.choice(("", "no", "No", "-")))
            for at, one in enumerate(of_class)]
    text = "\n".join(",".join(f'"{cell}"' for cell in row) for row in (head, *rows))
    return Made(text, wanted(of_class), (*head, *(one.given for one in others)))


JOBS = (
    ("Line leader", "Door holder", "Plant helper", "Calendar", "Lights", "Library", "Day off"),
    ("Primero de la fila", "Abre la puerta", "Riega las plantas", "Calendario", "Luces", "Biblioteca", "Descansan"),
    ("Chef de rang", "Gardien de la porte", "Arrosage", "Calendrier", "Lumières", "Bibliothèque", "En repos"),
    ("Erster in der Reihe", "Türdienst", "Blumendienst", "Kalender", "Licht", "Bücherei", "Frei"),
    ("Capofila", "Apre la porta", "Annaffia le piante", "Calendario", "Luci", "Biblioteca", "Riposo"),
    ("Ajudante da fila", "Abre a porta", "Rega as plantas", "Calendário", "Luzes", "Biblioteca", "Folga"))


@shape()
def jobs_of_the_week(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a job chart: a job and the one or two who have it, and in its last line all who have none."""
    *jobs, off = JOBS[rng.randrange(6)]
    join, waiting, lines = rng.choice((": ", " - ")), list(some), []
    for job in jobs[:len(some) - 1]:
        spare = len(waiting) > len(jobs) and rng.random() < 0.3
        lines.append(job + join + ", ".join(waiting.pop(0).given for _ in range(2 if spare else 1)))
    if waiting:
        lines.append(off + join + ", ".join(one.given for one in waiting))
    return Made("\n".join(lines), wanted(some), (*jobs, off))


ROWS = (
    ("Back row, left to right", "Middle row", "Front row", "Not pictured"),
    ("Fila de atrás, de izquierda a derecha", "Fila del medio", "Fila de adelante", "No aparece"),
    ("Dernier rang, de gauche à droite", "Deuxième rang", "Premier rang", "Absent"),
    ("Hintere Reihe von links", "Mittlere Reihe", "Vordere Reihe", "Nicht im Bild"),
    ("Ultima fila, da sinistra", "Fila centrale", "Prima fila", "Assente"),
    ("Fila de trás, da esquerda para a direita", "Fila do meio", "Fila da frente", "Não aparece"))


@shape()
def caption_of_a_photo(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy what stands under the class photo: the rows, whole names with commas, and who was not there."""
    rows = ROWS[rng.randrange(6)]
    away, there = some[:1], some[1:]
    third = max(1, len(there) // 3)
    parts = (there[:third], there[third:2 * third], there[2 * third:], away)
    lines = [f"{row}: {', '.join(map(full, part))}" + rng.choice(("", "."))
             for row, part in zip(rows, parts, strict=True)]
    return Made("\n".join(lines), wanted(some), rows)


REGISTERS = (("École maternelle – Grande section", "F", "G", "/"), ("Registro di classe – Sezione A", "F", "M", "/"),
             ("Klasse 1b – Schuljahr 2025/26", "w", "m", "."), ("Roll call – Reception", "F", "M", "/"),
             ("Registro – 3 años B", "F", "M", "-"), ("Chamada – Jardim II", "F", "M", "/"))


@shape()
def register_with_birthdates(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a register: the family in capitals, the given name, a letter for the sex, the day of birth."""
    title, girl, boy, mark = REGISTERS[rng.randrange(6)]
    gap = rng.choice(("\t", "  ", " "))
    lines = [gap.join((f"{one.family.upper()} {one.given}", rng.choice((girl, boy)),
                       mark.join((f"{rng.randrange(1, 29):02}", f"{rng.randrange(1, 13):02}", "2020"))))
             for one in some]
    return Made("\n".join((title, *lines)), wanted(some), (title,))
