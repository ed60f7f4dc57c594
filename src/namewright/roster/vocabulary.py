"""The word lists the roster reader goes by, in English and Spanish. Data only, and one way to look up.

All lists are common practice, written down by hand and meant to be modest: a word that is missing costs
a note on a line, never a child. Keys are folded: small letters, no accents, single spaces.
"""

from __future__ import annotations

from enum import StrEnum

import unicodedata2

from namewright.settings import Hand, NamePart, Support


class Role(StrEnum):
    """What a column holds."""

    FULL = "full name"
    GIVEN = "given name"
    MIDDLE = "middle name"
    FAMILY = "family name"
    GOES_BY = "goes by"
    PRACTISE = "practise"
    SUPPORT = "support"
    HAND = "hand"
    LINE_HEIGHT = "line height"
    LETTERS = "letters"
    BEATS = "beats"
    OTHER = "other"


NAME_ROLES = frozenset({Role.FULL, Role.GIVEN, Role.FAMILY})


def fold(text: str) -> str:
    """Return ``text`` for comparing: small letters, no marks, single spaces, no closing dot or colon."""
    if not text.isascii():
        decomposed = unicodedata2.normalize("NFD", text.casefold())
        text = "".join(char for char in decomposed if unicodedata2.category(char) != "Mn")
    return " ".join(text.lower().replace("_", " ").split()).strip(".:* ")


def word_set(text: str) -> frozenset[str]:
    """Return the words or phrases of a list with commas, with single spaces."""
    return frozenset(" ".join(word.split()) for word in text.split(",") if word.strip())


_ROLE_WORDS = {
    Role.FULL: """
        name, names, full name, full names, student, students, student name, student names, child,
        children, child name, child's name, name of student, pupil, pupils, learner, learners, nombre
        completo, alumno, alumna, alumnos, alumnas, alumno/a, alumnos/as, estudiante, estudiantes, nino/a,
        nina/o, ninos, ninas, ninos/as, nom, nome, nombre y apellido, nombre y apellidos, nombres y apellidos,
        apellidos y nombre, apellidos y nombres, last name first name, first and last name, name of child, roster""",
    Role.GIVEN: """
        first name, first names, firstname, first, fname, given name, given names, given, forename, forenames,
        student first name, nombre, nombres, primer nombre, nombre de pila, prenom, vorname,
        voornaam""",
    Role.MIDDLE: """
        middle name, middle names, middle, middle initial, mi, m.i, second name, segundo nombre, otros
        nombres""",
    Role.FAMILY: """
        last name, last names, lastname, last, lname, family name, family names, family, surname, surnames,
        student last name, apellido, apellidos, primer apellido, segundo apellido, apellido paterno,
        apellido materno, apellido(s), nom de famille, nachname, familienname, cognome, sobrenome, achternaam,
        tussenvoegsel""",
    Role.GOES_BY: """
        goes by, nickname, nick name, preferred name, preferred, preferred first name, known as, called,
        usual name, apodo, sobrenombre, nombre preferido, le dicen, se le llama, conocido como""",
    Role.PRACTISE: """
        practise, practice, practise name, practice name, name to practise, name to practice, name to
        write, practicar, nombre a practicar, nombre para practicar, practica""",
    Role.SUPPORT: """
        support, supports, support level, level of support, apoyo, apoyos, nivel de apoyo""",
    Role.HAND: """
        hand, writing hand, handedness, handed, dominant hand, l/r, r/l, left/right, right/left, left or
        right, right or left, left or right handed, right or left handed, mano, mano dominante, lateralidad""",
    Role.LINE_HEIGHT: """
        line height, line size, row height, lines, ruling, altura, altura de linea, alto de linea,
        altura del renglon, renglon, altura de renglon""",
    Role.LETTERS: """
        letters, letter forms, letterforms, letras, formas de las letras""",
    Role.BEATS: """
        beats, syllables, claps, silabas, palmadas""",
    Role.OTHER: """
        id, student id, student number, number, no, num, nr, #, n.o, n.º, nº, n°, email, e-mail, email
        address, phone, phone number, telephone, mobile, cell, birthday, birth date, birthdate, date of
        birth, dob, d.o.b, date, age, grade, grade level, class, room, homeroom, teacher, section,
        period, group, table, gender, sex, pronouns, notes, note, comments, comment, parent, parents,
        guardian, parent name, address, allergies, bus, language, home language, iep, ell, level,
        status, title, suffix, seat, correo, correo electronico, telefono, fecha de nacimiento,
        nacimiento, cumpleanos, fecha, edad, grado, clase, grupo, aula, salon, seccion, maestra,
        maestro, profesora, profesor, sexo, genero, notas, observaciones, matricula, numero, direccion,
        tutor, madre, padre, alergias, idioma, curp, rut, dni""",
}
GOES_BY_WORDS = ("goes by", "be called", "known as", "nickname", "apodo", "le dicen", "preferred name")
"""A longer header that holds one of these names the column of what a child goes by."""

