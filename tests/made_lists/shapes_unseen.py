"""Lists of an autumn in six languages, by the hand of `shapes_seen`: the half that is measured only.

Whoever mends the reader leaves this half closed. In `MAY_ASK` are shapes of which a careful human would ask about some
children too; there "asked" is no fault.
"""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_open import grown_ups, in_groups, listed, plain, wanted

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
MAY_ASK = {"come_and_gone", "phone_photo"}
shape = _REGISTRY.shape


_TABLES = (
    ("Table", "First", "Last", ("Bears", "Foxes", "Owls")),
    ("Mesa", "Nombre", "Apellido", ("Osos", "Zorros", "Búhos")),
    ("Table", "Prénom", "Nom", ("Ours", "Renards", "Hiboux")),
    ("Tisch", "Vorname", "Name", ("Bären", "Füchse", "Eulen")),
    ("Tavolo", "Nome", "Cognome", ("Orsi", "Volpi", "Gufi")),
    ("Mesa", "Nome", "Apelido", ("Ursos", "Raposas", "Mochos")),
)


@shape(HEADLESS)
def merged_cells(rng: random.Random, group: Sequence[Person]) -> Made:
    """A sheet where one cell spans the rows of a table of children: pasted, it stands in the first row alone."""
    *heads, tables = rng.choice(_TABLES)
    first, second = (0, 1) if rng.random() < 0.6 else (1, 0)
    lines = ["\t".join((heads[0], heads[1 + first], heads[1 + second]))] if rng.random() < 0.6 else []
    for table, part in zip(tables, in_groups(group, 3), strict=False):
        for at, one in enumerate(part):
            names = (one.given, one.family)
            lines.append("\t".join(("" if at else table, names[first], names[second])))
    return listed(lines, wanted(group), (*heads, *tables))


@shape(CLEAN)
def whole_names(rng: random.Random, group: Sequence[Person]) -> Made:
    """Given and family name, one child a line; where two family names are usual, both; seldom a nickname."""
    second = grown_ups(rng, group, len(group)) if rng.random() < 0.3 else []
    title = rng.choice(("", "", "K-1 Ms. B", "Sala dos 4 anos", "Grande section", "Infantil 4 años B", "Vorschule"))
    lines, children = [title, ""] if title else [], []
    for at, one in enumerate(group):
        called = f" ({one.given[:3]})" if rng.random() < 0.06 and len(one.given) > 4 else ""
        more = f" {second[at].family}" if at < len(second) else ""
        lines.append(f"{one.given}{called} {one.family}{more}")
        children.append(Wanted((one.given, *((one.given[:3],) if called else ())), one.given))
    return listed(lines, children, (title,))


@shape(CLEAN)
def family_in_capitals(rng: random.Random, group: Sequence[Person]) -> Made:
    """An official list: the family name first and in capitals, with a comma or without, seldom numbered."""
    between = rng.choice((" ", " ", ", "))
    number = rng.random() < 0.4
    ordered = sorted(group, key=lambda one: one.family)
    numbers = [f"{at} " if number else "" for at in range(1, len(ordered) + 1)]
    lines = [f"{at}{one.family.upper()}{between}{one.given}" for at, one in zip(numbers, ordered, strict=True)]
    return listed(lines, wanted(ordered))


_FORMS = (
    ("Timestamp", "Child's first and last name", "Parent/guardian name", "Phone", "I can bring"),
    ("Marca temporal", "Nombre y apellidos del niño/a", "Nombre del padre/madre", "Teléfono", "Puedo traer"),
    ("Horodateur", "Nom et prénom de l'enfant", "Nom du parent", "Téléphone", "J'apporte"),
    ("Zeitstempel", "Vor- und Nachname des Kindes", "Name der Eltern", "Telefon", "Wir bringen mit"),
    ("Informazioni cronologiche", "Nome e cognome del bambino", "Nome del genitore", "Telefono", "Porto"),
    ("Carimbo de data/hora", "Nome e apelido da criança", "Nome do encarregado", "Telefone", "Posso levar"),
)
_BROUGHT = ("cookies", "juice", "pan", "gâteau", "Saft", "pizza", "sumo", "cups", "")


