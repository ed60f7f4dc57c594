"""Words that several parts of the reader go by (adults, days, groups, remarks, settings), and how words are compared.

All lists are common practice, written down by hand and meant to be modest: a word that is missing costs
a note on a line, never a child. Keys are folded: small letters, no accents, single spaces.
"""

from __future__ import annotations

from enum import StrEnum

import unicodedata2

from namewright.settings import Hand, NamePart, Support
from namewright.store import keeps_names


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
    LANGUAGE = "language"
    OTHER = "other"


NAME_ROLES = frozenset({Role.FULL, Role.GIVEN, Role.FAMILY})


@keeps_names(4096)
def fold(text: str) -> str:
    """Return ``text`` for comparing: small letters, no marks, single spaces, no closing dot or colon."""
    if not text.isascii():
        decomposed = unicodedata2.normalize("NFD", text.casefold())
        text = "".join(char for char in decomposed if unicodedata2.category(char) != "Mn")
    return " ".join(text.lower().replace("_", " ").split()).strip(".:* ")


def word_set(text: str) -> frozenset[str]:
    """Return the words or phrases of a list with commas, with single spaces."""
    return frozenset(" ".join(word.split()) for word in text.split(",") if word.strip())


TEACHERS = word_set("""
    teacher, aide, maestra, maestro, enseignant, enseignante, lehrer, lehrerin, lehrkraft, insegnante, professor,
    professora, atsem, erzieherin, erzieher, educadora, educador, educatrice, auxiliar, docente, educateur, seno,
    padagogin, teachers, aides, maestras, maestros, enseignants, enseignantes, lehrerinnen, lehrkrafte, insegnanti,
    maestre, professores, professoras, erzieherinnen, educadoras, educadores, educatrici, docentes, docenti,
    educateurs, adults, adultes, adultos, adulti, erwachsene""")
"""Who teaches, beside the forms of address in `TITLES`."""

OTHER_PEOPLE = TEACHERS | word_set("""
    parent, parents, mother, mom, mum, father, dad, guardian, guardians, family's, sibling, brother, sister,
    siblings, brothers, sisters, hermanos, hermanas, freres, soeurs, fratelli, sorelle, schwestern, irmaos, irmas,
    emergency, contact, doctor, school, grandma, grandpa, grandmother, grandfather, nanny, babysitter, aunt, uncle,
    stepmother, stepfather, stepmom, stepdad, oma, opa, grossmutter, grossvater, tante, onkel, abuela, abuelo,
    nonna, nonno, mamie, nounou, grand-mere, grand-pere, madre, mama, padre, padres, papa, tutor, tutora, hermano,
    hermana, emergencia, contacto, escuela, mere, maman, pere, tuteur, tutrice, responsable, frere, soeur, urgence,
    ecole, mutter, vater, eltern, elternteil, erziehungsberechtigte, erziehungsberechtigter,
    erziehungsberechtigten, vormund, geschwister, bruder, schwester, notfall, notfallkontakt, schule, mamma,
    genitore, genitori, babbo, tutore, fratello, sorella, scuola, mae, pai, pais, encarregado, encarregada,
    responsavel, irmao, irma, escola, grown-up, grown-ups, grownup, grownups, carer, carers,
    caregiver, caregivers, payer, ansprechpartner, ansprechpartnerin, ansprechperson, kontaktperson, sorgeberechtigte,
    sorgeberechtigter, abholberechtigte, abholberechtigter, apoderado, apoderada, acudiente, representante, delegato,
    delegata""")
"""A header that holds one of these is about somebody else, even where it says “first name” too."""

LEADERS = word_set("""
    driver, bus driver, substitute, supervisor, chaperone, instructor, coach, fahrer, fahrerin, busfahrer, busfahrerin,
    leitung, leiter, leiterin, gruppenleitung, klassenleitung, betreuer, betreuerin, betreuung, vertretung, aufsicht,
    trainer, trainerin, bezugserzieherin, bezugserzieher, sorgeberechtigt, sorgeberechtigte, sorgeberechtigter,
    chauffeur, chauffeuse, conducteur, conductrice, moniteur, monitrice, animateur, animatrice, remplacant,
    remplacante, accompagnateur, accompagnatrice, intervenant, intervenante, monitor, monitora, conductor, conductora,
    chofer, suplente, sustituto, sustituta, acompanante, conducente, supplente, accompagnatore, istruttore,
    istruttrice, coordinatrice, coordinatore, motorista, condutor, condutora, coordenador, coordenadora, substituto,
    substituta, vigilante, acompanhante, begleitung, begleiter, begleiterin, busbegleitung, autista,
    assistente, coordinator, coordinador, coordinadora, coordinateur""")
