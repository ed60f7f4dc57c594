"""Shapes by a hand that knew neither the reader nor the other shapes: the half that may be looked at.

`shapes_kept` is by the same hand, to be measured only. In `MAY_ASK` are shapes of which a careful human would ask
about some children too; there "asked" is no fault.
"""

from __future__ import annotations

import random
import unicodedata
from collections.abc import Iterable, Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import INVENTED, Person, people
from made_lists.registry import Registry
from namewright.roster.vocabulary import fold

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
MAY_ASK: set[str] = set()
shape = _REGISTRY.shape


def listed(lines: Iterable[str], children: Iterable[Wanted], remarks: Iterable[str] = ()) -> Made:
    """Put a list together; a remark that is a child's name too (a month, a flower) is no trap in that list."""
    kept = tuple(children)
    names = {word for one in kept for right in one.right for word in fold(right).split()}
    words = (word for text in remarks for word in text.split() if fold(word) not in names)
    return Made("\n".join(lines), kept, tuple(words))


def wanted(group: Iterable[Person], mark: str = "{given}") -> list[Wanted]:
    """Return children that practise their given names; ``mark`` is how they stand in the text."""
    return [Wanted((one.given,), mark.format(given=one.given, family=one.family)) for one in group]


def grown_ups(rng: random.Random, group: Sequence[Person], count: int) -> list[Person]:
    """Draw parents and teachers of the place of the group, no word of whose names is a child's."""
    taken = {word for one in group for word in fold(f"{one.given} {one.family}").split()}
    drawn = people(rng, group[0].place, count + 2 * len(group)) + people(rng, INVENTED, count)
    return [one for one in drawn if taken.isdisjoint(fold(f"{one.given} {one.family}").split())][:count]


def plain(text: str) -> str:
    """Return a text with its accents lost, as old programs export it."""
    return "".join(sign for sign in unicodedata.normalize("NFD", text) if not unicodedata.combining(sign))


def told(names: Sequence[str], last: str) -> str:
    """Return names as they are told in a sentence: with commas, and a word before the last."""
    return f"{', '.join(names[:-1])} {last} {names[-1]}"


