"""Words for what a child does or is met with in a day book: comes, goes, is fetched, sleeps, eats. Data only.

Folded: small letters, no accents; openings, since most have endings of their own for girls and boys.
"""

from __future__ import annotations

EVENTS = (
    "arriv", "check", "signed", "dropped", "picked", "collected", "left", "went", "came", "return", "nap", "slept",
    "asleep", "woke", "awake", "ate", "drank", "lunch", "snack", "diaper", "nappy", "potty", "toilet", "bottle",
    "fever", "lleg", "entr", "sali", "recogid", "se fue", "vino", "durmi", "dormid", "despert", "comi", "bebi",
    "merend", "panal", "bano", "biberon", "fiebre", "part", "recuper", "repart", "sort", "venu", "a dormi",
    "endorm", "reveill", "a mange", "a bien mange", "a bu", "couche", "gout", "angekommen", "gekommen", "gebracht",
    "abgeholt", "gegangen", "geschlaf", "aufgewacht", "gegessen", "getrunken", "gewickelt", "toilett", "schlaf",
    "wach", "fieber", "kommt", "geht", "ankunft", "abholung", "ritirat", "usci", "dormi", "ha dormito",
    "ha mangiato", "svegli", "mangi", "bevut", "andat", "venut", "cheg", "saiu", "saida", "busc", "acord", "come",
    "bebeu", "foi", "fralda", "febre", "levad", "lanch",
)
"""How a word of such an event begins."""

IN_OR_OUT = frozenset((
    "in", "out", "here", "off", "home", "da", "weg", "hier", "los", "dentro", "fuera", "aqui", "ici", "la", "fuori",
    "qui", "fora", "casa",
))
"""Whole words that say as much behind a time and a name."""

EVENT_TITLES = frozenset((
    "event", "events", "entry", "activity", "action", "log", "what", "evento", "eventos", "suceso", "movimiento",
    "accion", "actividad", "evenement", "evenements", "mouvement", "activite", "ereignis", "ereignisse", "vorgang",
    "eintrag", "aktivitat", "avvenimento", "movimento", "azione", "attivita", "ocorrencia", "acontecimento", "acao",
    "atividade",
))
"""Titles of a column that tells them."""