"""Who leads, drives or looks after children: a label before an adult's name. Jobs that children have are not here."""

GROUPS = word_set("""
    table, group, team, pair, row, station, centre, center, tisch, gruppe, reihe, paar, equipe, groupe, rang, ilot,
    mesa, grupo, equipo, fila, pareja, tavolo, gruppo, squadra, coppia, equipa, par""")
"""Titles of a column whose rows are groups of children where each row has another one."""

OF_THE = word_set("""
    of, the, de, del, des, du, la, las, les, los, da, das, do, dos, di, dei, degli, delle, der, die, den""")
"""Small words between such a word and what the class is named after, or between the parts of a date."""

STREETS = word_set("""
    street, st, road, rd, avenue, ave, lane, stop, strasse, str, platz, weg, haltestelle, rue, place, chemin, arret,
    calle, plaza, avenida, parada, via, viale, piazza, fermata, rua, largo, praca, paragem""")
"""Words of an address or a stop, which may stand before a name."""

SIZES = word_set("""
    baby, little, big, small, tall, tiny, mini, young, old, older, younger, bebe, petit, petite, grand, grande, klein,
    kleine, kleiner, gross, grosse, grosser, pequeno, pequena, piccolo, piccola, mayor, menor, maggiore, minore""")
"""Words in small letters that tell one child from another of the same name: ``little Anna``."""

STATES = word_set("""
    new, absent, present, here, missing, left, moved, transferred, withdrawn, waiting, waitlist, late, away, out,
    sick, returning, neu, neue, fehlt, fehlen, anwesend, abwesend, krank, abgemeldet, weggezogen, warteliste, nouveau,
    nouvelle, nouveaux, nouvelles, absente, absents, absentes, presente, presents, presentes, malade, parti, partie,
    radie, radiee, nuevo, nueva, nuevos, nuevas, ausente, ausentes, falta, faltan, enfermo, enferma, baja, alta,
    nuovo, nuova, nuovi, nuove, assente, assenti, presenti, manca, mancano, malato, malata, ritirato, ritirata,
    trasferito, trasferita, novo, nova, novos, novas, faltam, doente, saiu, transferido, transferida, tardy, excused,
    unexcused, left early, faltas, retrasos, retraso, llega tarde, enfermos, enfermas, justificados, asiste, asisten,
    retards, en retard, malades, excuses, verspatet, entschuldigt, unentschuldigt, kranke, ritardi, in ritardo, malati,
    malate, giustificati, atrasos, atrasados, atrasadas, atrasado, atrasada, doentes, faltou, justificadas""")
"""Whether a child is here, or comes or goes: a label or a cry before a name (``Absent: Mia``, ``NEW! Mia``)."""

ATTENDANCE = word_set("""
    present, presente, anwesend, abwesend, absent, absente, ausente, assente, late, tardy, sick, excused, unexcused,
    left early, out sick, home sick, not here, no show, krank, entschuldigt, unentschuldigt, verspatet, zu spat, fehlt,
    beurlaubt, nicht da, malade, retard, en retard, excuse, excusee, pas la, tarde, llega tarde, llego tarde, tardanza,
    retraso, retrasado, retrasada, falto, no vino, justificado, justificada, injustificado, injustificada, enfermo,
    enferma, malato, malata, ritardo, in ritardo, giustificato, giustificata, ingiustificato, ingiustificata, uscito,
    uscita, non c'e, non c’e, doente, atrasado, atrasada, atraso, chegou tarde, faltou, saiu cedo""")
"""What a register says of each child, in words that no list of names has."""

ATTENDANCE_BESIDE = word_set("left, gone, away, out, here, parti, partie, sorti, sortie, saiu, salio")
"""What it says where those stand on other lines: alone it may be a hand, a heading or a child of another class."""
ON_A_REGISTER = ATTENDANCE | ATTENDANCE_BESIDE

