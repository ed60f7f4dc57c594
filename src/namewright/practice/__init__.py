"""Which letters and names are harder, on what evidence, and in which order to practise them."""
