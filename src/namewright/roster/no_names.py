"""Words that nobody is called, where one would be practised: ``Familie``, ``Student``, ``Birthday``: it is asked about.

These are words of lists, classes, calendars, mails and files in the languages of the program. A word that is known as a
given name is none of them; with ``Name:`` before it any is a child. As in ``further_names``, this is a last look.
"""

from __future__ import annotations

from functools import cache

from namewright.roster.beside import Reading
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.heading_words import (
    ARTICLES,
    CHILDREN,
    GREETINGS,
    JOBS,
    LISTS,
    MAIL_LABELS,
    MAYBE,
    NO_SCHOOL,
    NOBODY,
    PHONES,
    PLACES,
)
from namewright.roster.known import is_given
from namewright.roster.vocabulary import ATTENDANCE, OTHER_PEOPLE, TITLES, fold, word_set

_SHORTEST = 3  # letters: Al, Di and Lo are children
_FAMILY = word_set("""
    family, families, familie, familien, famille, familles, familia, familias, famiglia, famiglie""")
_WEEKS = word_set("week, semana, semaine, sem, woche, settimana, kw")
_FURTHER = word_set("""
    birthday, geburtstag, anniversaire, cumpleanos, cumple, compleanno, aniversario, awarded, certificate, urkunde,
    diplome, diploma, with, begin, version, seite, pagina, img, dsc, file, datei, fichier, archivo, arquivo, photo,
    foto, scan, subject, betreff, objet, asunto, oggetto, assunto, today, heute, oggi, hoje, hoy, aujourd'hui,
    presents, absents, presentes, ausentes, presenti, assenti, girl, boy, madchen, junge, fille, garcon, chica, menina,
    menino, swimming, schwimmen, schwimmbad, piscine, piscina, natation, natacion, natacao, nuoto, passworter,
    passwords, contrasenas, senhas, tablets, secret, jobs, dienste, incarichi, encargados, metiers, ajudantes, tarefas,
    tareas""")


@cache
def _words() -> frozenset[str]:
    """Return the words; those of headings and of health are judged where they stand, for rare names are among them."""
    every = frozenset().union(ARTICLES, ATTENDANCE, CHILDREN, CHILD_WORDS, DAY_WORDS, GREETINGS, JOBS, MAIL_LABELS,
                              MAYBE, OTHER_PEOPLE, PHONES, PLACES, TITLES, _FAMILY, _FURTHER)
    return frozenset(word for word in every if len(word) >= _SHORTEST) - LISTS


def says_nobody(text: str) -> bool:
    """Say whether a word for nobody stands where others have names: ``none :(``."""
    return fold(text).strip(" !.,:;()-–—") in NOBODY


def is_no_name(word: str) -> bool:
    """Say whether a word is one of lists and nobody's given name."""
    return fold(word) in _words() and not is_given(word)


def opens_a_line(word: str) -> bool:
    """Say whether a word of lists may open each line of one before a child's name; a family's name is no child's."""
    return is_no_name(word) and fold(word) not in _FAMILY


def is_nobody(reading: Reading) -> bool:
    """Say whether the given name, or the only one, opens with a word of lists, or a whole family is meant."""
    whole = any(fold(word) in _FAMILY or word == "The" for word in reading.family.split())
    return whole or is_no_name((reading.given or reading.family).partition(" ")[0])


def is_no_school(reading: Reading) -> bool:
    """Say whether the only name is a word for a day or a week off, or for a week itself: ``Ferien``, ``Woche 3``."""
    alone = "" if reading.given and reading.family else fold(reading.given or reading.family)
    return alone in NO_SCHOOL | _WEEKS and not is_given(alone)