def in_groups(group: Sequence[Person], count: int) -> list[Sequence[Person]]:
    """Divide a group into at most ``count`` tables or teams that stand one after another, none of them empty."""
    size = -(-len(group) // count)
    return [group[at:at + size] for at in range(0, len(group), size)]


@shape()
def art_group_text(rng: random.Random, group: Sequence[Person]) -> Made:
    """A text from a parent's phone: a greeting that names the parent, the children in one breath, thanks."""
    sender = grown_ups(rng, group, 1)[0]
    before, last, after = rng.choice((
        ("hi its {0} 😊 here are the kids for the art group: ", "and", "\nthanks so much!! see u monday x"),
        ("Hola profe, soy {0}, estos son los niños del taller de pintura: ", "y", ". Muchas gracias 🙏"),
        ("Bonjour maîtresse, c'est {0}. Voici les enfants pour l'atelier peinture : ", "et", ". Merci et à lundi !"),
        ("Hallo, hier {0}, das sind die Kinder für die Malgruppe: ", "und", "\nLG und bis Montag"),
        ("Ciao maestra, sono {0}, ecco i bambini del gruppo di pittura: ", "e", ". Grazie mille!"),
        ("Oi prof, aqui é {0}, essas são as crianças do grupo de artes: ", "e", ". Obrigada 😘"),
    ))
    text = before.format(sender.given) + told([one.given for one in group], last) + after
    return listed([text], wanted(group), (sender.given, before.replace("{0}", ""), after))


@shape()
def struck_off(rng: random.Random, group: Sequence[Person]) -> Made:
    """A numbered list in which children who went away are struck out and keep their numbers."""
    gone = grown_ups(rng, group, 2)
    why = rng.choice(("moved away", "se mudó", "a déménagé", "weggezogen", "si è trasferito", "mudou de cidade"))
    rows = [f"{one.given} {one.family}" for one in group]
    for one in gone:
        rows.insert(rng.randrange(1, len(rows)), f"~~{one.given} {one.family}~~ {rng.choice((why, f'({why})', ''))}")
    lines = [f"{at}. {row}".rstrip() for at, row in enumerate(rows, 1)]
    return listed(lines, wanted(group, "{given} {family}"), (why, *(one.given for one in gone)))


@shape()
def child_of_father(rng: random.Random, group: Sequence[Person]) -> Made:
    """A register whose names have no family: given, "son of" or "daughter of", the father's given name."""
    fathers = grown_ups(rng, group, len(group))
    words = rng.choice((("bin", "binti"), ("a/l", "a/p"), ("ibn", "bint"), ("bin", "bte")))
    title = rng.choice(("Nama murid", "5 Years Cempaka - name list", "Register of pupils"))
    lines = [f"{at:02}  {one.given} {rng.choice(words)} {father.given}"
             for at, (one, father) in enumerate(zip(group, fathers, strict=True), 1)]
    return listed([title, "", *lines], wanted(group), (title, *(one.given for one in fathers)))


@shape()
def swim_lanes(rng: random.Random, group: Sequence[Person]) -> Made:
    """Swimming groups with the names of water animals; a time, a lane and a coach in the heading, things to bring."""
    coaches = grown_ups(rng, group, 3)
    heading, animals, notes = rng.choice((
        ("{0} (Tues {1}, lane {2}) - coach {3}", ("SEAHORSES", "TURTLES", "DOLPHINS"),
         ("needs goggles", "ear plugs!", "no dunking please", "hair tie")),
        ("{0}, {1} Uhr, Bahn {2}, Leitung: {3}", ("Seepferdchen", "Frösche", "Delfine"),
         ("Schwimmflügel", "Ohrstöpsel", "Paukenröhrchen", "Badekappe")),
        ("Groupe {0} – {1} – ligne {2} – moniteur : {3}", ("Tortues", "Dauphins", "Hippocampes"),
         ("brassards", "lunettes", "bonnet rouge", "a peur de l'eau")),
        ("{0} ({1}, calle {2}) monitora {3}", ("DELFINES", "TORTUGAS", "ESTRELLAS DE MAR"),
         ("manguitos", "gafas", "tapones", "gorro azul")),
    ))
    lines = []
    for at, some in enumerate(in_groups(group, 3)):
        lines += [heading.format(animals[at], f"{at + 2}:15", at + 1, coaches[at].given)]
        lines += [f"• {one.given} {one.family[0]}." + rng.choice(("", "", f" – {rng.choice(notes)}")) for one in some]
        lines += [""]
    return listed(lines, wanted(group, "{given}"),
                  ("Uhr Bahn ligne calle lane", *animals, *notes, *(one.given for one in coaches)))


@shape(MAY_ASK)
def pipes_of_a_photo(rng: random.Random, group: Sequence[Person]) -> Made:
    """A ruled paper read from a photo: stray bars, a 0 for an O and a 1 for an l, names broken after the comma."""
    spoilt = str.maketrans({"o": "0", "O": "0", "l": "1"})
    lines, children = ["| CLASS  LlST   Rm 4 |", "|________________|"], []
    for at, one in enumerate(group, 1):
        family = one.family.translate(spoilt) if rng.random() < 0.2 else one.family
        given = one.given.translate(spoilt) if rng.random() < 0.1 else one.given
        row = f"{rng.choice(('|', '| ', '', '¦ '))}{at} {rng.choice(('|', '', '!'))} {family},"
        broken = rng.random() < 0.08
        lines += [row, f"   {given} |"] if broken else [f"{row} {given}{rng.choice((' |', '', ' ¦'))}"]
        children.append(Wanted((one.given,), given))
    return listed(lines, children, ("CLASS LIST LlST Rm",))


@shape()
def cubby_grid(rng: random.Random, group: Sequence[Person]) -> Made:
    """Labels laid out as on the shelf: a name in every cell, four beside each other, some cells free."""
    title, free = rng.choice((("Cubby labels Room 4", "(empty)"), ("Garderobe Sonnenzimmer", "frei"),
                              ("Porte-manteaux", "libre"), ("Percheros aula 2", "libre"),
                              ("Attaccapanni", "libero"), ("Cabides da sala 3", "vazio")))
    cells = [one.given for one in group]
    for _ in range(2):
        cells.insert(rng.randrange(len(cells)), free)
    rows = ["\t".join(cells[at:at + 4]) for at in range(0, len(cells), 4)]
    return listed([title, *rows], wanted(group), (title, free))


@shape()
def allergies(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who may not eat what, for the kitchen: foods, where the medicine is, and "none" for most."""
    title, foods, none = rng.choice((
        ("ALLERGIES & DIETS (please keep by the snack cart)",
         ("peanuts - EpiPen in office", "dairy", "strawberries, kiwi", "egg (baked OK)", "halal"), "none"),
        ("Allergien / Essen", ("Nüsse!! Notfallset im Büro", "Laktose", "Erdbeeren", "vegetarisch"), "keine"),
        ("Allergies et PAI", ("arachide (trousse au bureau)", "lait de vache", "œuf", "sans porc"), "RAS"),
        ("Alergias e intolerancias", ("frutos secos", "lactosa", "huevo", "celíaca"), "no"),
        ("Allergie e diete", ("latte", "uova", "fragole", "celiachia"), "nessuna"),
        ("Alergias alimentares", ("amendoim", "leite", "ovo e soja", "glúten"), "nenhuma"),
    ))
    dash = rng.choice((": ", " – ", " ... ", " = "))
    lines = [f"{one.given} {one.family}{dash}{rng.choice(foods) if rng.random() < 0.3 else none}" for one in group]
    return listed([title, *lines], wanted(group, "{given} {family}"), (title, none, *foods))


@shape()
def bus_stops(rng: random.Random, group: Sequence[Person]) -> Made:
    """A driver's run sheet: the time, the corner, and whoever gets on there, one or two of them."""
    title, corners, driver = rng.choice((
        ("Bus 7 AM run", ("Elm & 3rd", "Quarry Rd", "the mailboxes on Pine", "Mill Lane"), "Driver"),
        ("Bus 2 – Hinfahrt", ("Marktplatz", "Mühlweg", "An der Linde", "Bahnhofstr."), "Fahrer"),
        ("Car n° 3 matin", ("place de l'Église", "rue du Moulin", "mairie", "lotissement des Pins"), "Chauffeur"),
        ("Ruta 4 mañana", ("plaza Mayor", "c/ del Molino", "la fuente", "avda. de la Paz"), "Conductor"),
    ))
    who = grown_ups(rng, group, 1)[0]
    lines, rest, minute = [], list(group), 2
    while rest:
        some, rest = rest[:(count := rng.randrange(1, 3))], rest[count:]
        names = " + ".join(f"{one.given} {one.family}" for one in some)
        lines.append(f"7:{minute:02} {rng.choice(corners)}: {names}")
        minute += 3
    head = [title, f"{driver}: {who.given} {who.family}", ""]
    return listed([*head, *lines], wanted(group, "{given} {family}"), (driver, who.given, title, *corners))


@shape(HEADED)
def record_cards(rng: random.Random, group: Sequence[Person]) -> Made:
    """A card a child, one field a line, as a program prints one record under another."""
    family, given, born, guardian, phone = rng.choice((
        ("Last name", "First name", "DOB", "Guardian", "Emergency phone"),
        ("Nachname", "Vorname", "Geb.", "Sorgeberechtigt", "Notfall-Tel."),
        ("Nom", "Prénom", "Né(e) le", "Responsable", "Tél."),
        ("Apellidos", "Nombre", "F. nac.", "Tutor/a", "Teléfono"),
        ("Cognome", "Nome", "Nato il", "Genitore", "Tel."),
        ("Apelido", "Nome próprio", "Nascimento", "Encarregado", "Contacto"),
    ))
    adults = grown_ups(rng, group, len(group))
    lines = []
    for one, adult in zip(group, adults, strict=True):
        lines += [f"{family}: {one.family}", f"{given}: {one.given}",
                  f"{born}: {rng.randrange(1, 29):02}/{rng.randrange(1, 13):02}/2021",
                  f"{guardian}: {adult.given} {one.family}", f"{phone}: 555-{rng.randrange(100, 999)}-01", "-----"]
    return listed(lines, wanted(group, ": {given}"), (guardian, phone, *(one.given for one in adults)))


@shape(MAY_ASK)
def parents_chat(rng: random.Random, group: Sequence[Person]) -> Made:
    """A parents' chat as it is exported: the day, the sender, and a child's name in every second message."""
    adults = grown_ups(rng, group, len(group) + 1)
    question, answers, joined, chatter = rng.choice((
        ("Who is coming to the pumpkin farm? Just write your kid's name 🎃", ("{0}", "{0} 👍", "{0} please", "{0}!"),
         "joined using this group's link", ("thank you!!", "<Media omitted>", "what time is pickup?")),
        ("¿Quién viene a la granja? Poned el nombre del niño", ("{0}", "{0} 👍", "{0} va", "{0} se apunta"),
         "se unió con el enlace del grupo", ("gracias!!", "<Multimedia omitido>", "a qué hora es?")),
        ("Wer kommt mit zum Bauernhof? Bitte Name vom Kind", ("{0}", "{0} 👍", "{0} kommt mit", "{0} ist dabei"),
         "ist der Gruppe beigetreten", ("danke!!", "<Medien ausgeschlossen>", "wann ist Abholung?")),
    ))
    first = adults[-1]
    stamp = "{0:02}/10/2025, {1}:{2:02} - "
    lines = [stamp.format(3, 17, 1) + f"{first.given} {first.family}: {question}"]
    for at, (one, adult) in enumerate(zip(group, adults, strict=False)):
        when, who = stamp.format(3 + at // 9, 17 + at % 5, at * 2 + 2), f"{adult.given} {one.family}"
        if rng.random() < 0.2:
            lines.append(f"{when}{who} {joined}")
        lines.append(f"{when}{who}: {rng.choice(answers).format(one.given)}")
        if rng.random() < 0.2:
            lines.append(f"{when}{first.given} {first.family}: {rng.choice(chatter)}")
    return listed(lines, wanted(group, ": {given}"), (*(one.given for one in adults), joined, question, *chatter))


@shape()
def two_halves(rng: random.Random, group: Sequence[Person]) -> Made:
    """A class of two teachers, half under each; a total after each half."""
    first, second = grown_ups(rng, group, 2)
    heading, total, titles = rng.choice((
        ("{0} {1}'s kids", "{0} kids", ("Ms.", "Mr.")), ("Kinder von {0} {1}", "= {0} Kinder", ("Frau", "Herrn")),
        ("Groupe de {0} {1}", "soit {0} élèves", ("Mme", "M.")), ("Grupo de {0} {1}", "{0} en total", ("Srta.", "Don")),
        ("Gruppo della {0} {1}", "totale {0}", ("maestra", "maestra")), ("Turma da {0} {1}", "total: {0}",
                                                                         ("Prof.ª", "professora")),
    ))
    lines = []
    for adult, title, some in zip((first, second), titles, in_groups(group, 2), strict=True):
        lines += [heading.format(title, adult.family), *(f"{one.family}, {one.given}" for one in some),
                  total.format(len(some)), ""]
    return listed(lines, wanted(group, "{family}, {given}"),
                  (first.family, second.family, "kids Kinder élèves total Groupe Grupo Gruppo Turma"))


@shape()
def helper_of_the_day(rng: random.Random, group: Sequence[Person]) -> Made:
    """A calendar of helpers: a day and a child, with days on which there is no school."""
    days, job, off = rng.choice((
        (("Mon", "Tue", "Wed", "Thu", "Fri"), ("line leader", "snack helper", "plants"), "NO SCHOOL"),
        (("Mo", "Di", "Mi", "Do", "Fr"), ("Kalender", "Blumen", "Tischdienst"), "schulfrei"),
        (("lun.", "mar.", "mer.", "jeu.", "ven."), ("météo", "plantes", "goûter"), "férié"),
        (("lun", "mar", "mié", "jue", "vie"), ("fila", "plantas", "merienda"), "festivo"),
        (("lun", "mar", "mer", "gio", "ven"), ("capofila", "piante", "merenda"), "festa"),
        (("seg", "ter", "qua", "qui", "sex"), ("fila", "plantas", "lanche"), "feriado"),
    ))
    lines, rest, at = [], list(group), 0
    while rest:
        day = f"{days[at % 5]} {at // 5 * 7 + at % 5 + 3}/11"
        holiday = at % 9 == 6
        lines.append(f"{day} {off}" if holiday else f"{day} {rest.pop(0).given} ({job[at % 3]})")
        at += 1
    return listed(lines, wanted(group), (off, *job, *days))


@shape(HEADED)
def marked_csv(rng: random.Random, group: Sequence[Person]) -> Made:
    """A file of an office program: a mark of its encoding, semicolons, some cells in quotes, a comma in the times."""
    head, care = rng.choice((
        ("LfdNr;Familienname;Rufname;GebDat;Betr.zeit;abholberechtigt", ("7,5 Std", "halbtags")),
        ("Num;NOM_ELEVE;PRENOM_ELEVE;DT_NAISS;REGIME;PERS_AUTORISEE", ("DP", "EXT")),
        ("ord;apellidos_al;nombre_al;fec_nac;turno;recoge", ("mañana", "comedor")),
        ("progr;cognome_al;nome_al;data_nasc;tempo;delegato", ("pieno", "ridotto")),
        ("seq;learner_surname;learner_forename;birth_dt;session;collects", ("AM", "full")),
        ("ord;apelido_al;nome_al;dt_nasc;turno;autorizado", ("manhã", "tarde")),
    ))
    adults = grown_ups(rng, group, len(group))
    rows = [f'{at};"{one.family}";{one.given};{rng.randrange(1, 29):02}.{rng.randrange(1, 13):02}.2020;'
            f'{rng.choice(care)};"{adult.given} {adult.family}"'
            for at, (one, adult) in enumerate(zip(group, adults, strict=True), 1)]
    return listed(["\ufeff" + head, *rows], wanted(group, ";{given};"), (*(one.given for one in adults), *care))


@shape()
def goes_by(rng: random.Random, group: Sequence[Person]) -> Made:
    """A list of legal names, with what some children are called instead."""
    called = grown_ups(rng, group, len(group))
    forms = rng.choice((
        ("(goes by {0})", "- prefers {0}", "likes to be called {0}"),
        ("(genannt {0})", "– Rufname {0}", "wird {0} gerufen"),
        ("(on l'appelle {0})", "- dit {0}", "prénom d'usage : {0}"),
        ("(le dicen {0})", "- prefiere {0}", "conocido como {0}"),
        ("(detto {0})", "- chiamata {0}", "si fa chiamare {0}"),
        ("(chamam-lhe {0})", "- prefere {0}", "tratam-no por {0}"),
    ))
    lines, children = [], []
    for one, other in zip(group, called, strict=True):
        has = rng.random() < 0.4
        lines.append(f"{one.given} {one.family}" + (f" {rng.choice(forms).format(other.given)}" if has else ""))
        children.append(Wanted((other.given if has else one.given,), f"{one.given} {one.family}"))
    return listed(lines, children, (" ".join(forms).replace("{0}", ""),))


@shape()
def round_the_tables(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who sits where: a table by its colour and what is near it, and its children on the same line."""
    form, colours, near, last = rng.choice((
        ("{0} table ({1}): ", ("Red", "Yellow", "Green", "Blue"), ("by the window", "near the sink", "rug"), "&"),
        ("Tisch {0} ({1}): ", ("rot", "gelb", "grün", "blau"), ("am Fenster", "Waschbecken", "Teppich"), "u."),
        ("Table {0}, {1} : ", ("rouge", "jaune", "verte", "bleue"), ("côté fenêtre", "près du lavabo", "tapis"), "et"),
        ("Mesa {0} - {1}: ", ("roja", "amarilla", "verde", "azul"), ("ventana", "lavabo", "alfombra"), "y"),
        ("Tavolo {0} ({1}) - ", ("rosso", "giallo", "verde", "blu"), ("finestra", "lavandino", "tappeto"), "e"),
        ("Mesa {0} ({1}): ", ("vermelha", "amarela", "verde", "azul"), ("janela", "pia", "tapete"), "e"),
    ))
    parts = [some for some in in_groups(group, 4) if len(some) > 1]
    seated = [one for some in parts for one in some]
    lines = [form.format(colours[at], rng.choice(near)) + told([one.given for one in some], last)
             for at, some in enumerate(parts)]
    return listed(lines, wanted(seated), (*colours, *near, "table Tisch Mesa Tavolo"))


@shape()
def capitals_with_gaps(rng: random.Random, group: Sequence[Person]) -> Made:
    """An office's list in capitals without accents; numbers skip those who left; a state at the end of some lines."""
    title, states = rng.choice((
        ("GRUPO 3A TURNO MATUTINO", ("ALTA 01/09", "REPITE")), ("CLASS LIST AS OF 09/08", ("ENR 09/02", "TRANSFER IN")),
        ("CLASSE PS-A EFFECTIF", ("INSCRIT", "DEROGATION")), ("GRUPPE 2 STAND 01.09.", ("NEU", "I-PLATZ")),
        ("SEZIONE B ELENCO", ("NUOVO", "ANTICIPO")), ("TURMA 3 MANHA", ("MATRICULADO", "TRANSF")),
    ))
    lines, number = [title], 0
    for one in group:
        number += rng.choice((1, 1, 1, 2, 3))
        state = f"   {rng.choice(states)}" if rng.random() < 0.25 else ""
        lines.append(f"{number:03} {plain(one.family).upper()}, {plain(one.given).upper()}{state}")
    children = [Wanted((one.given, plain(one.given)), f"{plain(one.family)}, {plain(one.given)}") for one in group]
    return listed(lines, children, (title, *states))
