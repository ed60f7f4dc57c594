"""Pages as one PDF (ISO 32000-1), written batch by batch so that memory does not grow with the class."""

from __future__ import annotations

from namewright.output.pdf.document import batches, write_batches, write_pdf
from namewright.output.pdf.drawing import Batch

__all__ = ["Batch", "batches", "write_batches", "write_pdf"]
