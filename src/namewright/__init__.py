"""Name practice for young writers: a class roster in, measured practice paper out."""

__version__ = "0.1.0"
