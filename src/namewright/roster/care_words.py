"""Words about a child that stand beside names and are none: health, care, who comes to fetch; and short forms of names.

In the six languages of the pages, written down by hand (common practice) and modest: a word that is missing is still
no name to practise where nothing says so (``beside``). Folded: small letters, no marks. Data only.
"""

from __future__ import annotations

from namewright.roster.vocabulary import fold, word_set

CARE = word_set("""
    peanut, peanuts, nut, nuts, treenut, treenuts, egg, eggs, milk, dairy, gluten, wheat, soy, lactose, shellfish,
    sesame, latex, penicillin, epipen, epi-pen, inhaler, insulin, zyrtec, benadryl, ritalin, albuterol, asthma,
    asthmatic, autism, autistic, asd, adhd, diabetes, diabetic, epilepsy, epileptic, seizure, seizures, celiac,
    coeliac, eczema, anaphylaxis, anaphylactic, allergy, allergies, allergic, vegan, vegetarian, halal, kosher,
    glasses, hearing, aids, cochlear, implant, wheelchair, braces, fed, tubefed, syndrome, cerebral, palsy, speech,
    therapy, therapist, slp, pt, ot, iep, 504, ell, esl, eal, send, sen, medication, medicine, meds, custody,
    pickup, pick-up, picked, picks, dismissal, carpool, aftercare, daycare, foster, nap, potty, diapers, toilet,
    half, days, vip, leaves, absent, withdrawn, transferred, moved, new, twin, twins, triplet, sibling, bilingual,
    triplets, zwillinge, drillinge, jumeaux, jumelles, gemelos, gemelas, mellizos, mellizas, gemelli, gemelle,
    gemeos, gemeas,
    interpreter, evaluation, nonverbal, non-verbal, verbal, sensitive, sensory, behavior, behaviour, anxiety,
    selective, mutism, photo, photos, cacahuete, cacahuetes, frutos, secos, nuez, nueces, huevo, huevos, leche,
    lacteos, trigo, marisco, mariscos, asma, autismo, tdah, diabetico, diabetica, epilepsia, celiaco, celiaca,
    alergia, alergias, alergico, alergica, gafas, lentes, audifono, audifonos, inhalador, insulina, logopedia,
    terapia, sindrome, silla, ruedas, custodia, recoge, arachide, arachides, noix, noisette, noisettes, oeuf, œuf,
    oeufs, œufs, lait, asthme, autisme, tsa, diabete, diabetique, epilepsie, allergie, allergique, lunettes,
    appareil, auditif, inhalateur, insuline, orthophonie, orthophoniste, avs, aesh, ulis, garde, cantine, etude,
    sieste, nouveau, nouvelle, jumeau, jumelle, erdnuss, erdnuesse, nuss, nusse, nuesse, eier, milch, weizen,
    autismus, adhs, diabetiker, diabetikerin, zoliakie, allergiker, allergikerin, allergisch, allergien, allergia,
    brille, horgerat,
    hoergeraet, inhalator, logopadie, logopaedie, ergotherapie, rollstuhl, sorgerecht, hort, abholung, zwilling,
    forderbedarf, foerderbedarf, krank, arachidi, noci, nocciole, uovo, uova, latte, latticini, grano, glutine,
    celiachia, epilessia, allergico, allergica, occhiali, apparecchio, acustico, inalatore, sostegno, mensa, nuovo,
    nuova, gemello, gemella, amendoim, amendoins, nozes, avela, ovo, ovos, leite, oculos, aparelho, auditivo,
    inalador, gemeo, gemea, creche, cantina, pps, ppre, lrs, acnee, acneae, neae, mdph, dsa, rtp""")
"""Words of health and care: they never reach a page from beside a name."""

CARE_MARKS = frozenset(("ACI", "BuT", "I-Kind", "L.104", "L104"))
"""Marks of plans, rights and needs at school, known by how they are written: ``but`` is a word."""

CARE_OR_FAMILY = frozenset(("PAI", "PAP", "PEI", "BES", "NEE"))
"""Such marks that are names as well: behind a whole name only."""

CARE_ENDINGS = ("allergie", "allergiker", "allergikerin", "intoleranz", "unvertraglichkeit", "nusse")
"""How German words in one for such things end: ``Nussallergie``."""