OTHER_PEOPLE = word_set("""
    parent, parents, mother, mom, mum, father, dad, guardian, guardians, family's, sibling, brother,
    sister, emergency, contact, teacher, aide, doctor, school, madre, mama, padre, padres, papa, tutor, tutora,
    hermano, hermana, emergencia, contacto, maestra, maestro, escuela""")
"""A header that holds one of these is about somebody else, even where it says “first name” too."""

ABOUT_THE_CHILD = word_set("""
    student, student's, students, child, child's, childs, children's, pupil, pupil's, learner, learner's, legal,
    alumno, alumna, alumno/a, estudiante, nino, nina, nino/a, menor, del, de, la, el""")
"""Words that a header may carry besides what the column holds: ``Child's legal first name``."""

NOT_NAMES = word_set("""
    date, birth, birthday, dob, phone, email, e-mail, mail, address, number, id, grade, gender, sex, age, allergy,
    allergies, medical, notes, comments, language, fecha, nacimiento, telefono, correo, direccion, edad,
    grado, notas, bus""")
"""A longer header that holds one of these is of a column that is left out."""

SAYS_NAME = word_set("""
    name, names, firstname, lastname, fname, lname, surname, forename, nombre, nombres, apellido, apellidos,
    student, students, vorname, nachname, prenom, cognome, sobrenome, voornaam, achternaam""")
"""A header cell with one of these makes a header row by itself: no child is called so."""

MAYBE_WHOLE = word_set("nombre, nombres, nome")
"""Headers of a given name that stand over whole names where no column has family names."""

HEADER_WORDS = {word: role for role, words in _ROLE_WORDS.items() for word in word_set(words)}
"""Folded header text to what the column holds."""

SOLO_HEADERS = word_set("""
    name, names, full name, first name, first names, given name, given names, last name, student,
    students, student name, student names, pupils, children, learners, class list, roster, nombre,
    nombres, nombre completo, alumnos, alumnas, estudiantes, lista, lista de alumnos, ninos, nombre y
    apellido, nombre y apellidos, first last, first name last name, first and last name, name list, my
    class""")
"""A whole line that says what the lines below it are."""

HEADING_WORDS = word_set("""
    class, room, teacher, grade, period, group, table, section, homeroom, school, kindergarten, year,
    week, date, total, clase, aula, salon, grado, grupo, maestra, maestro, profesora, profesor, escuela,
    fecha, curso, seccion, morning, afternoon, am, pm, boys, girls, kids, ninos, ninas, prek, pre-k, tk,
    tk/k, kinder, preescolar, combo, session""")
"""First words of a line that is about the class, if what follows is a number, a letter, a
title or nothing."""

PLACES = word_set("room, table, school, elementary, preschool, kindergarten, session, classroom, academy")
"""Last words of a line that names a class or a school: ``Rainbow Room``."""

SEASONS = word_set("spring, summer, fall, autumn, winter, primavera, verano, otono, invierno")

PRINTED = word_set("printed, updated, confidential, roster, revised, impreso, actualizado, lista, attendance")
"""First words of a line that a program or a teacher prints above or below a list."""

TITLES = word_set("""
    mr, mrs, ms, miss, mx, dr, prof, sr, sra, srta, senor, senora, senorita, maestra, maestro,
    profesora, profesor, teacher, coach, principal, director, directora""")

DOUBLE_STARTERS = word_set("""
    ana, anna, anne, ann, maria, mary, marie, juan, jose, jean, luis, carlos, miguel, rosa, luz, jesus,
    john, billy, bobby, sarah, emma, lily, marco, pedro, victor, angel, eva, carmen, laura, martha,
    martin, francisco, gian, hans, karl""")
DOUBLE_SECONDS = word_set("""
    maria, jose, luis, carlos, kate, ann, anna, anne, lou, jane, beth, ellen, paul, luc, pierre, claire,
    isabel, elena, teresa, sofia, fernanda, belen, antonio, manuel, pablo, angel, miguel, marie, jo,
    joe, bob, ray, rose, louise, grace, lynn, pilar, laura, lucia, victoria, cristina, karen, paula,
    julia, sophie, christine, claude, jacques, francois, baptiste, marc, philippe, david, pedro, ramon,
    ignacio, javier, esteban, andres, alberto, eduardo, enrique, fernando, alejandro, daniel, guadalupe,
    ines, jesus, rafael, camila, valentina""")
"""A starter and a second make one double given name in free text: Ana María, Mary Kate, Juan Carlos."""

DEVOTIONS = word_set("""
    carmen, pilar, rosario, angeles, jesus, mar, luz, rocio, socorro, consuelo, dolores, sol, cielo,
    fatima, guadalupe, lourdes, mercedes, remedios, nieves, dios, milagros, refugio, paz""")
"""What may follow ``de``, ``del``, ``de los`` … inside a given name: María del Carmen, Juan de Dios."""

