"""How large a list may be: far more than any school has, and too little to fill a machine's memory."""

MOST_BYTES = 20_000_000
MOST_LINES = 100_000
