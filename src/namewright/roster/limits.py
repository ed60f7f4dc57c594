"""How large a list may be: far more than any school has, and too little to fill a machine's memory."""

MAX_BYTES = 20_000_000
MAX_LINES = 100_000