LATE = word_set("tardy, late, verspatet, retard, tarde, ritardo, atrasado, atrasada")
"""What stands for a day on which a child came late."""

DAY_NUMBERS = {
    word: number
    for number, words in enumerate((
        "monday, lunes, lundi, montag, lunedi, segunda, segunda-feira",
        "tuesday, martes, mardi, dienstag, martedi, terca, terca-feira",
        "wednesday, miercoles, mercredi, mittwoch, mercoledi, quarta, quarta-feira",
        "thursday, jueves, jeudi, donnerstag, giovedi, quinta, quinta-feira",
        "friday, viernes, vendredi, freitag, venerdi, sexta, sexta-feira",
        "saturday, sabado, samedi, samstag, sonnabend, sabato", "sunday, domingo, dimanche, sonntag, domenica",
    ))
    for word in word_set(words)
}
DAYS = frozenset(DAY_NUMBERS)
SHORT_DAY_NUMBERS = {
    word: number
    for number, words in enumerate((
        "mon, lun, mo, seg", "tue, tues, mar, di, ter", "wed, mie, mer, mi, qua",
        "thu, thur, thurs, jue, jeu, do, gio, qui", "fri, vie, ven, fr, sex", "sat, sab, sam, sa", "sun, dom, dim, so",
    ))
    for word in word_set(words)
}
SHORT_DAYS = frozenset(SHORT_DAY_NUMBERS)
"""Days of the week in the six languages, counted from Monday; several short ones are names too."""
ANY_DAYS = DAYS | SHORT_DAYS
DAY_LETTER = "(?:M|T|Tu|W|Th|F|R)"
"""A school day in English by its letter, as a part of a pattern; R is Thursday beside T."""

AND_WORDS = frozenset(("and", "und", "y", "et", "e", "ed"))
"""Words before the last of several names; German has “u.”, too, which by itself is a letter."""
AND = "|".join([*sorted(AND_WORDS), r"u\."])
"""All of them, as a part of a pattern."""

OR = "or|oder|o|ou|u|oppure|bzw\\.?"
"""Words between two names of which one is meant, as a part of a pattern."""

TOTALS = word_set("""
    total, totals, tot, tot., average, count, sum, promedio, media, moyenne, effectif, gesamt, summe, anzahl,
    durchschnitt, insgesamt, mittelwert, mittel, totale, somma, soma, points, puntos, punkte, punti, pontos,
    ø""") | {"\u03c3", "\u2211"}
"""First or last words of a row that counts the rows above it."""

SEASONS = word_set("spring, summer, fall, autumn, winter, primavera, verano, otono, invierno")

TITLES = word_set("""
    mme, mlle, madame, monsieur, maitresse, maitre, frau, herr, herrn, signora, signor, sig, sig.ra, prof.ssa,
    professoressa, professore, senhora, senhor, professora, professor, mr, mrs, ms, miss, mx, dr, prof, sr, sra,
    srta, senor, senora, senorita, prof.ª, profª, profa, prof.a, sr.ª, srª, dr.ª, drª, dra, maestra, maestro, profesora,
    profesor, profe, teacher, coach, principal, director, directora""")

ADULTS = TITLES | LEADERS | TEACHERS
"""Words that stand before an adult's name over a class."""
NO_CHILD = ADULTS | OTHER_PEOPLE
"""Words for whoever is no child of the class."""

DOUBLE_STARTERS = word_set("""
    ana, anna, anne, ann, maria, mary, marie, juan, jose, jean, luis, carlos, miguel, rosa, luz, jesus, john, billy,
    bobby, sarah, emma, lily, marco, pedro, victor, angel, eva, carmen, laura, martha, martin, francisco, gian,
    hans, karl""")
DOUBLE_SECONDS = word_set("""
    maria, jose, luis, carlos, kate, ann, anna, anne, lou, jane, beth, ellen, paul, luc, pierre, claire, isabel,
    elena, teresa, sofia, fernanda, belen, antonio, manuel, pablo, angel, miguel, marie, jo, joe, bob, ray, rose,
    louise, grace, lynn, pilar, laura, lucia, victoria, cristina, karen, paula, julia, sophie, christine, claude,
    jacques, francois, baptiste, marc, philippe, david, pedro, ramon, ignacio, javier, esteban, andres, alberto,
    eduardo, enrique, fernando, alejandro, daniel, guadalupe, ines, jesus, rafael, camila, valentina""")
