"""What groups of children are called after, in one word over a block of names: shapes, animals, fruit.

Each kind stands alone, for children may be called Luna, Iris or Wolf: only words of one kind together tell. In the six
languages, written down by hand and modest; what is missing is judged by the other lines.
"""

from __future__ import annotations

from namewright.roster.vocabulary import fold, word_set
from namewright.store import keeps_names

KINDS = tuple(map(word_set, ("""
    circle, square, triangle, rectangle, star, heart, diamond, oval, hexagon, pentagon, cube, sphere, cylinder,
    cone, circulo, cuadrado, triangulo, rectangulo, estrella, corazon, corazones, rombo, ovalo, hexagono, cubo,
    esfera, cilindro, cono, cercle, rond, carre, triangle, etoile, coeur, losange, ovale, hexagone, pentagone,
    cylindre, kreis, quadrat, dreieck, viereck, rechteck, stern, herz, herzen, raute, sechseck, wurfel, kugel,
    zylinder, kegel, cerchio, cerchi, quadrato, quadrati, triangolo, triangoli, rettangolo, rettangoli, stella,
    stelle, cuore, cuori, rombi, ovali, esagono, esagoni, cubi, sfera, sfere, cilindri, coni, quadrado, retangulo,
    estrela, coracao, coracoes, losango, cone""", """
    bear, lion, tiger, fox, owl, frog, bee, butterfly, butterflies, ladybug, ladybird, bunny, bunnies, rabbit, duck,
    penguin, dolphin, shark, whale, turtle, giraffe, elephant, monkey, zebra, panda, koala, hippo, wolf, wolves,
    mouse, mice, bird, bluebird, robin, eagle, hawk, falcon, cat, dog, puppy, puppies, kitten, horse, pony, ponies,
    snail, spider, ant, cricket, dragonfly, dragonflies, hedgehog, squirrel, badger, otter, beaver, deer, moose,
    raccoon, cheetah, leopard, jaguar, panther, dragon, dinosaur, fish, octopus, starfish, crab, seal, swan, goose,
    geese, parrot, crow, kangaroo, crocodile, oso, leon, leones, tigre, zorro, buho, rana, abeja, mariposa,
    mariquita, conejo, pato, pinguino, delfin, delfines, tiburon, tiburones, ballena, tortuga, jirafa, elefante,
    mono, cebra, hipopotamo, lobo, raton, ratones, pajaro, aguila, halcon, halcones, gato, perro, caballo, caracol,
    caracoles, arana, hormiga, erizo, ardilla, nutria, ciervo, leopardo, dinosaurio, pez, peces, pulpo, cangrejo,
    foca, ours, ourson, lion, renard, hibou, hiboux, chouette, grenouille, abeille, papillon, coccinelle, lapin,
    canard, pingouin, manchot, dauphin, requin, baleine, tortue, girafe, singe, zebre, hippopotame, loup, souris,
    oiseau, oiseaux, aigle, faucon, chat, chien, cheval, chevaux, poney, escargot, araignee, fourmi, herisson,
    ecureuil, loutre, cerf, dinosaure, poisson, poulpe, crabe, phoque, bar, baren, lowe, fuchs, fuchse, eule,
    frosch, frosche, biene, schmetterling, marienkafer, hase, kaninchen, ente, pinguin, delfin, hai, wal,
    schildkrote, elefant, affe, nilpferd, wolfe, maus, mause, vogel, adler, falke, katze, hund, pferd, schnecke,
    spinne, ameise, igel, eichhornchen, dachs, biber, hirsch, dinosaurier, fisch, krake, krebs, robbe, schwan,
    schwane, papagei, kafer, spatz, spatzen, maulwurf, orso, orsi, orsetto, orsetti, leone, leoni, tigri, volpe,
    volpi, gufo, gufi, rana, rane, ape, api, farfalla, farfalle, coccinella, coccinelle, coniglio, conigli,
    coniglietti, papera, papere, pinguino, pinguini, delfino, delfini, squalo, squali, balena, balene, tartaruga,
    tartarughe, giraffa, elefanti, scimmia, scimmie, zebre, lupo, lupi, topo, topi, topolini, uccellini, aquila,
    aquile, falchi, gatto, gatti, gattini, cane, cani, cavallo, cavalli, chiocciola, lumaca, lumache, ragno, ragni,
    formica, formiche, riccio, ricci, scoiattolo, scoiattoli, tasso, tassi, cervo, cervi, dinosauri, pesce, pesci,
    pesciolini, polpo, polpi, granchio, granchi, foca, foche, urso, leao, leoes, raposa, coruja, mocho, sapo, ra,
    abelha, borboleta, joaninha, coelho, golfinho, tubarao, tubaroes, baleia, tartaruga, girafa, macaco, zebra,
    rato, passaro, aguia, cao, caes, cavalo, caracois, aranha, formiga, ourico, esquilo, lontra, veado, dinossauro,
    peixe, polvo, caranguejo""", """
    apple, pear, banana, orange, lemon, lime, cherry, cherries, strawberry, strawberries, blueberry, blueberries,
    raspberry, raspberries, grape, peach, plum, melon, kiwi, mango, mangoes, pineapple, coconut, fig, apricot,
    manzana, pera, platano, naranja, limon, limones, cereza, fresa, arandano, frambuesa, uva, melocoton,
    melocotones, ciruela, sandia, pina, coco, higo, pomme, poire, banane, citron, cerise, fraise, myrtille,
    framboise, raisin, peche, prune, pasteque, ananas, abricot, figue, apfel, birne, zitrone, kirsche, erdbeere,
    heidelbeere, blaubeere, himbeere, traube, pfirsich, pflaume, melone, aprikose, feige, mela, mele, pera, pere,
    banane, arancia, arance, limone, limoni, ciliegia, ciliegie, fragola, fragole, mirtillo, mirtilli, lampone,
    lamponi, pesca, pesche, prugna, prugne, anguria, angurie, meloni, fico, fichi, albicocca, albicocche, maca,
    laranja, limao, limoes, cereja, morango, mirtilo, framboesa, pessego, ameixa, melao, meloes, melancia, ananas,
    abacaxi, figo""", """
    sun, moon, star, cloud, rainbow, rain, raindrop, snow, snowflake, wind, storm, thunder, lightning, sunshine,
    sol, soles, luna, estrella, nube, arcoiris, lluvia, nieve, viento, tormenta, rayo, soleil, lune, etoile, nuage,
    arc-en-ciel, pluie, neige, flocon, vent, orage, eclair, sonne, mond, stern, wolke, regenbogen, regen,
    regentropfen, schnee, schneeflocke, wind, sturm, donner, blitz, sole, soli, lune, stella, stelle, nuvola,
    nuvole, arcobaleno, arcobaleni, pioggia, neve, vento, tempesta, fulmine, fulmini, lua, estrela, nuvem, nuvens,
    arco-iris, chuva""", """
    mercury, venus, earth, mars, jupiter, saturn, uranus, neptune, pluto, mercurio, tierra, marte, saturno, urano,
    neptuno, pluton, mercure, terre, saturne, neptune, merkur, erde, neptun, venere, terra, giove, nettuno, plutone,
    jupiter, netuno""", """
    daisy, daisies, iris, sunflower, tulip, rose, lily, lilies, poppy, poppies, buttercup, bluebell, violet,
    daffodil, oak, maple, birch, pine, willow, elm, ash, cedar, margarita, girasol, girasoles, tulipan, tulipanes,
    rosa, lirio, amapola, violeta, clavel, claveles, roble, arce, pino, sauce, abedul, marguerite, tournesol,
    tulipe, lys, coquelicot, violette, paquerette, jonquille, chene, erable, bouleau, sapin, saule, ganseblumchen,
    sonnenblume, tulpe, lilie, mohnblume, veilchen, lowenzahn, eiche, ahorn, birke, tanne, weide, buche, margherita,
    margherite, girasole, girasoli, tulipano, tulipani, rose, giglio, gigli, papavero, papaveri, viola, viole,
    quercia, querce, acero, aceri, betulla, betulle, pini, salice, salici, margarida, girassol, girassois, tulipa,
    papoila, cravo, carvalho, pinheiro, salgueiro""")))
"""Shapes, animals, fruit, what is seen in the sky, planets, flowers and trees."""
ENDINGS = ("s", "es", "e", "n", "en", "er")
"""Of several: ``Circles``, ``Sterne``, ``Bienen``."""


@keeps_names(1024)
def kinds_of(word: str) -> frozenset[int]:
    """Return the kinds that have a word, or the one that several of it are called after."""
    folded = fold(word)
    forms = {folded, *(folded.removesuffix(end) for end in ENDINGS)}
    return frozenset(at for at, kind in enumerate(KINDS) if not kind.isdisjoint(forms))