@shape(HEADED)
def sign_up(rng: random.Random, group: Sequence[Person]) -> Made:
    """Answers to a form: when, the child, the grown-up, a telephone number, what the family brings."""
    heads = rng.choice(_FORMS)
    cell = rng.choice(("\t", "\t", ","))
    adults = grown_ups(rng, group, 6)
    keep = rng.choice(((0, 1, 2, 3, 4), (0, 1, 2, 4), (0, 2, 1, 3), (0, 1, 4)))
    lines = [cell.join(heads[at] for at in keep)]
    for one in group:
        adult = rng.choice(adults)
        child = f"{one.family} {one.given}" if heads[0] == "Horodateur" else f"{one.given} {one.family}"
        row = (f"{rng.randrange(1, 29)}/11/2026 {rng.randrange(7, 22)}:{rng.randrange(10, 60)}:05", child,
               f"{adult.given} {adult.family}", f"555 01{rng.randrange(10, 99)}", rng.choice(_BROUGHT))
        lines.append(cell.join(row[at] for at in keep))
    return listed(lines, wanted(group), (*(one.given for one in adults), *(one.family for one in adults), *_BROUGHT))


_SEATS = (("Seating – November", "FRONT / BOARD", "window", "door"), ("Plano de mesas", "PIZARRA", "ventana", "puerta"),
          ("Plan de classe", "TABLEAU", "fenêtre", "porte"), ("Sitzplan", "TAFEL", "Fenster", "Tür"),
          ("Disposizione dei posti", "LAVAGNA", "finestra", "porta"), ("Planta da sala", "QUADRO", "janela", "porta"))


@shape()
def seats(rng: random.Random, group: Sequence[Person]) -> Made:
    """A seating chart: names in rows as they sit, empty seats, and where the board is."""
    title, board, window, door = rng.choice(_SEATS)
    cell = rng.choice(("\t", " | ", "    "))
    empty = {"\t": "", " | ": "-", "    ": "---"}[cell]
    width = rng.choice((3, 4))
    seats_taken = [one.given for one in group]
    if rng.random() < 0.5:
        seats_taken.insert(rng.randrange(1, len(seats_taken)), empty)
    rows = [cell.join(seats_taken[at:at + width]) for at in range(0, len(seats_taken), width)]
    lines = [title, board, *rows] + ([f"{window}{cell}{door}"] if rng.random() < 0.3 else [])
    return listed(lines, wanted(group), (title, board, window, door))


_HOME = (
    ("Name", "Home language", ("Spanish", "Arabic", "English", "Somali")),
    ("Nombre", "Lengua familiar", ("español", "árabe", "rumano", "inglés")),
    ("Prénom", "Langue à la maison", ("français", "arabe", "turc", "portugais")),
    ("Vorname", "Familiensprache", ("Deutsch", "Türkisch", "Ukrainisch", "Arabisch")),
    ("Nome", "Lingua madre", ("italiano", "albanese", "rumeno", "cinese")),
    ("Nome", "Língua em casa", ("português", "crioulo", "ucraniano", "hindi")),
)


@shape(HEADED)
def spoken_at_home(rng: random.Random, group: Sequence[Person]) -> Made:
    """The language spoken at home beside each child, seldom two, with a header."""
    name, head, tongues = rng.choice(_HOME)
    cell = rng.choice(("\t", ";", " | "))
    full = rng.random() < 0.4
    lines = [f"{name}{cell}{head}"]
    for one in group:
        tongue = "/".join(rng.sample(tongues, 2)) if rng.random() < 0.15 else rng.choice(tongues)
        lines.append((f"{one.given} {one.family}" if full and name != "Prénom" else one.given) + cell + tongue)
    return listed(lines, wanted(group), (head, *tongues))


_NEEDS = (
    ("needs help with scissors", "left-handed", "glasses", "speech Tue/Thu", "sits near the front"),
    ("necesita ayuda con las tijeras", "zurdo", "lleva gafas", "logopeda martes", "sentar delante"),
    ("aide pour découper", "gaucher", "porte des lunettes", "orthophoniste mardi", "placer devant"),
    ("braucht Hilfe beim Schneiden", "Linkshänder", "Brille", "Logopädie Di", "sitzt vorne"),
    ("aiuto con le forbici", "mancino", "porta gli occhiali", "logopedia martedì", "posto davanti"),
    ("ajuda com a tesoura", "canhoto", "usa óculos", "terapia da fala à terça", "sentar à frente"),
)