"""A starter and a second make one double given name in free text: Ana María, Mary Kate, Juan Carlos."""

DEVOTIONS = word_set("""
    carmen, pilar, rosario, angeles, jesus, mar, luz, rocio, socorro, consuelo, dolores, sol, cielo, fatima,
    guadalupe, lourdes, mercedes, remedios, nieves, dios, milagros, refugio, paz""")
"""What may follow ``de``, ``del``, ``de los`` … inside a given name: María del Carmen, Juan de Dios."""

SPANISH_FAMILIES = word_set("""
    garcia, lopez, martinez, gonzalez, hernandez, rodriguez, perez, sanchez, ramirez, torres, flores, rivera, gomez,
    diaz, cruz, reyes, morales, ortiz, gutierrez, chavez, ramos, ruiz, mendoza, alvarez, jimenez, castillo, vasquez,
    romero, moreno, herrera, medina, aguilar, vargas, castro, guzman, mendez, munoz, salazar, soto, vega, delgado,
    rojas, guerrero, contreras, silva, santos, pena, rios, navarro, molina, dominguez, estrada, sandoval, maldonado,
    campos, fuentes, cabrera, espinoza, ibarra, leon, luna, solis, cortez, lara, velasquez, nunez, acosta, pacheco,
    serrano, mejia, orozco, salinas, trujillo, valencia, zamora, barrera""")
"""Family names common enough in Spanish that a second word found here opens two family names."""

SUFFIXES = word_set("jr, sr, ii, iii, iv")

GOES_BY_OPENINGS = word_set("""
    goes by, go by, nickname, nick, aka, a.k.a, known as, called, prefers, le dicen, se le dice, apodo, conocido
    como, conocida como, dit, dite, surnom, surnomme, surnommee, appele, appelee, genannt, rufname, spitzname,
    gerufen, detto, detta, chiamato, chiamata, soprannome, conhecido como, conhecida como, chamado, chamada,
    chamado de, chamada de, tratado por, tratada por, apelidado de, apelidada de, alcunha""")
"""What may stand before the name a child goes by: ``(goes by Will)``."""

CALLING = word_set("""
    called, call, calls, nicknamed, known, goes, prefers, prefer, appelle, l'appelle, l’appelle, appelons, appeler,
    appele, appelee, surnomme, surnommee, usuel, d'usage, d’usage, prefere, dicen, decimos, digan, llaman, llamamos,
    llamen, llamar, llamado, llamada, apodado, apodada, conocido, conocida, prefiere, chiamano, chiamiamo, chiamare,
    chiamato, chiamata, soprannominato, soprannominata, detto, detta, preferisce, chamam, chamam-lhe, chamam-no,
    chamam-na, chamamos, chamar, chamado, chamada, tratam, tratam-no, tratam-na, tratado, tratada, conhecido,
    conhecida, genannt, gerufen, nennen, nennt, ruft, rufen, bevorzugt, rufname""")
"""Words of calling beside the name a child goes by: ``wird Will gerufen``, ``si fa chiamare Will``."""

BESIDE_CALLING = word_set("""
    likes, wants, to, be, by, as, is, we, all, everyone, everybody, her, him, them, usually, mostly, always, at, home,
    for, short, name, on, nous, tous, tout, le, la, les, lui, se, fait, veut, aime, etre, prenom, a, maison, en, casa,
    todos, que, lo, los, me, suele, nombre, hace, si, fa, tutti, noi, come, vuole, essere, nome, no, na, por, como, o,
    gosta, quer, de, wird, werden, will, mag, mochte, von, allen, alle, wir, sie, ihn, er, zu, hause, kurz, meist,
    der, den, uns, bei, ser""")
"""Small words that stand beside those, and no others do."""

