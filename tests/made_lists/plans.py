"""Day plans, notes and lists with headings, made of invented words and children, and what became of each child.

Some activities, events and languages are KEPT: the reader's words were written without them.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field

from made_lists.people import INVENTED, Person, people
from namewright.roster.children import Outcome, RosterError
from namewright.roster.known import lean
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold


@dataclass(frozen=True, slots=True)
class Tongue:
    """The words of one language: activities, those kept apart, events of a school day, small words, endings."""

    activities: tuple[str, ...]
    kept: tuple[str, ...]
    events: tuple[str, ...]
    kept_events: tuple[str, ...]
    labels: tuple[str, ...]
    joined: tuple[str, ...]
    and_word: str
    closings: tuple[str, ...]
    levels: tuple[str, ...]
    title: str
    places: tuple[str, ...]


TONGUES = {
    "en": Tongue(
        ("Reading", "Small group", "Math", "Circle time", "Snack", "Library", "Speech", "Story time"),
        ("Phonics", "Handwriting", "Science corner", "Calendar", "Puppet theater", "Yoga"),
        ("Early dismissal", "Field trip", "Picture day", "No school", "Assembly", "Fire drill"),
        ("Book fair", "Late start", "Crazy hair day", "Pajama Day", "Hearing test", "Half day"),
        ("Aftercare", "Helpers", "Speech", "OT", "Library books", "Bus"), ("with", "for"), "and",
        ("Thank you!", "Thanks,", "See you Thursday!", "Best,"), ("HIGH", "MIDDLE", "LOW"), "Sub plans",
        ("en_US", "en_GB", "en_IN", INVENTED)),
    "es": Tongue(
        ("Lectura", "Grupo pequeño", "Matemáticas", "Asamblea", "Merienda", "Biblioteca", "Logopedia", "Cuento"),
        ("Fonética", "Caligrafía", "Rincón de ciencias", "Calendario", "Títeres", "Psicomotricidad"),
        ("Salida temprana", "Excursión", "Día de fotos", "No hay clases", "Simulacro", "Fiesta"),
        ("Feria del libro", "Entrada tarde", "Día del pelo loco", "Visita al museo", "Revisión dental", "Medio día"),
        ("Guardería", "Ayudantes", "Logopedia", "Biblioteca", "Autobús"), ("con", "para"), "y",
        ("¡Gracias!", "Saludos,", "Un abrazo,"), ("ALTO", "MEDIO", "BAJO"), "Horario",
        ("es_ES", "es_MX", "es_AR", INVENTED)),
    "fr": Tongue(
        ("Lecture", "Petit groupe", "Maths", "Regroupement", "Goûter", "Bibliothèque", "Orthophonie", "Histoire"),
        ("Phonologie", "Graphisme", "Coin sciences", "Calendrier", "Marionnettes", "Motricité"),
        ("Sortie anticipée", "Sortie scolaire", "Photo de classe", "Pas d’école", "Exercice incendie", "Fête"),
        ("Foire du livre", "Entrée tardive", "Visite du musée", "Kermesse", "Visite médicale", "Pique-nique"),
        ("Garderie", "Responsables", "Orthophonie", "Cantine", "Bus"), ("avec", "pour"), "et",
        ("Merci !", "Cordialement,", "À bientôt,"), ("FORTS", "MOYENS", "FAIBLES"), "Emploi du temps",
        ("fr_FR", "fr_CA", "fr_BE", INVENTED)),
    "de": Tongue(
        ("Lesen", "Kleingruppe", "Mathe", "Morgenkreis", "Frühstück", "Bücherei", "Logopädie", "Vorlesen"),
        ("Schwungübungen", "Schreiben", "Forscherecke", "Kalender", "Kasperltheater", "Turnen"),
        ("Früher Schluss", "Ausflug", "Fototag", "Schulfrei", "Probealarm", "Fest"),
        ("Büchermarkt", "Später Beginn", "Waldtag", "Museumsbesuch", "Zahnärztin kommt", "Spielzeugtag"),
        ("Hort", "Helfer", "Logopädie", "Mensa", "Bus"), ("mit", "für"), "und",
        ("Vielen Dank!", "Liebe Grüße,", "Danke,"), ("STARK", "MITTEL", "SCHWACH"), "Tagesablauf",
        ("de_DE", "de_AT", "sv_SE", INVENTED)),
    "it": Tongue(
        ("Lettura", "Piccolo gruppo", "Matematica", "Cerchio", "Merenda", "Biblioteca", "Logopedia", "Racconto"),
        ("Pregrafismo", "Scrittura", "Angolo scienze", "Calendario", "Burattini", "Psicomotricità"),
        ("Uscita anticipata", "Gita", "Foto di classe", "Niente scuola", "Prova antincendio", "Festa"),
        ("Fiera del libro", "Entrata posticipata", "Visita al museo", "Recita", "Visita medica", "Picnic"),
        ("Doposcuola", "Aiutanti", "Logopedia", "Mensa", "Pulmino"), ("con", "per"), "e",
        ("Grazie!", "Saluti,", "A presto,"), ("ALTO", "MEDIO", "BASSO"), "Orario",
        ("it_IT", "hr_HR", INVENTED)),
    "pt": Tongue(
        ("Leitura", "Pequeno grupo", "Matemática", "Roda", "Lanche", "Biblioteca", "Terapia da fala", "História"),
        ("Consciência fonológica", "Escrita", "Canto das ciências", "Calendário", "Fantoches", "Expressão motora"),
        ("Saída antecipada", "Visita de estudo", "Fotografia de turma", "Não há aulas", "Simulacro", "Festa"),
        ("Feira do livro", "Entrada tardia", "Ida ao museu", "Dia do pijama", "Rastreio", "Piquenique"),
        ("Prolongamento", "Ajudantes", "Terapia da fala", "Cantina", "Carrinha"), ("com", "para"), "e",
        ("Obrigada!", "Cumprimentos,", "Até breve,"), ("ALTO", "MÉDIO", "BAIXO"), "Horário",
        ("pt_PT", "pt_BR", INVENTED)),
}
KEPT_TONGUES = ("it", "pt")
_SIGNS = (": ", " – ", " - ", " : ", " → ")
_NOW_AND_THEN, _SELDOM, _HALF, _OFTEN = 0.2, 0.3, 0.5, 0.7
_LABELLED = 4


@dataclass(frozen=True, slots=True)
class Plan:
    """A made text: its lines, and the children who stand on them, on a line of their own or only inside one."""

    lines: tuple[str, ...]
    children: tuple[Person, ...]
    whole: bool


@dataclass(slots=True)
class _Writer:
    """Writes the lines of one plan, drawing children from ``left`` as it goes."""

    rng: random.Random
    tongue: Tongue
    words: str
    left: list[Person]
    whole: bool
    named: list[Person] = field(default_factory=list)

    def take(self, count: int) -> list[str]:
        """Return how some more children are written, and keep who they are."""
        taken, self.left = self.left[:count], self.left[count:]
        self.named += taken
        return [f"{one.given} {one.family}" if self.whole else one.given for one in taken]

    def names(self, count: int) -> str:
        """Return some more children in a row, by commas, with a word before the last or without."""
        written = self.take(count)
        last = self.rng.choice((", ", f" {self.tongue.and_word} ", " & "))
        return last.join((", ".join(written[:-1]), written[-1])) if len(written) > 1 else "".join(written)

    def activity(self) -> str:
        """Return an activity; one of five is an invented word, as no list of words can be whole."""
        if self.words == "invented" or self.rng.random() < _NOW_AND_THEN:
            return people(self.rng, INVENTED, 1)[0].given
        return self.rng.choice(self.tongue.kept if self.words == "kept" else self.tongue.activities)

    def event(self) -> str:
        return self.rng.choice(self.tongue.kept_events if self.words == "kept" else self.tongue.events)

    def inside(self) -> str:
        """Return a line with children behind or before other words."""
        count = self.rng.randrange(1, 5)
        kind = self.rng.randrange(6)
        if kind in (0, 1):
            return f"{self.activity()} {self.rng.choice(self.tongue.joined)} {self.names(count)}"
        if kind in (2, 3):
            return f"{self.activity()}{self.rng.choice(_SIGNS)}{self.names(count)}"
        if kind == _LABELLED:
            return f"{self.rng.choice(self.tongue.labels)}{self.rng.choice(_SIGNS[:4])}{self.names(count)}"
        return f"{self.activity()} ({self.names(count)})"


def timed(rng: random.Random, count: int) -> list[str]:
    """Return the times of a day, written in one way."""
    mark = rng.choice(("{}:{:02}", "{}.{:02}", "{}h{:02}", "{}:{:02} Uhr", "{}:{:02} –", "{}:{:02}-"))
    times = [(8 + at * 25 // 60, at * 25 % 60) for at in range(count)]
    if mark.endswith("-"):
        return [f"{hour}:{minute:02}-{hour}:{minute + 5:02}" for hour, minute in times]
    return [mark.format(hour, minute) for hour, minute in times]


def day_plan(rng: random.Random, tongue: Tongue, *, words: str, among: int) -> Plan:
    """Return a day with times, some lines naming children; ``among`` children have lines of their own above it."""
    writer = _writer(rng, tongue, words=words)
    own = writer.take(among)
    count = rng.randrange(4, 8)
    said = [writer.inside() if rng.random() < _HALF else writer.activity() for _ in range(count)]
    lines = [f"{time} {words}" for time, words in zip(timed(rng, count), said, strict=True)]
    return _plan(writer, [*own, *([""] if own else []), *([tongue.title] if rng.random() < _SELDOM else []), *lines])


def note(rng: random.Random, tongue: Tongue, *, words: str) -> Plan:
    """Return a list of children with lines between them that name others, and events of the day."""
    writer = _writer(rng, tongue, words=words)
    lines = writer.take(rng.randrange(4, 8))
    for more in [writer.inside() for _ in range(rng.randrange(1, 3))] + [writer.event()]:
        lines.insert(rng.randrange(len(lines) + 1), more)
    return _plan(writer, lines)


def closed(rng: random.Random, tongue: Tongue, *, words: str) -> Plan:
    """Return a list with thanks inside it, children above and below."""
    writer = _writer(rng, tongue, words=words)
    above = writer.take(rng.randrange(3, 7))
    return _plan(writer, [*above, rng.choice(tongue.closings), *writer.take(rng.randrange(1, 4))])


def levelled(rng: random.Random, tongue: Tongue, *, words: str) -> Plan:
    """Return three groups under headings in capitals."""
    writer = _writer(rng, tongue, words=words)
    lines: list[str] = []
    for level in tongue.levels:
        lines += [level, *writer.take(rng.randrange(2, 5)), *([""] if words == "kept" else [])]
    return _plan(writer, lines)


def _writer(rng: random.Random, tongue: Tongue, *, words: str) -> _Writer:
    drawn = [one for one in people(rng, rng.choice(tongue.places), 60)
             if " " not in one.family and lean(one.family) <= 0]  # else where the family begins is a guess
    return _Writer(rng, tongue, words, drawn, rng.random() < _OFTEN)


def _plan(writer: _Writer, lines: Sequence[str]) -> Plan:
    return Plan(tuple(lines), tuple(writer.named), writer.whole)


def fates(plan: Plan) -> Counter[str]:
    """Count what became of the children of a plan, and how many were made that are none (``extra``).

    ``right``: made under the right name; ``asked``: on a line left out, with a reason; ``lost``: neither.
    """
    try:
        lines = read_roster("\n".join(plan.lines)).lines
    except RosterError as error:
        lines = error.lines
        if not lines:
            return Counter(children=len(plan.children), asked=len(plan.children))
    made = Counter((fold(line.child.given), fold(line.child.family)) for line in lines
                   if line.outcome is Outcome.CHILD and line.child and line.child.line == line.line)
    left = [fold(line.text) for line in lines if line.outcome is Outcome.LEFT_OUT and line.notes]
    found = Counter(children=len(plan.children), lines=len(plan.lines), questions=len(left))
    for one in plan.children:
        key = (fold(one.given), fold(one.family) if plan.whole else "")
        if made[key]:
            made[key] -= 1
            found["right"] += 1
        elif any(fold(one.given) in text for text in left):
            found["asked"] += 1
        else:
            found["lost"] += 1
    found["extra"] = sum(made.values())
    return found