SHORT_FORMS = frozenset(map(fold, word_set("""
    abby, addie, aggie, alex, alfie, allie, ally, andy, angie, annie, archie, art, barb, becca, becky, bella, ben,
    benny, bernie, bert, beth, betsy, betty, bill, billie, billy, bob, bobbie, bobby, brad, cal, cam, cass, cassie,
    cathy, charlie, chris, chrissy, cindy, connie, dan, danny, dave, davy, deb, debbie, dee, dick, dot, dottie,
    doug, drew, ed, eddie, edie, ella, ellie, elsie, em, emmy, evie, fran, frankie, fred, freddie, gabby, gabe,
    gene, georgie, gerry, gigi, ginny, gus, hal, hank, hattie, izzy, jack, jackie, jake, jamie, jan, jeb, jeff, jen,
    jenny, jerry, jess, jessie, jim, jimmy, jo, joe, joey, johnny, jon, josh, josie, kat, kate, kathy, katie, kay,
    ken, kenny, kim, kit, kitty, larry, lena, leo, les, lettie, lex, libby, lila, lily, lindy, liv, livvy, liz,
    liza, lizzie, lizzy, lola, lottie, lou, louie, lucy, lulu, mads, maddie, maddy, maggie, mandy, marge, marty,
    mat, matt, matty, max, may, meg, mel, mick, mickey, mike, mikey, millie, milly, mimi, minnie, moe, molly, monty,
    nan, nancy, nat, nate, ned, nell, nellie, nick, nicky, nikki, nora, norm, olly, ollie, pam, pat, patty, peg,
    peggy, penny, pete, phil, pip, pippa, polly, rafe, randy, ray, reg, reggie, rex, rich, rick, ricky, rob, robbie,
    robby, rod, ron, ronnie, rory, rosie, roy, russ, sadie, sal, sally, sam, sammy, sandy, sasha, sid, stan, steph,
    steve, stevie, sue, susie, suzie, tad, tammy, ted, teddy, tess, theo, tilly, tim, timmy, tina, toby, tom, tommy,
    toni, tony, trish, trudy, val, vic, vicky, viv, wes, wendy, will, willie, willy, win, winnie, xander, zac, zach,
    zack, zander, beto, cata, chayo, chela, chelo, chema, chepe, chucho, chuy, concha, coqui, curro, fer, gabi,
    gabo, goyo, guille, javi, juancho, juanito, juanita, kike, lalo, lolita, lucha, lupe, lupita, maite, manolo,
    manu, maricarmen, mari, meche, memo, moncho, nacho, nando, nena, neto, nico, pablito, paco, paqui, patri, pepa,
    pepe, pili, polo, quique, rafa, richi, rosita, santi, sofi, tato, tere, tete, tono, toño, vero, xavi, yoli,
    zule, babeth, bastien, caro, cleo, dede, didier, domi, fanny, gege, gaby, jeannot, jojo, jule, juju, kiki, lili,
    lolo, mado, manon, marco, nanou, ninon, pierrot, seb, tatie, titi, toto, zaza, zoe, anni, bastian, basti, berti,
    christl, conny, evi, fips, flo, franzi, fritz, gitti, gretel, hanni, hannes, hansi, heini, ina, jupp, karli,
    kathi, klausi, lene, leni, lina, lisi, lotte, lukas, maxi, michi, mitzi, moni, niki, nele, poldi, resi, rosi,
    rudi, seppi, sepp, steffi, susi, tine, uli, uschi, uwe, vroni, willi, wolfi, xaver, beppe, checco, cecco, cesco,
    chicca, ciccio, dado, fede, franci, gio, gianni, ila, lella, lalla, lele, lollo, lori, mimmo, mina, nino, pino,
    pippo, renzo, rino, ross, sandro, sandra, simo, tino, titti, totò, vale, vanni, bia, bel, bruninho, cadu, cacá,
    chico, dudu, duda, edu, fafa, fefe, gui, guga, isa, ju, kika, lipe, lu, luizinho, malu, manel, nanda, nuno,
    pedrinho, quim, rô, tiago, tita, tito, tonho, toninho, tuca, tó, vivi, xico, zeca, zé, zezinho, zito, katya,
    misha, vanya, vova, dima, masha, pasha, olya, tanya""")))
"""Short and pet forms that a name in brackets may be."""
