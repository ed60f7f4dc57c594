"""CairoSVG behind one door: pages drawn onto one cairo surface, every letter shape drawn once.

The native library is loaded here and nowhere else.
"""

from __future__ import annotations

import re
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from namewright.output.svg import FURNITURE_ID


class NativeLibraryMissing(RuntimeError):
    """The cairo library, which draws PDF and PNG, is not on this machine."""

    def __init__(self) -> None:
        super().__init__(
            "PDF and PNG need the cairo graphics library, which is not on this machine. Install it and try again: "
            "Debian or Ubuntu “apt install libcairo2”, Fedora “dnf install cairo”, macOS “brew install cairo”, "
            "Windows the GTK 3 runtime. SVG works without it.")


try:
    import cairocffi
    import cairosvg
    import cairosvg.colors
    import cairosvg.surface
    from cairosvg.parser import Tree
except OSError as error:  # cairocffi raises OSError where it finds no shared library
    raise NativeLibraryMissing from error

_KEPT_SHAPES = 2000
_FORM_PAYS = 1200
_GRID = 100  # a form is recorded in hundredths of a millimetre: path data has two decimals, so whole numbers
_PLACE = re.compile(r"M(-?[\d.]+) (-?[\d.]+)")  # output/svg.py writes "M" only where a fragment is set down
_COMMAND = re.compile(r"([A-Za-z])([^A-Za-z]*)")
_STYLE = ("stroke", "stroke-width", "stroke-linecap", "stroke-dasharray", "fill")
_XOBJECTS = re.compile(rb"/XObject << (?:/x\d+ \d+ 0 R ?)+>>")
_LONGEST_KEY = 24

Key = tuple[str | None, ...]


@dataclass
class Shapes:
    """What has been drawn so far, by path and style: how often, and its recording once that pays.

    A form has a price of its own in a PDF, so a shape is recorded only when plain drawing has cost ``_FORM_PAYS``
    characters of path data (of 300, 700, 1,200, 2,500 and 4,000 the one that made a class of thirty smallest).
    The oldest are forgotten: memory stays bounded.
    """

    met: OrderedDict[Key, int] = field(default_factory=OrderedDict)
    recorded: OrderedDict[Key, cairocffi.RecordingSurface] = field(default_factory=OrderedDict)

    def pays(self, key: Key, data: str, *, shared: bool) -> bool:
        """Count one more use of a shape; return whether it should be drawn from a recording."""
        self.met[key] = self.met.pop(key, 0) + 1
        while len(self.met) > _KEPT_SHAPES:
            self.recorded.pop(self.met.popitem(last=False)[0], None)
        return shared or key in self.recorded or self.met[key] * len(data) > _FORM_PAYS


class PageSurface(cairosvg.surface.Surface):  # type: ignore[misc]
    """CairoSVG drawing one page onto a cairo surface that outlives it.

    A shape that recurs, on this page or another, in the same style, is recorded and painted from then on: cairo
    writes it once into a PDF, as a form that all its places use.
    """

    context: cairocffi.Context

    def __init__(self, svg: bytes, target: cairocffi.Surface, shapes: Shapes) -> None:
        self._target, self._shapes = target, shapes
        self._shared = False  # inside the furniture, which recurs for certain
        super().__init__(Tree(bytestring=svg), None, 96.0)

    def _create_surface(self, width: float, height: float) -> tuple[Any, float, float]:
        return self._target, width, height

    def draw(self, node: Any) -> None:
        """Draw a node of the SVG tree; a path as a shape that may recur."""
        if node.tag in ("line", "rect"):
            self._ink(node)
        elif node.tag == "path":
            self._path(node)
        elif node.tag == "g":
            outside, self._shared = self._shared, self._shared or node.get("id") == FURNITURE_ID
            for child in node.children:
                self.draw(child)
            self._shared = outside
        else:
            super().draw(node)

    def _ink(self, node: Any) -> None:
        """Draw one shape with only the few properties that our SVG has.

        CairoSVG's general drawing looks for masks, filters, fonts and markers at every node, and its reading of
        path data allows for every way of writing it; our pages have none of those and one way of writing. That
        is a quarter of the time of a page.
        """
        context = self.context
        context.new_path()
        if node.tag == "path":
            _trace(context, node["d"])
        else:
            cairosvg.surface.TAGS[node.tag](self, node)
        if node.get("fill") != "none":
            context.set_source_rgb(*_rgb(node["fill"]))
            context.fill_preserve()
        context.set_source_rgb(*_rgb(node["stroke"]))
        context.set_line_width(float(node["stroke-width"]))
        round_ends = node.get("stroke-linecap") == "round"
        context.set_line_cap(cairocffi.LINE_CAP_ROUND if round_ends else cairocffi.LINE_CAP_BUTT)
        context.set_line_join(cairocffi.LINE_JOIN_ROUND if round_ends else cairocffi.LINE_JOIN_MITER)
        context.set_dash([float(length) for length in node.get("stroke-dasharray", "").split()])
        context.stroke()

    def _path(self, node: Any) -> None:
        x, y, data = _about_its_start(node["d"])
        key = (data, *(node.get(name) for name in _STYLE))
        if not self._shapes.pays(key, data, shared=self._shared):
            self._ink(node)
            return
        if key not in self._shapes.recorded:
            node["d"] = data
            self._shapes.recorded[key] = self._recording(node)
        self.context.save()
        self.context.translate(x, y)
        self.context.scale(1 / _GRID, 1 / _GRID)
        self.context.set_source_surface(self._shapes.recorded[key], 0, 0)
        self.context.paint()
        self.context.restore()

    def _recording(self, node: Any) -> cairocffi.RecordingSurface:
        shape = cairocffi.RecordingSurface(cairocffi.CONTENT_COLOR_ALPHA, None)
        page, self.context = self.context, cairocffi.Context(shape)
        self.context.scale(_GRID, _GRID)
        self._ink(node)
        self.context = page
        return shape