@shape()
def needs_beside(rng: random.Random, group: Sequence[Person]) -> Made:
    """A few children have a note on what helps them, after a dash, a colon or in brackets."""
    needs = rng.choice(_NEEDS)
    form = rng.choice(("{0} – {1}", "{0} ({1})", "{0}: {1}", "{0} - {1}", "{0}, {1}"))
    full = rng.random() < 0.5
    lines = []
    for one in group:
        name = f"{one.given} {one.family}" if full else one.given
        lines.append(form.format(name, rng.choice(needs)) if rng.random() < 0.35 else name)
    return listed(lines, wanted(group), needs)


_TALKS = (("Show and tell", ("Mon", "Tue", "Thu")), ("Día del protagonista", ("Lunes", "Martes", "Jueves")),
          ("Quoi de neuf ?", ("lundi", "mardi", "jeudi")), ("Erzählkreis", ("Mo.", "Di.", "Do.")),
          ("Mostra e racconta", ("Lun", "Mar", "Gio")), ("Hora da novidade", ("2.ª feira", "3.ª feira", "5.ª feira")))


@shape()
def turns_to_tell(rng: random.Random, group: Sequence[Person]) -> Made:
    """Whose turn it is to show something: a day before or behind each name."""
    title, days = rng.choice(_TALKS)
    behind = rng.random() < 0.4
    sign = rng.choice(("\t", " – ", ": ", "  "))
    lines = [title]
    for at, one in enumerate(group):
        when = f"{days[at % 3]} {1 + at}/12"
        lines.append(f"{one.given}{sign}{when}" if behind else f"{when}{sign}{one.given}")
    return listed(lines, wanted(group), (title, *days))


_FOLDERS = (
    ("Portfolio check", "cover", "self-portrait", "photo"),
    ("Carpetas", "portada", "autorretrato", "foto"),
    ("Cahiers de réussites", "couverture", "autoportrait", "photo"),
    ("Mappen", "Deckblatt", "Selbstbild", "Foto"),
    ("Cartelline", "copertina", "autoritratto", "foto"),
    ("Portefólios", "capa", "autorretrato", "foto"),
)


@shape()
def folders_checked(rng: random.Random, group: Sequence[Person]) -> Made:
    """A check-list: a box before each name, or columns of ticks under what has to be in the folder."""
    title, *parts = rng.choice(_FOLDERS)
    full = rng.random() < 0.4
    names = [f"{one.given} {one.family}" if full else one.given for one in group]
    if rng.random() < 0.5:
        boxes = rng.choice((("☐", "☑"), ("[ ]", "[x]"), ("□", "✓")))
        lines = [title, ""] + [f"{rng.choice(boxes)} {name}" for name in names]
    else:
        lines = ["\t".join((title, *parts))]
        lines += ["\t".join((name, *(rng.choice(("x", "✓", "")) for _ in parts))) for name in names]
    return listed(lines, wanted(group), (title, *parts))


_BAGS = ("Book bag numbers", "Número de mochila", "Sacs de lecture", "Büchertaschen", "Sacchette dei libri",
         "Sacos de leitura")


@shape()
def bags_numbered(rng: random.Random, group: Sequence[Person]) -> Made:
    """The number of a bag or a hook beside each name; the numbers are in no order."""
    form = rng.choice(("{0} #{1}", "#{1} {0}", "{0} - {1}", "{0}\t{1}", "{1} = {0}", "{0} ({1})", "{0} {1}"))
    full = rng.random() < 0.3
    numbers = rng.sample(range(1, 40), len(group))
    title = rng.choice(_BAGS)
    lines = [title] + [form.format(f"{one.given} {one.family}" if full else one.given, number)
                       for one, number in zip(group, numbers, strict=True)]
    return listed(lines, wanted(group), (title,))


_KIN = (
    ("twin of {0}", "brother in Grade 2", "{0}'s cousin"),
    ("gemela de {0}", "hermano en 2.º", "primo de {0}"),
    ("jumelle de {0}", "frère en CE1", "cousin de {0}"),
    ("Zwilling von {0}", "Bruder in Klasse 2", "Cousine von {0}"),
    ("gemella di {0}", "fratello in seconda", "cugino di {0}"),
    ("gémea de {0}", "irmão no 2.º ano", "primo de {0}"),
)