MONTH_NUMBERS = {
    word: number
    for number, words in enumerate((
        "janvier, januar, gennaio, janeiro, january, jan, enero, ene",
        "fevrier, februar, febbraio, fevereiro, february, feb, febrero",
        "mars, marz, marco, march, mar, marzo",
        "avril, aprile, abril, april, apr, abr",
        "mai, maggio, maio, may, mayo",
        "juin, juni, giugno, junho, june, jun, junio",
        "juillet, juli, luglio, julho, july, jul, julio",
        "aout, august, aug, agosto, ago",
        "septembre, settembre, setembro, september, sep, sept, septiembre, setiembre",
        "octobre, oktober, ottobre, outubro, october, oct, octubre",
        "novembre, novembro, november, nov, noviembre",
        "decembre, dezember, dicembre, dezembro, december, dec, diciembre, dic",
    ), 1)
    for word in word_set(words)
}
MONTHS = frozenset(MONTH_NUMBERS)
DATES = ANY_DAYS | MONTHS

NUMBER_LABELS = word_set("""
    dob, d.o.b, born, birthday, bday, birthdate, date of birth, b, age, aged, tel, telephone, phone, ph, cell,
    mobile, id, student id, ext, room, rm, grade, gr, no, bus, seat, nac, nacido, nacida, fecha de nacimiento,
    cumple, cumpleanos, edad, salon, grado, matricula""")
"""Words that belong to the number behind them: ``DOB 1/2/2021``."""

HOURS = word_set("uhr, uur, hs, hrs, horas, heures, a.m, p.m, a. m, p. m")
NUMBER_UNITS = HOURS | word_set("""
    years old, year old, years, year, yrs, yr, yo, y/o, months, month, mos, mo, anos, ano, meses, mes, ans, an, mois,
    jahre, jahr, monate, anni, anno, mesi,
    mm, cm, in, inch, inches, mm line, mm lines, mm high, pulgadas, zoll, pouces, pollici, polegadas""")
"""Words that belong to the number before them: ``4 yrs``, ``22 mm``, ``9.00 Uhr``."""