def _trace(context: cairocffi.Context, data: str) -> None:
    """Draw path data of the kind that ``lines/ink.py`` writes: an absolute M, then relative commands, all spaced.

    Raises KeyError for any other command.
    """
    draw = {"M": context.move_to, "m": context.rel_move_to, "l": context.rel_line_to, "c": context.rel_curve_to,
            "h": lambda dx: context.rel_line_to(dx, 0.0), "v": lambda dy: context.rel_line_to(0.0, dy),
            "z": context.close_path}
    for command, values in _COMMAND.findall(data):
        draw[command](*map(float, values.split()))


@lru_cache(maxsize=64)
def _rgb(colour: str) -> tuple[float, float, float]:
    red, green, blue, _ = cairosvg.colors.color(colour)
    return (red, green, blue)


@lru_cache(maxsize=1000)
def _about_its_start(data: str) -> tuple[float, float, str]:
    """Return where a path begins, and its data moved to begin at (0, 0): equal for equal shapes anywhere."""
    first = _PLACE.match(data)
    if not first:
        raise ValueError(f"a path begins with “{data[:20]}”, not with M x y")
    x, y = float(first[1]), float(first[2])
    return x, y, _PLACE.sub(lambda at: f"M{float(at[1]) - x:.2f} {float(at[2]) - y:.2f}", data)


def pdf_target(write: Callable[[bytes], Any], title: str) -> tuple[cairocffi.PDFSurface, _Sink]:
    """Return a PDF surface that writes as it goes, with a title and no date, and the sink it writes to."""
    sink = _Sink(write)
    surface = cairocffi.PDFSurface(sink, 1, 1)
    surface.restrict_to_version(cairocffi.PDF_VERSION_1_4)
    surface.set_metadata(cairocffi.PDF_METADATA_TITLE, title)
    surface.set_metadata(cairocffi.PDF_METADATA_CREATE_DATE, "")
    return surface, sink


class _Sink:
    """The least file object that cairo needs; it blanks what cairo says twice.

    Cairo 1.16 lists a form in a page's resources once for every use, but a dictionary may hold a key only
    once (ISO 32000-1, 7.3.7). The repeats are overwritten with spaces, so every offset stays true.
    """

    def __init__(self, write: Callable[[bytes], Any]) -> None:
        self._write = write
        self._held = b""

    def write(self, data: bytes) -> None:
        text = self._held + bytes(data)
        opened = text.rfind(b"/XObject << ")
        cut = max(0, len(text) - _LONGEST_KEY)
        if opened >= 0 and not 0 <= text.find(b">>", opened) < cut:
            cut = min(cut, opened)
        self._write(_XOBJECTS.sub(_once, text[:cut]))
        self._held = text[cut:]

    def flush(self) -> None:
        """Write what is still held back."""
        self._write(_XOBJECTS.sub(_once, self._held))
        self._held = b""


def _once(match: re.Match[bytes]) -> bytes:
    """Return a resource dictionary with every entry kept once, at its old length."""
    entries = list(dict.fromkeys(re.findall(rb"/x\d+ \d+ 0 R", match[0])))
    return (b"/XObject << " + b" ".join(entries)).ljust(len(match[0]) - 2) + b">>"


def raster(svg: bytes, dpi: float) -> bytes:
    """Return the SVG drawn by CairoSVG on white, as PNG bytes."""
    return bytes(cairosvg.svg2png(bytestring=svg, dpi=dpi, background_color="white"))
