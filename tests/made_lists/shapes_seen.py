"""Lists of an autumn in six languages, by a hand that had not seen the reader: the half that may be looked at.

`shapes_unseen` is by the same hand, to be measured only.
"""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_open import grown_ups, in_groups, listed, told, wanted

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
shape = _REGISTRY.shape
LANGUAGES = ("en", "es", "fr", "de", "it", "pt")


_DAYS = {"en": "{1}/{0}/2021", "de": "{0:02}.{1:02}.2021"}
_OTHER_DAYS = ("{0:02}/{1:02}/2021", "2021-{1:02}-{0:02}")


_OFFICE = {
    "en": ("Student ID", "Last Name", "First Name", "Date of Birth", "Gender", "Homeroom", "Total students", "Page"),
    "es": ("N.º exp.", "Apellidos", "Nombre", "F. nacimiento", "Sexo", "Grupo", "Total alumnos", "Página"),
    "fr": ("N° élève", "Nom", "Prénom", "Né(e) le", "Sexe", "Classe", "Effectif total", "Page"),
    "de": ("Schüler-Nr.", "Nachname", "Vorname", "Geburtsdatum", "Geschl.", "Klasse", "Anzahl Kinder", "Seite"),
    "it": ("Matricola", "Cognome", "Nome", "Data di nascita", "Sesso", "Sezione", "Totale alunni", "Pagina"),
    "pt": ("N.º processo", "Apelido", "Nome", "Data de nasc.", "Sexo", "Turma", "Total de alunos", "Página"),
}


@shape(HEADED)
def office_export(rng: random.Random, group: Sequence[Person]) -> Made:
    """What the office's program puts out: a number, both names, some more columns, a total and a page below."""
    language = rng.choice(LANGUAGES)
    *heads, total, page = _OFFICE[language]
    cell = rng.choice(("\t", ";", ","))
    columns = rng.choice(((0, 1, 2, 3, 4), (0, 1, 2, 5), (1, 2, 3), (2, 1, 3, 5), (1, 2), (0, 2, 1, 4, 3)))
    room = rng.choice(("K-2", "PK3", "B", "GS"))
    born = rng.choice((_DAYS.get(language, _OTHER_DAYS[0]), _OTHER_DAYS[1]))
    lines = [cell.join(heads[at] for at in columns)]
    for one in group:
        day = born.format(rng.randrange(1, 29), rng.randrange(1, 13))
        values = (str(rng.randrange(10000, 99999)), one.family, one.given, day, rng.choice("MF"), room)
        lines.append(cell.join(values[at] for at in columns))
    if rng.random() < 0.5:
        lines += ["", f"{total}: {len(group)}"] + [f"{page} 1/1"] * rng.randrange(2)
    return listed(lines, wanted(group), (*heads, total, page))


@shape(CLEAN)
def just_names(rng: random.Random, group: Sequence[Person]) -> Made:
    """Given names, one a line, as a teacher types them from memory: a title or none, dots or none."""
    title = rng.choice(("", "", "Room 4", "My class", "Mi clase", "Mes élèves", "Meine Gruppe", "La mia sezione",
                        "A minha sala", "PreK names"))
    mark = rng.choice(("", "", "- ", "• ", "* "))
    gap = rng.choice(("", "", "\n"))
    lines = [title, ""] if title else []
    lines += [f"{mark}{one.given}{gap}" for one in group]
    return listed(lines, wanted(group), (title,))


_REGISTERS = (
    ("Class list 2026–27", "Teacher: {0}"), ("Lista de clase 2026/27", "Tutora: {0}"),
    ("Liste de classe 2026-2027", "Enseignante : {0}"), ("Klassenliste 2026/27", "Lehrerin: {0}"),
    ("Elenco alunni a.s. 2026/27", "Insegnante: {0}"), ("Lista da turma 2026/2027", "Professora: {0}"),
)
_PREFIXES = ("de la ", "van der ", "von ", "Al-", "O'", "De ", "dos ", "El ", "Mc")