SPANISH_FAMILIES = word_set("""
    garcia, lopez, martinez, gonzalez, hernandez, rodriguez, perez, sanchez, ramirez, torres, flores,
    rivera, gomez, diaz, cruz, reyes, morales, ortiz, gutierrez, chavez, ramos, ruiz, mendoza, alvarez,
    jimenez, castillo, vasquez, romero, moreno, herrera, medina, aguilar, vargas, castro, guzman,
    mendez, munoz, salazar, soto, vega, delgado, rojas, guerrero, contreras, silva, santos, pena, rios,
    navarro, molina, dominguez, estrada, sandoval, maldonado, campos, fuentes, cabrera, espinoza,
    ibarra, leon, luna, solis, cortez, lara, velasquez, nunez, acosta, pacheco, serrano, mejia, orozco,
    salinas, trujillo, valencia, zamora, barrera""")
"""Family names common enough in Spanish that a second word found here opens two family names."""

SUFFIXES = word_set("jr, sr, ii, iii, iv")

GOES_BY_OPENINGS = word_set("""
    goes by, go by, nickname, nick, aka, a.k.a, known as, called, prefers, le dicen, se le dice, apodo,
    conocido como, conocida como""")
"""What may stand before the name a child goes by: ``(goes by Will)``."""

MONTHS = word_set("""
    january, jan, february, feb, march, mar, april, apr, may, june, jun, july, jul, august, aug, september, sep,
    sept, october, oct, november, nov, december, dec, enero, ene, febrero, marzo, abril, abr, mayo, junio, julio,
    agosto, ago, septiembre, setiembre, octubre, noviembre, diciembre, dic""")

NUMBER_LABELS = word_set("""
    dob, d.o.b, born, birthday, bday, birthdate, date of birth, b, age, aged, tel, telephone, phone, ph, cell, mobile,
    id, student id, ext, room, rm, grade, gr, no, bus, seat, nac, nacido, nacida, fecha de nacimiento, cumple,
    cumpleanos, edad, salon, grado, matricula""")
"""Words that belong to the number behind them: ``DOB 1/2/2021``."""

NUMBER_UNITS = word_set("""
    years old, year old, years, year, yrs, yr, yo, y/o, months, month, mos, mo, anos, ano, meses, mes""")
"""Words that belong to the number before them: ``4 yrs``."""

REMARKS = word_set("""
    new, iep, ell, esl, eal, sen, send, twin, absent, moved, am, pm, nuevo, nueva, gemela, gemelo,
    ausente, he, she, they, him, her, them, temp, visitor, inclusion, speech, ot, k, pk, tk, prek,
    pre-k, kinder, girl, boy, male, female, m, f, monday, tuesday, wednesday, thursday, friday,
    tue, tues, wed, thu, thurs, fri, lunes, martes, miercoles, jueves, viernes, bus, allergy,
    allergies, glasses, sibling, brother, sister, hermano, hermana, withdrawn, transferred, student, spanish,
    english, mandarin, arabic, french, vietnamese, bilingual, espanol, ingles, yes, alergia, alergias""")
"""Words beside a name (in brackets, behind a dash or in a column) that are about the child and are not a name."""

CODES = REMARKS | word_set("nino, nina, el, ella, si, h")
"""What fills a column about the children; Nina and Ella are names where they stand alone."""

NOTHING = word_set("""
    -, –, —, n/a, na, none, same, no, x, ninguno, ninguna, igual""")

YES = word_set("yes, y, x, ✓, ✔, true, si, s")
NO = word_set("no, n, false")

HANDS = {
    word: hand
    for hand, words in {
        Hand.RIGHT: """
        right, r, right hand, right-hand, right handed, right-handed, derecha, derecho, diestra,
        diestro, d, rh""",
        Hand.LEFT: """
        left, l, left hand, left-hand, left handed, left-handed, lefty, izquierda, izquierdo, zurda,
        zurdo, i, z, lh""",
    }.items()
    for word in word_set(words)
}

SUPPORTS = {
    word: support
    for support, words in {
        Support.FULL: """
        full, full support, completo, completa, total, apoyo completo, apoyo total""",
        Support.PARTIAL: "partial, partial support, parcial, apoyo parcial",
        Support.LIGHT: """
        light, light support, ligero, ligera, leve, apoyo ligero, apoyo leve""",
        Support.INDEPENDENT: "independent, independiente, independently, sin apoyo",
    }.items()
    for word in word_set(words)
}

PARTS = {
    word: part
    for part, words in {
        NamePart.GIVEN: """
        given, given name, first, first name, nombre, nombre de pila""",
        NamePart.FAMILY: """
        family, family name, last, last name, surname, apellido, apellidos""",
        NamePart.BOTH: """
        both, both names, full, full name, first and last, ambos, completo, nombre completo, nombre y
        apellido, nombre y apellidos""",
    }.items()
    for word in word_set(words)
}