REMARKS = word_set("""
    new, iep, ell, esl, eal, sen, send, twin, absent, moved, am, pm, nuevo, nueva, gemela, gemelo, ausente, he, she,
    they, him, her, them, temp, visitor, inclusion, speech, ot, k, pk, tk, prek, pre-k, kinder, girl, boy, male,
    female, m, f, monday, tuesday, wednesday, thursday, friday, tue, tues, wed, thu, thurs, fri, lunes, martes,
    miercoles, jueves, viernes, bus, allergy, allergies, glasses, sibling, brother, sister, hermano, hermana,
    withdrawn, transferred, student, spanish, english, mandarin, arabic, french, vietnamese, bilingual, espanol,
    ingles, yes, alergia, alergias, present, presente, anwesend, abwesend, assente, absente, malade,
    too, also, auch, tambien, aussi, anche, tambem""")
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
        right, r, right hand, right-hand, right handed, right-handed, derecha,
        derecho, diestra, diestro, mano derecha, d, rh, righty, droite, droitier, droitiere, main droite,
        de la main droite, rechts, rechtshander, rechtshanderin, rechtshandig, rechtshaender, rechtshaenderin,
        rechtshaendig, rechte hand, mit rechts, destra, destro, destrimano, destrorso, destrorsa, mano destra,
        direita, mao direita""",
        Hand.LEFT: """
        left, l, left hand, left-hand, left handed, left-handed, lefty, izquierda,
        izquierdo, mano izquierda, zurda, zurdo, i, z, lh, gauche, gaucher, gauchere, main gauche,
        de la main gauche, links, linkshander,
        linkshanderin, linkshandig, linkshaender, linkshaenderin, linkshaendig, linke hand, mit links, sinistra,
        mancino, mancina, mano sinistra, esquerda, canhoto, canhota, canhestro, mao esquerda""",
        Hand.UNSETTLED: """
        unsettled, not settled, not settled yet, undecided, no preference, no preference yet, switches,
        switches hands, ambidextrous, sin definir, aun sin definir, no definida, cambia de mano, ambidiestra,
        ambidiestro, ambidextre, pas encore fixee, pas encore fixe, pas encore lateralise, pas encore lateralisee,
        change de main, noch offen, unentschieden, beidhandig, beidhaendig, wechselt, wechselt die hand,
        wechselt noch, ambidestro, ambidestra, non ancora definita, non definita, non ancora decisa, cambia mano,
        ainda por definir, ainda nao definida, por definir, nao definida, troca de mao, alterna""",
    }.items()
    for word in word_set(words)
}

HAND_CELLS = {"g": Hand.LEFT, "s": Hand.LEFT, "e": Hand.LEFT} | dict.fromkeys(word_set("""
    both, both hands, either, either hand, mixed, mix, varies, l/r, r/l, l r, left/right, right/left, left and
    right, left or right, not sure, unsure, not sure yet, undetermined, unknown, don't know, don’t know, tbd,
    emerging, developing, ambi, ambos, ambas, ambas manos, las dos, los dos, mixta, mixto, d/i, i/d, z/d, d/z,
    no se, no se sabe, no esta claro, duda, por determinar, indefinida, ambidiestra, les deux, les 2, deux mains,
    les deux mains, mixte, g/d, d/g, ne sait pas, je ne sais pas, pas sur, a voir, indetermine, beide, beide
    hande, beides, gemischt, links/rechts, rechts/links, unsicher, unklar, weiss nicht, noch nicht klar,
    unbekannt, entrambe, entrambi, tutte e due, tutt'e due, ambedue, mista, misto, s/d, d/s, non so, non sicuro,
    incerto, incerta, da definire, as duas, os dois, duas maos, ambas as maos, e/d, d/e, nao sei, nao se sabe, a
    definir"""), Hand.UNSETTLED)
"""What a cell about the hand alone may hold besides: first letters of left, and that neither hand is settled."""

SUPPORTS = {
    word: support
    for support, words in {
        Support.FULL: """
        full, full support, completo, completa, total, apoyo completo, apoyo total, complete, complet, aide complete,
        soutien complet, voll, volle hilfe, volle unterstutzung, totale, aiuto completo, aiuto totale,
        sostegno completo, apoio completo, apoio total""",
        Support.PARTIAL: """
        partial, partial support, parcial, apoyo parcial, partielle, partiel, aide partielle, soutien partiel,
        teilweise, teilweise hilfe, teilweise unterstutzung, parziale, aiuto parziale, sostegno parziale,
        apoio parcial""",
        Support.LIGHT: """
        light, light support, ligero, ligera, leve, apoyo ligero, apoyo leve, legere, leger, aide legere,
        soutien leger, wenig, wenig hilfe, leichte hilfe, leichte unterstutzung, leggero, leggera, aiuto leggero,
        sostegno leggero, ligeiro, apoio leve, apoio ligeiro""",
        Support.INDEPENDENT: """
        independent, independiente, independently, sin apoyo, without help, sans aide, autonome, en autonomie,
        selbststandig, selbstandig, ohne hilfe, allein, autonomo, autonoma, senza aiuto, da solo, da sola,
        independente, sem apoio, sozinho, sozinha""",
    }.items()
    for word in word_set(words)
}

LANGUAGES = {
    word: tag
    for tag, words in {
        "en": "english, ingles, anglais, englisch, inglese",
        "es": "spanish, espanol, castellano, espagnol, spanisch, spagnolo, espanhol",
        "fr": "french, frances, francais, franzosisch, francese",
        "de": "german, aleman, allemand, deutsch, tedesco, alemao",
        "it": "italian, italiano, italien, italienisch",
        "pt": "portuguese, portugues, portugais, portugiesisch, portoghese",
        "pl": "polish, polaco, polonais, polnisch, polacco, polones, polski",
        "lt": "lithuanian, lituano, lituanien, litauisch, lietuviu",
        "tr": "turkish, turco, turc, turkisch, turkce",
        "az": "azerbaijani, azeri, aserbaidschanisch",
        "nl": "dutch, neerlandes, neerlandais, niederlandisch, olandese, holandes, nederlands",
        "vi": "vietnamese, vietnamita, vietnamien, vietnamesisch",
        "zh": "chinese, mandarin, cantonese, chino, chinois, chinesisch, cinese, chines",
        "ko": "korean, coreano, coreen, koreanisch", "hu": "hungarian, hungaro, hongrois, ungarisch, ungherese, magyar",
        "ar": "arabic, arabe, arabisch, arabo", "ru": "russian, ruso, russe, russisch, russo",
        "uk": "ukrainian, ucraniano, ukrainien, ukrainisch, ucraino", "haw": "hawaiian, hawaiano, hawaien",
    }.items()
    for word in word_set(words)
}
"""Names of languages, in the languages of the pages, to their tags (BCP 47)."""

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