@shape()
def kin_in_school(rng: random.Random, group: Sequence[Person]) -> Made:
    """Twins and cousins of the class name one another; brothers and sisters in other classes have none."""
    kin = rng.choice(_KIN)
    form = rng.choice(("{0} ({1})", "{0} – {1}", "{0}, {1}"))
    lines = []
    for at, one in enumerate(group):
        name = f"{one.given} {one.family}"
        said = rng.choice(kin).format(group[at - 1].given)
        lines.append(form.format(name, said) if rng.random() < 0.25 else name)
    words = (word for text in kin for word in text.replace("{0}'s", "").replace("{0}", "").split())
    return listed(lines, wanted(group, "{given} {family}"), tuple(words))


@shape()
def phone_photo(rng: random.Random, group: Sequence[Person]) -> Made:
    """A printed list read by a phone: the head of the page, numbers read wrong, stray signs, lost accents, a footer."""
    number = rng.choice(("{0}.", "{0})", "{0}", "{0},"))
    full = rng.random() < 0.6
    bare = rng.random() < 0.4
    lines = [rng.choice(("CLASS ROSTER", "LISTA DE ALUNOS", "LISTE DES ELEVES", "KLASSENLISTE", "ELENCO ALUNNI")), ""]
    children = []
    for at, one in enumerate(group, 1):
        given, family = (plain(one.given), plain(one.family)) if bare else (one.given, one.family)
        shown = {1: "l", 10: "1O", 11: "ll"}.get(at, str(at)) if rng.random() < 0.4 else str(at)
        stray = rng.choice(("", "", "", "", " |", " .", "~ ", " _"))
        lines.append(f"{number.format(shown)} {given}{f' {family}' if full else ''}{stray}")
        children.append(Wanted((given,), given))
    lines += ["", rng.choice(("Page 1 of 1", "1/1", "- 1 -"))]
    return listed(lines, children, (*lines[0].split(), "Page"))


_LEAVERS = (("left 12 Oct", "moved away", "starts 1 Dec"), ("baja el 12/10", "se mudó", "empieza el 1/12"),
            ("parti le 12/10", "a déménagé", "arrive le 1/12"), ("abgemeldet 12.10.", "weggezogen", "kommt am 1.12."),
            ("uscito il 12/10", "trasferito", "arriva il 1/12"), ("saiu a 12/10", "mudou de escola", "começa a 1/12"))


@shape()
def come_and_gone(rng: random.Random, group: Sequence[Person]) -> Made:
    """A printed register with notes by hand: who has left, who begins in December."""
    *gone, coming = rng.choice(_LEAVERS)
    form = rng.choice(("{0} ({1})", "{0} – {1}", "{0} - {1}"))
    comma = rng.random() < 0.4
    lines, children, either = [], [], []
    for at, one in enumerate(group):
        name = f"{one.family}, {one.given}" if comma else f"{one.given} {one.family}"
        said = rng.choice(gone) if at % 9 == 4 else coming if at % 9 == 7 else ""
        lines.append(form.format(name, said) if said else name)
        (either if said in gone else children).append(Wanted((one.given,), one.given))
    made = listed(lines, children, (*gone, coming))
    return Made(made.text, made.children, made.remarks, tuple(either))


_REGISTER = {
    "en": ("Name", "MTWTF"), "es": ("Alumno", "LMXJV"), "fr": ("Élève", "LMMJV"),
    "de": ("Name", "MDMDF"), "it": ("Alunno", "LMMGV"), "pt": ("Aluno", "STQQS"),
}


@shape(HEADED)
def ticked_days(rng: random.Random, group: Sequence[Person]) -> Made:
    """A register of a week: a number, the name, and a mark under each day; how many were there stands below."""
    head, days = _REGISTER[rng.choice(sorted(_REGISTER))]
    marks = rng.choice(("P", "✓", "x", "/", "1"))
    comma = rng.random() < 0.5
    lines = ["\t".join(("#", head, *days))]
    for at, one in enumerate(group, 1):
        name = f"{one.family}, {one.given}" if comma else f"{one.given} {one.family}"
        lines.append("\t".join((str(at), name, *(rng.choice((marks, marks, marks, "A", "")) for _ in days))))
    if rng.random() < 0.5:
        lines.append("\t".join(("", "Total", *(str(rng.randrange(2, len(group) + 1)) for _ in days))))
    return listed(lines, wanted(group), ("Total", head))
