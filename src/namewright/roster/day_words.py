"""Words of a school day in the six languages: what a class does at an hour, and what makes one day unlike others.

A line with nothing else is no child. Written down by hand and modest: a word that is missing is asked about.
Folded: small letters, no accents. Data only.
"""

from __future__ import annotations

from namewright.roster.vocabulary import word_set

DAY_WORDS = word_set("""
    arrival, breakfast, lunch, snack, recess, circle, meeting, assembly, attendance, reading, writing, math,
    maths, music, gym, library, story, centers, centres, stations, playtime, play, playground, outside, nap, rest,
    dismissal, speech, ot, pt, therapy, lesson, lessons, cleanup, helpers, aftercare, daycare, bus, carpool,
    drill, trip, picnic, party, birthdays, llegada, entrada, salida, desayuno, almuerzo, merienda, recreo,
    comedor, patio, asamblea, corro, lectura, lectoescritura, escritura, matematicas, musica, gimnasia,
    biblioteca, cuento, cuentos, rincones, siesta, juego, juegos, logopedia, terapia, ayudantes, guarderia,
    autobus, simulacro, excursion, fiesta, cumpleanos, accueil, arrivee, sortie, gouter, cantine, dejeuner,
    recreation, recre, regroupement, lecture, ecriture, mathematiques, musique, bibliotheque, bcd, histoire,
    conte, ateliers, atelier, sieste, jeux, orthophonie, rangement, garderie, responsables, exercice, fete,
    kermesse, anniversaires, ankommen, ankunft, begrussung, fruhstuck, mittagessen, imbiss, pause, hofpause,
    morgenkreis, abschlusskreis, lesen, vorlesen, schreiben, rechnen, mathe, mathematik, musik, sport, bucherei,
    geschichte, freispiel, spielen, logopadie, ergotherapie, kleingruppe, aufraumen, abholung, abholzeit, hort,
    mensa, helfer, probealarm, ausflug, wandertag, fototag, fest, feier, schulfrei, schluss, schulschluss,
    unterricht, geburtstage, arrivo, ingresso, uscita, colazione, pranzo, merenda, ricreazione, intervallo,
    cerchio, appello, scrittura, lettura, matematica, ginnastica, racconto, fiaba, laboratorio, laboratori,
    riposo, nanna, gioco, giochi, doposcuola, pulmino, aiutanti, prova, gita, festa, compleanni, chegada,
    acolhimento, saida, pequeno-almoco, lanche, almoco, recreio, roda, leitura, escrita, ginastica, historia,
    conto, cantinhos, sesta, brincadeira, brincadeiras, jogo, jogos, prolongamento, carrinha, ajudantes, cantina,
    passeio, aniversarios, aulas, religion, religione, religiao, ethics, ethik, ethique, etica, valores,
    carnival, carnaval, carnevale, karneval, fasching, halloween, weihnachten, christmas, navidad""")
"""What a class does, where it goes, and how a day is called."""

DAY_PHRASES = word_set("""
    small group, small groups, picture day, photo day, half day, field day, day off, grupo pequeno, dia de fotos,
    medio dia, petit groupe, petits groupes, photo de classe, emploi du temps, piccolo gruppo, foto di classe,
    pequeno grupo, terapia da fala, fotografia de turma, visita de estudo""")
"""The same in several words, none of which tells it alone."""

BESIDE_DAY = word_set("""
    school, time, group, groups, early, late, half, full, no, small, guided, free, morning, afternoon, closing,
    opening, field, picture, photo, photos, fire, day, days, work, books, quiet, special, parent, parents, clase,
    clases, grupo, grupos, temprana, temprano, tarde, libre, libres, manana, fotos, foto, dia, libros, escolar,
    hay, ecole, groupe, groupes, anticipee, matin, scolaire, classe, incendie, pas, jour, journee, d'ecole,
    d’ecole, temps, schule, gruppe, gruppen, fruher, fruhe, spater, kleine, kleines, gemeinsames, freies, kein,
    keine, tag, scuola, gruppo, gruppi, anticipata, libero, libera, niente, antincendio, scolastica, giorno,
    escola, turma, antecipada, livre, livres, nao, ha""")
"""What stands beside such a word and tells no day alone."""

DAY_ENDINGS = ("tag", "kreis", "spiel", "stunde", "pause", "ausflug", "fest", "schluss", "fruhstuck", "therapie")
"""Endings of German words in one for such a thing: ``Spielkreis``, ``Turnstunde``."""

WITH = word_set("with, for, con, para, avec, pour, mit, fur, per, com")
"""Small words that lead to the children with whom something is done."""