@shape(CLEAN)
def numbered_register(rng: random.Random, group: Sequence[Person]) -> Made:
    """A class list with its teacher, numbered; a family name in ten has a prefix."""
    title, teacher = rng.choice(_REGISTERS)
    leader = grown_ups(rng, group, 1)[0]
    number = rng.choice(("{0}. ", "{0}) ", "{0:02} ", "{0}\t"))
    comma = rng.random() < 0.4
    lines = [title, teacher.format(f"{leader.given} {leader.family}"), ""][rng.randrange(2):]
    for at, one in enumerate(group, 1):
        family = (rng.choice(_PREFIXES) if rng.random() < 0.1 else "") + one.family
        lines.append(number.format(at) + (f"{family}, {one.given}" if comma else f"{one.given} {family}"))
    return listed(lines, wanted(group), (title, teacher, leader.given, leader.family))


_MONTHS = {
    "en": ("January", "March", "April", "July", "September", "December"),
    "es": ("Enero", "Marzo", "Abril", "Julio", "Septiembre", "Diciembre"),
    "fr": ("Janvier", "Mars", "Avril", "Juillet", "Septembre", "Décembre"),
    "de": ("Januar", "März", "April", "Juli", "September", "Dezember"),
    "it": ("Gennaio", "Marzo", "Aprile", "Luglio", "Settembre", "Dicembre"),
    "pt": ("Janeiro", "Março", "Abril", "Julho", "Setembro", "Dezembro"),
}
_BIRTHDAYS = {"en": "Our birthdays 🎂", "es": "Cumpleaños", "fr": "Nos anniversaires", "de": "Geburtstagskalender",
              "it": "I nostri compleanni", "pt": "Aniversários"}


@shape()
def birthday_wall(rng: random.Random, group: Sequence[Person]) -> Made:
    """A birthday calendar: months as headings, a day beside each child, summer birthdays without a day at the end."""
    language = rng.choice(LANGUAGES)
    form = rng.choice(("{day} {name}", "{name} {day}", "{day}. {name}", "{name} ({day})", "{day} – {name}"))
    upper = rng.random() < 0.3
    lines = [_BIRTHDAYS[language]]
    for month, part in zip(_MONTHS[language], in_groups(group, 6), strict=False):
        lines += ["", month.upper() if upper else month]
        days = sorted(rng.sample(range(1, 29), len(part)))
        lines += [form.format(day=at, name=one.given) for at, one in zip(days, part, strict=True)]
    return listed(lines, wanted(group), (*_MONTHS[language], _BIRTHDAYS[language]))


_BUSES = (
    ("Bus {0} – driver: {1}", "{0} Oak Street", "{0} Church"),
    ("Autobús {0} (conductor: {1})", "{0} Plaza", "{0} Mercado"),
    ("Car {0} – chauffeur : {1}", "{0} Mairie", "{0} Église"),
    ("Bus {0}, Fahrer: {1}", "{0} Marktplatz", "{0} Kirche"),
    ("Scuolabus {0} – autista: {1}", "{0} Stazione", "{0} Via Roma"),
    ("Autocarro {0} – motorista: {1}", "{0} Largo da Igreja", "{0} Mercado"),
)


