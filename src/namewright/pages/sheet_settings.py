"""How one child's sheet is made, as values. Millimetres."""

from __future__ import annotations

from namewright.letters.choice import LetterChoice
from namewright.lines.ruling import Ruling
from namewright.named_tuples import NamedTuple
from namewright.names.beats import Spoken
from namewright.pages.ladder import Ladder
from namewright.pages.paper import Paper
from namewright.settings import Hand, Support
from namewright.tuning import Tuning


class SheetSettings(NamedTuple):
    """How one child's sheet is made. ``language`` is that of the captions.

    ``ruling`` is the lines as they are printed (see ``lines.tuned``); of ``tuning`` a sheet asks only what lines do not
    carry: letter spacing, rows, and whether white between rows was asked for. ``names_in`` is the language of the name
    by its tag (None: nobody said) and ``beats`` are a teacher's own: they say where a long name may be broken.
    ``colour`` is that of lines and captions (see ``hue``); a page for a clear ``sleeve`` is another one (see
    ``sleeve``); ``tile_names`` is for letter tiles. ``whose`` tells the adult at the foot whose page it is, where
    another child of the class practises the same name.
    """

    ruling: Ruling
    paper: Paper = Paper.LETTER
    landscape: bool = False
    binding: bool = False
    support: Support = Support.FULL
    hand: Hand = Hand.RIGHT
    language: str = "en"
    letters: LetterChoice = LetterChoice()
    ladder: Ladder = Ladder()
    tuning: Tuning = Tuning()
    names_in: str | None = None
    beats: str = ""
    colour: str = "black"
    sleeve: bool = False
    tile_names: bool = True
    whose: str = ""

    @property
    def spoken(self) -> Spoken:
        """Return how the name is spoken."""
        return Spoken(self.names_in, self.language, self.beats)