@shape()
def bus_list(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who rides which bus, by the stops with their times."""
    bus, *stops = rng.choice(_BUSES)
    driver = grown_ups(rng, group, 1)[0]
    full, mark = rng.random() < 0.6, rng.choice(("", "- ", "  "))
    lines = [bus.format(rng.randrange(1, 9), f"{driver.given} {driver.family}")]
    for at, (stop, part) in enumerate(zip(stops, in_groups(group, 2), strict=False)):
        lines += ["", stop.format(f"7:{12 + 9 * at}")]
        lines += [f"{mark}{one.given} {one.family}" if full else f"{mark}{one.given}" for one in part]
    return listed(lines, wanted(group), (bus, *stops, driver.given, driver.family))


_SNACKS = {
    "en": ("Snack rota – thank you!", ("Mon", "Wed", "Fri"), ("apples", "crackers", "carrots", "yogurt"), "and"),
    "es": ("Turno de merienda", ("lun", "mié", "vie"), ("manzanas", "galletas", "zanahorias", "yogur"), "y"),
    "fr": ("Goûters de décembre", ("lun", "mer", "ven"), ("pommes", "biscuits", "carottes", "yaourts"), "et"),
    "de": ("Obstkorb im Dezember", ("Mo", "Mi", "Fr"), ("Äpfel", "Zwieback", "Möhren", "Joghurt"), "und"),
    "it": ("Turni della merenda", ("lun", "mer", "ven"), ("mele", "cracker", "carote", "yogurt"), "e"),
    "pt": ("Escala do lanche", ("seg", "qua", "sex"), ("maçãs", "bolachas", "cenouras", "iogurte"), "e"),
}


@shape()
def snack_rota(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who brings the snack on which day: one child a day with the snack, or two without."""
    title, days, snacks, last = _SNACKS[rng.choice(LANGUAGES)]
    pairs = rng.random() < 0.35
    sign = rng.choice((": ", " – ", "\t"))
    end = rng.choice((" ({0})", ", {0}", " – {0}"))
    lines = [title, ""]
    for at, part in enumerate(in_groups(group, -(-len(group) // 2) if pairs else len(group))):
        when = f"{days[at % 3]} {1 + 2 * (at % 14)}.12."
        who = told([one.given for one in part], last) if len(part) > 1 else part[0].given
        lines.append(when + sign + who + ("" if pairs else end.format(rng.choice(snacks))))
    return listed(lines, wanted(group), (title, *days, *snacks))


_TEACHERS = (("Mrs {0}'s group", "Mr {0}'s group"), ("Grupo de la seño {0}", "Grupo del profe {0}"),
             ("Groupe de Mme {0}", "Groupe de M. {0}"), ("Gruppe Frau {0}", "Gruppe Herr {0}"),
             ("Gruppo della maestra {0}", "Gruppo del maestro {0}"), ("Grupo da prof. {0}", "Grupo do prof. {0}"))


@shape()
def two_teachers(rng: random.Random, group: Sequence[Person]) -> Made:
    """One class, two teachers: a heading with a name over each half."""
    leaders = grown_ups(rng, group, 2)
    heads = rng.choice(_TEACHERS)
    form = rng.choice(("{0.given}", "{0.given} {0.family}", "{0.given} {0.family[0]}.", "{0.family}, {0.given}"))
    end = rng.choice(("", ":", ":"))
    lines: list[str] = []
    for head, leader, part in zip(heads, leaders, in_groups(group, 2), strict=False):
        lines += [head.format(leader.family) + end, *(form.format(one) for one in part), ""]
    return listed(lines, wanted(group), (*heads, *(one.family for one in leaders)))


_SHIRTS = {"en": ("Child", "T-shirt", "Sizes"), "es": ("Niño/a", "Talla camiseta", "Tallas"),
           "fr": ("Enfant", "Taille t-shirt", "Tailles"), "de": ("Kind", "T-Shirt-Größe", "Größen"),
           "it": ("Bambino/a", "Taglia maglietta", "Taglie"), "pt": ("Criança", "Tamanho da t-shirt", "Tamanhos")}


@shape()
def shirt_sizes(rng: random.Random, group: Sequence[Person]) -> Made:
    """A size beside each child, with a header or without, and how many of each size below."""
    head, size, sizes = _SHIRTS[rng.choice(LANGUAGES)]
    scale = rng.choice((("XS", "S", "M"), ("4T", "5T", "4-5"), ("104", "110", "116"), ("3/4", "5/6", "7/8")))
    sign = rng.choice(("\t", " – ", ": ", "  ", " "))
    full = rng.random() < 0.6
    lines = [head + sign + size] if sign == "\t" and rng.random() < 0.7 else []
    for one in group:
        lines.append((f"{one.given} {one.family}" if full else one.given) + sign + rng.choice(scale))
    if rng.random() < 0.5:
        lines += ["", f"{sizes}: " + ", ".join(f"{rng.randrange(1, 9)} x {each}" for each in scale)]
    return listed(lines, wanted(group), (head, size, sizes, *scale))


_NEWCOMERS = (
    ("New pupils:", "(from Nov 9)", "new!"),
    ("Nuevos:", "(desde el 9/11)", "nueva"),
    ("Nouveaux élèves :", "(arrivé le 9/11)", "nouvelle"),
    ("Neu dazugekommen:", "(seit 9.11.)", "neu"),
    ("Nuovi arrivi:", "(dal 9/11)", "nuova"),
    ("Alunos novos:", "(desde 9/11)", "nova"),
)


@shape()
def joined_later(rng: random.Random, group: Sequence[Person]) -> Made:
    """A list in order of the alphabet, and those who came in November below it, some with the day."""
    head, since, new = rng.choice(_NEWCOMERS)
    form = rng.choice(("{0.family}, {0.given}", "{0.given} {0.family}", "{0.given}"))
    cut = max(1, len(group) - rng.randrange(1, 4))
    old = sorted(group[:cut], key=lambda one: form.format(one))
    lines = [form.format(one) for one in old] + ["", head]
    lines += [form.format(one) + rng.choice(("", f" {since}", f" - {new}")) for one in group[cut:]]
    return listed(lines, wanted((*old, *group[cut:])), (head, since, new))


_LETTERS = (
    ("Hi {0}, as asked here are the children coming on Friday:", "and", "Thanks, {1} ({2}'s mum)"),
    ("Buenos días, {0}: le paso los niños de la excursión:", "y", "Un saludo, {1} (mamá de {2})"),
    ("Bonjour {0}, voici les enfants inscrits pour vendredi :", "et", "Bonne soirée, {1} (maman de {2})"),
    ("Liebe Frau {0}, diese Kinder kommen am Freitag mit:", "und", "Viele Grüße, {1} (Mama von {2})"),
    ("Buongiorno {0}, ecco i bambini che vengono venerdì:", "e", "Grazie, {1} (mamma di {2})"),
    ("Olá {0}, seguem as crianças que vão na sexta-feira:", "e", "Obrigada, {1} (mãe de {2})"),
)


@shape()
def parents_letter(rng: random.Random, group: Sequence[Person]) -> Made:
    """A parent's mail: a greeting to the teacher, the children in lines or in one sentence, a parent's name below."""
    teacher, parent = grown_ups(rng, group, 2)
    hello, last, bye = rng.choice(_LETTERS)
    names = [one.given for one in group]
    mark = rng.choice(("", "- "))
    body = [told(names, last) + "."] if rng.random() < 0.4 else [mark + name for name in names]
    lines = [hello.format(teacher.family), "", *body, "", bye.format("", parent.given, group[0].given)]
    return listed(lines, wanted(group), (hello.replace("{0}", ""), teacher.family, parent.given, *bye.split("{")[:1]))


_WRONG = (
    ("NOT {0} – {1}", "{1} (not {0}!)"),
    ("NO {0} – {1}", "{1} (no {0})"),
    ("PAS {0} – {1}", "{1} (pas {0} !)"),
    ("NICHT {0} – {1}", "{1} (nicht {0}!)"),
    ("NON {0} – {1}", "{1} (non {0})"),
    ("NÃO {0} – {1}", "{1} (não {0})"),
)


@shape()
def put_right(rng: random.Random, group: Sequence[Person]) -> Made:
    """A list sent back by the families: a name or two was spelt wrong, and the right one stands beside it."""
    forms = (*rng.choice(_WRONG), "{0} → {1}", "{0} -> {1}")
    wrong: list[str] = []
    lines = []
    for at, one in enumerate(group):
        if at % 7 != 1 or len(one.given) < 4:
            lines.append(one.given)
            continue
        slip = rng.randrange(1, len(one.given) - 1)
        wrong.append(one.given[:slip] + one.given[slip + 1:])
        lines.append(rng.choice(forms).format(wrong[-1], one.given))
    return listed(lines, wanted(group), (*wrong, "NOT", "PAS", "NICHT", "NON", "NÃO"))


_SAID = ("(say {0})", "(se pronuncia {0})", "(se dit « {0} »)", "(sprich: {0})", "(si legge {0})", "(lê-se {0})",
         "[{0}]", "– pron. {0}", "({0})")


@shape()
def said_so(rng: random.Random, group: Sequence[Person]) -> Made:
    """How to say a name stands beside a few of them, in parts with one in capitals, for whoever fills in."""
    full, form = rng.random() < 0.5, rng.choice(_SAID)
    lines, said = [], []
    for one in group:
        name = f"{one.given} {one.family}" if full else one.given
        if rng.random() < 0.3 and len(one.given) > 4:
            middle = len(one.given) // 2
            said.append(f"{one.given[:middle].lower()}h-{one.given[middle:].upper()}")
            name += " " + form.format(said[-1])
        lines.append(name)
    return listed(lines, wanted(group), (*said, "say", "pronuncia", "sprich", "legge", "lê-se", "pron."))


_PICK_UPS = (
    ("Pick-up permissions", "mum {0}, grandma {1}", "dad {0} only", "walks with {0}"),
    ("Autorizados a recoger", "mamá {0}, abuela {1}", "solo papá {0}", "tía {0}"),
    ("Personnes autorisées", "maman {0}, mamie {1}", "papa {0} seulement", "nounou {0}"),
    ("Abholberechtigt", "Mama {0}, Oma {1}", "nur Papa {0}", "Tante {0}"),
    ("Deleghe al ritiro", "mamma {0}, nonna {1}", "solo papà {0}", "zia {0}"),
    ("Autorizados a levar", "mãe {0}, avó {1}", "só o pai {0}", "tia {0}"),
)


@shape()
def who_may_fetch(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who may fetch whom: relations with their names beside each child."""
    title, *forms = rng.choice(_PICK_UPS)
    adults = grown_ups(rng, group, 6)
    sign = rng.choice((": ", " – ", "\t"))
    full = rng.random() < 0.6
    lines = [title, ""]
    for one in group:
        first, second = rng.sample(adults, 2)
        name = f"{one.given} {one.family}" if full else one.given
        lines.append(name + sign + rng.choice(forms).format(first.given, second.given))
    return listed(lines, wanted(group), (title, *(one.given for one in adults), *" ".join(forms).split()))


_AGES = {"en": ("{0}-year-olds", "{0} y {1} m"), "es": ("{0} años", "{0} a. {1} m."),
         "fr": ("{0} ans", "{0} ans {1} mois"), "de": ("{0}-Jährige", "{0};{1}"),
         "it": ("{0} anni", "{0} anni e {1} mesi"), "pt": ("{0} anos", "{0}a {1}m")}


@shape()
def by_age(rng: random.Random, group: Sequence[Person]) -> Made:
    """A mixed group by age, with how many stand under each heading, and the months of some."""
    head, age = _AGES[rng.choice(LANGUAGES)]
    counted, months = rng.random() < 0.5, rng.random() < 0.4
    form = rng.choice(("{0.given}", "{0.given} {0.family}", "{0.family}, {0.given}"))
    lines: list[str] = []
    for years, part in zip((3, 4, 5), in_groups(group, 3), strict=False):
        lines.append(head.format(years) + (f" ({len(part)})" if counted else ""))
        ages = [f" ({age.format(years, rng.randrange(1, 12))})" if months else "" for _ in part]
        lines += [*(form.format(one) + old for one, old in zip(part, ages, strict=True)), ""]
    return listed(lines, wanted(group), ("años", "ans", "Jährige", "anni", "anos", "mois", "mesi"))
